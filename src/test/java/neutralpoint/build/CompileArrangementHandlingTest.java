package neutralpoint.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.ArrangementHandling;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Nobody closes a valve by half an entry: the build refuses a system without one, and a closure that is not put back. */
class CompileArrangementHandlingTest {
    private static final String FILE = "handling-by-arrangement.yaml";

    @TempDir
    Path folder;

    private Catalogue load(UnaryOperator<String> change) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        String before = Files.readString(copy.resolve(FILE));
        String after = change.apply(before);
        assertThat(after).as("the slip changes the file").isNotEqualTo(before);
        Files.writeString(copy.resolve(FILE), after);
        return CatalogueFiles.fromFolder(copy);
    }

    @TestFactory
    Stream<DynamicTest> aSlipIsNamed() {
        record Slip(String what, UnaryOperator<String> change, String says) {}
        return Stream.of(
                new Slip("arrangement", s -> s.replaceFirst("for: y-plan", "for: y-pln"), "\"y-pln\" is not a known arrangement; did you mean \"y-plan\"?"),
                new Slip("source", s -> s.replaceFirst("source: common-practice", "source: comon-practice"), "\"comon-practice\" is not a known source; did you mean \"common-practice\"?"),
                new Slip("no system", s -> s.replaceFirst("(?s)- for: system-boiler.*?(?=- for: )", ""), "the system \"system-boiler\" has no entry here"),
                new Slip("no list", s -> s.replaceFirst("(?s)  never-close:.*?(?=  level:)", ""), "\"never-close\" is missing here"),
                new Slip("empty list", s -> s.replaceFirst("(?s)  connect:.*?(?=  fill:)", "  connect: []\n"), "\"connect\" needs at least one line"),
                new Slip("no reason", s -> s.replaceFirst("  because: .*\n", ""), "\"because\" is missing here"),
                new Slip("not put back", s -> s.replaceFirst("    - Take the bung out .*\n", ""), "\"isolate\" has 5 lines and \"put-back\" 4"),
                new Slip("told twice", s -> s.replaceFirst("for: w-plan", "for: y-plan"), "\"y-plan\" is catalogued twice"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> assertThatThrownBy(() -> load(slip.change()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(FILE).hasMessageContaining(slip.says())));
    }

    @Test
    void aFeatureThatChangesNothingNeedsNoEntry() throws IOException {
        Catalogue catalogue = load(s -> s.replaceFirst("(?s)- for: w-plan.*?(?=- for: )", ""));
        assertThat(catalogue.handlingOf("w-plan")).isEmpty();
        assertThat(catalogue.handlingOf("y-plan")).isPresent();
    }

    @TestFactory
    Stream<DynamicTest> theProgramKnowsHowEverySystemIsHandled() {
        return Shared.CATALOGUE.systems().stream().map(system -> DynamicTest.dynamicTest(system.id(), () -> {
            ArrangementHandling care = Shared.CATALOGUE.handlingOf(system.id()).orElseThrow();
            assertThat(care.arrangement()).isEqualTo(system.id());
            assertThat(care.putBack()).hasSameSizeAs(care.isolate());
            assertThat(Shared.CATALOGUE.sources()).containsKey(care.source());
        }));
    }

    /** No additive, no flush and no pressure where the heating water can reach the taps; nothing connected to a fire. */
    @TestFactory
    Stream<DynamicTest> nothingIsConnectedWhereNothingMayBeFlushed() {
        return Shared.CATALOGUE.systems().stream().filter(s -> s.traits().contains("no-flush"))
                .map(s -> DynamicTest.dynamicTest(s.id(), () -> {
                    ArrangementHandling care = Shared.CATALOGUE.handlingOf(s.id()).orElseThrow();
                    assertThat(care.connect().get(0)).startsWith("Connect nothing");
                    if (s.traits().contains("no-additives")) {
                        assertThat(care.fill()).anyMatch(line -> line.startsWith("Put in no cleaner and no inhibitor"));
                        assertThat(care.level()).anyMatch(line -> line.contains("no pressure"));
                    }
                }));
    }

    /** House primary circuits are fluid category 3: a temporary connection with a double check valve. */
    @TestFactory
    Stream<DynamicTest> aSystemThatIsFlushedIsFilledWithBackflowProtection() {
        return Shared.CATALOGUE.systems().stream().filter(s -> !s.traits().contains("no-flush"))
                .map(s -> DynamicTest.dynamicTest(s.id(), () -> assertThat(
                        Shared.CATALOGUE.handlingOf(s.id()).orElseThrow().fill().get(0))
                        .contains("category 3").contains("temporary").contains("double check valve")));
    }

    @TestFactory
    Stream<DynamicTest> theWayOutForTheExpansionIsNeverClosed() {
        return Shared.CATALOGUE.systems().stream().map(s -> DynamicTest.dynamicTest(s.id(), () -> assertThat(
                String.join(" ", Shared.CATALOGUE.handlingOf(s.id()).orElseThrow().neverClose()).toLowerCase())
                .contains(wayOut(s))));
    }

    private static String wayOut(ArrangementKind system) {
        if (system.traits().contains("sealed")) {
            return "safety valve";
        }
        return system.id().equals("open-vented-combined") ? "combined pipe" : "vent";
    }
}
