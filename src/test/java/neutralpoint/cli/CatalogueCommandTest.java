package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import neutralpoint.Shared;
import neutralpoint.authoring.DangerMatrix;
import neutralpoint.authoring.DangerMatrixText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What whoever adds a danger sees. */
@UsesStandardStreams
class CatalogueCommandTest {
    @TempDir
    private Path folder;

    @Test
    void theMatrixOfDangersSaysInHowManyWaysEachIsTold() {
        Run run = Run.of("catalogue", "dangers");
        assertThat(run.code()).isZero();
        assertThat(run.out()).containsPattern("heat meanwhile +first question +answers +readings +emergencies +radiators +gauge")
                .containsPattern("gas-escape +off +2 +- +- +1 +- +-").containsPattern("disused-back-boiler +may-stay +- +1");
        Catalogue written = CatalogueFiles.fromFolder(Path.of("rules/catalogue"));
        assertThat(written.dangers().values()).allSatisfy(d -> {
            assertThat(run.out()).contains(d.id() + ": " + d.title());
            assertThat(DangerMatrix.of(written, List.of()).rows()).filteredOn(r -> r.danger().equals(d)).singleElement()
                    .satisfies(r -> assertThat(r.told()).hasSameSizeAs(d.ways()));
        });
    }

    @Test
    void aDangerIsShownWithItsHeatWhoComesWhatClearsItAndHowItIsTold() {
        assertThat(Run.of("catalogue", "dangers").out()).contains(
                "water-on-electrics: Water on electrics\n    heat       off: boiler, every circuit that is wet\n",
                "    who comes  somebody competent in electrical work to test the circuit\n    clears it  Mend what leaks on to the electrics.\n"
                        + "               Have the circuit dried and tested",
                "    told by    the first question (red-lines: [water-on-electrics])\n", "    clears it  nothing on site\n",
                "The repair of plugged-feed-and-vent-tee.\n", "    emergency  smell-or-fumes\n",
                "the gauge log (gauge: [{at: 2026-11-02T08:00, bar: 1.0, waterCelsius: 104}])");
    }

    @Test
    void anOptionOfTheFirstQuestionThatNoDangerUsesIsMarked() throws IOException {
        assertThat(Run.of("catalogue", "dangers").out()).endsWith("Every option of red-lines is told by a danger.\n");
        Shared.copy(Path.of("rules"), folder);
        Path doorstep = folder.resolve("catalogue/findings/doorstep.yaml");
        Files.writeString(doorstep, Files.readString(doorstep).replace("- {id: gas-smell,",
                "- {id: bees-in-the-flue, say: bees in the flue}\n    - {id: gas-smell,"));
        assertThat(Run.of("catalogue", "dangers", "--rules", folder.toString()).out())
                .endsWith("No danger is told by the option \"bees-in-the-flue\" of red-lines.\n");
    }

    @Test
    void withoutTheProjectsFolderItSaysThatTheWaysAreNotAtHand() {
        DangerMatrix packaged = DangerMatrix.of(CatalogueFiles.compiled(), List.of());
        assertThat(DangerMatrixText.lines(packaged)).first().asString().contains("not packaged with the program", "--rules DIR");
        assertThat(DangerMatrixText.lines(packaged)).contains("gas-escape: Smell of gas")
                .noneMatch(l -> l.contains("red-lines") || l.contains("told by"));
        assertThat(DangerMatrixText.json(packaged)).containsEntry("ways-known", false);
    }

    @Test
    void theMatrixIsAlsoForPrograms() {
        Node.Fields all = Documents.json("out", Run.of("catalogue", "dangers", "--format", "json").out(), 1).asFields();
        Node.Fields gas = all.get("dangers").asItems().items().get(0).asFields();
        assertThat(gas.text("id")).isEqualTo("gas-escape");
        assertThat(gas.get("ways").asItems().items().get(0).asFields().text("telling")).isEqualTo("first question");
    }

    @Test
    void aFolderWithoutDangersIsOneSentence() {
        Run run = Run.of("catalogue", "dangers", "--rules", folder.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(folder + " has no catalogue/dangers.yaml; run this from the project's own folder, or give --rules DIR.\n");
    }
}
