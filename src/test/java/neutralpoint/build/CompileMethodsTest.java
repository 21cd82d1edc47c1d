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

/** A slip in what a method or a course does with the water, or in the order of a system's parts, ends the build with the file. */
class CompileMethodsTest {
    @TempDir
    Path folder;

    private void load(String file, String right, String wrong) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        String before = Files.readString(copy.resolve(file));
        assertThat(before).contains(right);
        Files.writeString(copy.resolve(file), before.replace(right, wrong));
        CatalogueFiles.fromFolder(copy);
    }

    @TestFactory
    Stream<DynamicTest> aSlipIsNamed() {
        record Slip(String what, String file, String right, String wrong, String says) {}
        String combined = "order: [boiler, combined-tee, pump";
        return Stream.of(
                new Slip("water work", "methods.yaml", "does: [drained, rinsed, cleaned]", "does: [drained, rinced, cleaned]", "\"rinced\" is not a known does; did you mean \"rinsed\"?"),
                new Slip("no water work", "methods.yaml", "  does: []\n", "", "\"does\" is missing"),
                new Slip("dry and opened", "courses.yaml", "  wet: false\n", "  wet: false\n  opens-water: true\n", "a course that opens the water is wet; \"refer\" is not"),
                new Slip("part", "arrangements.yaml", combined, "order: [boiler, combined-tee, pumpp", "\"pumpp\" is not a known order; did you mean \"pump\"?"),
                new Slip("twice", "arrangements.yaml", combined, combined + ", pump", "names each part once"),
                new Slip("no boiler", "arrangements.yaml", combined, "order: [combined-tee, pump", "begins with the boiler"),
                new Slip("tees", "arrangements.yaml", combined, "order: [boiler, combined-tee, feed-tee, pump", "a combined tee or separate tees, not both"),
                new Slip("a feature's order", "arrangements.yaml", "  traits: [microbore]\n", "  traits: [microbore]\n  order: [boiler]\n", "\"microbore\" is a feature"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> assertThatThrownBy(() -> load(slip.file(), slip.right(), slip.wrong()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(slip.file()).hasMessageContaining(slip.says())));
    }
}
