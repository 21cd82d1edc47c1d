package neutralpoint.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A job file outlives the ids it was written with. */
class RenamesTest {
    private static final String FINDING = "- id: bleed-water\n";
    private static final String OPTION = "{id: black,";

    @TempDir
    Path folder;

    /** The catalogue with one line of the findings about water written otherwise. */
    private Catalogue with(String file, String right, String renamed) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        Path changed = copy.resolve(file);
        String before = Files.readString(changed);
        assertThat(before).contains(right);
        Files.writeString(changed, before.replace(right, renamed));
        return CatalogueFiles.fromFolder(copy);
    }

    private static String findingsFile() {
        return Shared.files("rules/catalogue/findings", ".yaml").stream().filter(f -> read(f).contains(FINDING)).findFirst()
                .map(f -> "findings/" + f.getFileName()).orElseThrow();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Job job(Catalogue catalogue, String json) {
        return new JobCheck(catalogue).check(JobFile.draft(Documents.json("old.json", json, 1), "old"));
    }

    @Test
    void aFindingIsReadByWhatItWasCalled() throws IOException {
        Catalogue catalogue = with(findingsFile(), FINDING, FINDING + "  was: [water-bled]\n");
        Job job = job(catalogue, "{\"asking\": \"water-bled\", \"findings\": {\"water-bled\": \"black\"}}");
        assertThat(job.answer("bleed-water")).contains(new Answer.One("black"));
        assertThat(job.asking()).isEqualTo(Optional.of("bleed-water"));
        assertThatThrownBy(() -> job(catalogue, "{\"findings\": {\"water-bled\": \"black\", \"bleed-water\": \"black\"}}"))
                .isInstanceOf(BadInput.class).hasMessageContaining("\"bleed-water\" is answered twice");
    }

    @Test
    void anAnswerIsReadByWhatItWasCalled() throws IOException {
        Catalogue catalogue = with("findings/" + Path.of(findingsFile()).getFileName(), OPTION, "{id: black, was: [inky],");
        assertThat(job(catalogue, "{\"findings\": {\"bleed-water\": \"inky\"}}").answer("bleed-water")).contains(new Answer.One("black"));
    }

    @Test
    void aCauseIsKnownByWhatItWasCalled() throws IOException {
        String cause = "- id: sludge-throughout\n";
        Catalogue catalogue = with("causes/deposits.yaml", cause, cause + "  was: [mud-everywhere]\n");
        assertThat(catalogue.renames().cause("mud-everywhere")).isEqualTo("sludge-throughout");
        assertThat(catalogue.renames().cause("pump-seized")).isEqualTo("pump-seized");
    }

    @TestFactory
    Stream<DynamicTest> anOldIdThatStandsForAnotherEntryEndsTheBuild() {
        record Slip(String what, String file, String right, String renamed, String says) {}
        return Stream.of(
                new Slip("finding", findingsFile(), FINDING, FINDING + "  was: [complaint]\n", "\"complaint\" cannot be what \"bleed-water\" was"),
                new Slip("answer", findingsFile(), OPTION, "{id: black, was: [clear],", "\"clear\" cannot be what \"black\" was"),
                new Slip("arrangement", "arrangements.yaml", "- id: microbore\n", "- id: microbore\n  was: [y-plan]\n", "\"y-plan\" cannot be what \"microbore\" was"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> assertThatThrownBy(() -> with(slip.file(), slip.right(), slip.renamed()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(slip.says())));
    }

    @Test
    void aFileOfANewerFormatIsRefusedInOneSentence() {
        assertThat(Shared.job("{\"format\": 1, \"findings\": {}}").answers()).isEmpty();
        assertThatThrownBy(() -> Shared.job("{\"format\": 2, \"findings\": {}}")).isInstanceOf(BadInput.class)
                .hasMessageContaining("this job file is of format 2 and this program reads formats up to 1; open it with a newer program.");
        assertThatThrownBy(() -> Shared.job("{\"format\": 0, \"findings\": {}}")).isInstanceOf(BadInput.class)
                .hasMessageContaining("\"format\" is 0; 1 belongs there");
    }
}
