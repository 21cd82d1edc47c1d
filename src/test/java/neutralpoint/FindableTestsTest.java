package neutralpoint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever changes a class finds its test: one of its name, or one whose Javadoc links to it. */
class FindableTestsTest {

    @ParameterizedTest
    @ValueSource(strings = {"document", "rulebase", "workplan", "console"})
    void everyClassIsNamedByATest(String room) throws IOException {
        List<Path> tests = files(Path.of("src/test/java"), Integer.MAX_VALUE);
        StringBuilder links = new StringBuilder();
        for (Path test : tests) {
            links.append(Files.readString(test));
        }
        List<String> names = tests.stream().map(FindableTestsTest::name).toList();
        assertThat(files(Path.of("src/main/java/neutralpoint", room), 1).stream().map(FindableTestsTest::name).filter(n -> !n.equals("package-info"))
                .filter(n -> !names.contains(n + "Test") && !links.toString().matches("(?s).*\\{@link ([a-z.]+\\.)?" + n + "}.*"))).isEmpty();
    }

    private static List<Path> files(Path folder, int depth) throws IOException {
        try (Stream<Path> files = Files.walk(folder, depth)) {
            return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }
}
