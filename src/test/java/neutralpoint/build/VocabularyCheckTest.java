package neutralpoint.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Java names what the catalogue knows, and in one place. */
class VocabularyCheckTest {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Path SOURCES = Path.of("src/main/java");
    /** Answers and parts that go by the name of an arrangement or a trait. */
    private static final Set<String> ALSO_PLAIN_WORDS = Set.of("solid-fuel", "cylinder", "loft-tank");

    @TempDir
    Path folder;

    /** An id renamed all through a copy of the rules is one that Java still calls by its old name. */
    private void compileWithout(String old, String renamed) throws IOException {
        Path rules = Files.createTempDirectory(folder, "rules");
        Shared.copy(Path.of("rules/catalogue"), rules.resolve("catalogue"));
        Pattern whole = Pattern.compile("(?<![a-z0-9-])" + Pattern.quote(old) + "(?![a-z0-9-])");
        try (Stream<Path> files = Files.walk(rules)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.writeString(file, whole.matcher(Files.readString(file)).replaceAll(renamed));
            }
        }
        CompileCatalogue.main(new String[] {rules.toString(), folder.resolve("out").toString(), folder.resolve("staged").toString()});
    }

    @TestFactory
    Stream<DynamicTest> anIdThatTheCatalogueDoesNotKnowEndsTheBuild() {
        record Slip(String kind, String old, String renamed, String constant) {}
        return Stream.of(
                new Slip("finding", "system-content-litres", "system-content-liters", "Ids.FindingId.SYSTEM_CONTENT_LITRES"),
                new Slip("cause", "scale-on-exchanger", "scale-in-exchanger", "Ids.CauseId.SCALE_ON_EXCHANGER"),
                new Slip("course", "vent-and-balance", "vent-and-balancing", "Ids.CourseId.VENT_AND_BALANCE"),
                new Slip("arrangement", "heat-pump-system", "heat-pump-systems", "Ids.ArrangementId.HEAT_PUMP_SYSTEM"),
                new Slip("trait", "no-additives", "no-additive", "Ids.TraitId.NO_ADDITIVES"))
                .map(slip -> DynamicTest.dynamicTest(slip.kind(), () -> assertThatThrownBy(() -> compileWithout(slip.old(), slip.renamed()))
                        .isInstanceOf(BadInput.class).hasMessage("%s: \"%s\" is not a known %s; did you mean \"%s\"?",
                                slip.constant(), slip.old(), slip.kind(), slip.renamed())));
    }

    @Test
    void noSourceButTheVocabularyWritesAnId() throws IOException {
        Catalogue catalogue = Shared.CATALOGUE;
        Set<String> ids = new TreeSet<>();
        List.of(catalogue.findings(), catalogue.causes(), catalogue.courses(), catalogue.methods(), catalogue.arrangements())
                .forEach(entries -> ids.addAll(entries.keySet()));
        ids.addAll(catalogue.traits());
        ids.removeAll(ALSO_PLAIN_WORDS);
        Set<String> written = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("Ids.java")).toList()) {
                Files.readAllLines(file).stream().map(String::strip).filter(l -> !l.startsWith("*") && !l.startsWith("/"))
                        .flatMap(l -> LITERAL.matcher(l).results()).map(m -> m.group(1)).filter(ids::contains)
                        .forEach(id -> written.add(file.getFileName() + ": \"" + id + "\""));
            }
        }
        assertThat(written).as("ids that belong in Ids").isEmpty();
    }
}
