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

/** A slip in a caution, or where one is named, ends the build with the file and the nearest valid word. */
class CompileCautionsTest {
    @TempDir
    Path folder;

    private void load(String file, String right, String wrong) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        String before = Files.readString(copy.resolve(file));
        assertThat(before).contains(right);
        Files.writeString(copy.resolve(file), before.replaceFirst(right, wrong));
        CatalogueFiles.fromFolder(copy);
    }

    @TestFactory
    Stream<DynamicTest> aSlipIsNamed() {
        record Slip(String what, String file, String right, String wrong, String says) {}
        return Stream.of(
                new Slip("harm", "cautions.yaml", "\n  harm: kills", "\n  harm: kils", "\"kils\" is not a valid \"harm\"; did you mean \"kills\"?"),
                new Slip("moment", "cautions.yaml", "\n  moment: leaving", "\n  moment: leave", "\"leave\" is not a valid \"moment\"; did you mean \"leaving\"?"),
                new Slip("no harm", "cautions.yaml", "\n  harm: kills", "", "\"harm\" is missing"),
                new Slip("of a method", "methods.yaml", "machine-electricity", "machine-electrics", "\"machine-electrics\" is not a known cautions"),
                new Slip("of a finding", "findings/pump.yaml", "pump-opened", "pump-opend", "\"pump-opend\" is not a known caution; did you mean \"pump-opened\"?"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> assertThatThrownBy(() -> load(slip.file(), slip.right(), slip.wrong()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(slip.says())));
    }
}
