package neutralpoint.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A call-out that is saved is there whole, or the one before it still is. */
class SafeFileTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsSavedReplacesWhatWasThereAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("job.json");
        SafeFile.write(file, "first");
        SafeFile.write(file, "second, in °C");
        assertThat(file).content().isEqualTo("second, in °C");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void aFolderThatIsNotThereIsOneSentence() {
        Path file = folder.resolve("nowhere/job.json");
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> SafeFile.write(file, "text"))
                .withMessage(file + " could not be saved (the folder does not exist); what it held before is unchanged.");
    }
}
