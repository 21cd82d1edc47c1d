package neutralpoint.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A slip in what a remedy needs ends the build with the file, the line and the nearest valid word. */
class CompileCompetencesTest {
    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> aSlipIsNamed() {
        record Slip(String what, String file, String right, String wrong, String says) {}
        return Stream.of(
                new Slip("class", "competences.yaml", "class: registration", "class: registraton", "did you mean \"registration\"?"),
                new Slip("answer", "competences.yaml", "{licences-held: oil}", "{licences-held: oill}", "\"oill\" is not a known answer of licences-held; did you mean \"oil\"?"),
                new Slip("finding", "competences.yaml", "{licences-held: oil}", "{licenses-held: oil}", "\"licenses-held\" is not a known finding; did you mean \"licences-held\"?"),
                new Slip("source", "competences.yaml", "source: approved-document-g", "source: approved-document-q", "is not a known source"),
                new Slip("nothing shows it", "competences.yaml", "{licences-held: oil}", "{}", "\"shown-by\" needs at least one finding"),
                new Slip("kind of work", "causes/pump.yaml", "needs: [pump, mains-electrical]", "needs: [pump, mains-electric]",
                        "\"mains-electric\" is not a known kind of work; did you mean \"mains-electrical\"?"),
                new Slip("own work", "causes/boiler.yaml", "own-work: component-repair", "own-work: component-repare", "did you mean \"component-repair\"?"))
                .map(s -> DynamicTest.dynamicTest(s.what(), () -> assertThatThrownBy(() -> load(s.file(), s.right(), s.wrong()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(s.file()).hasMessageContaining("line ").hasMessageContaining(s.says())));
    }

    private void load(String file, String right, String wrong) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        String before = Files.readString(copy.resolve(file));
        assertThat(before).contains(right);
        Files.writeString(copy.resolve(file), before.replace(right, wrong));
        CatalogueFiles.fromFolder(copy);
    }
}
