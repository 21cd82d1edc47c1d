package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.DynamicTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Published check values of one subject. Each becomes a test that carries its id and its source; an entry that no
 * function covers says why in "notCovered". An entry that is neither is a failing test.
 */
public final class References {
    private static final Path FOLDER = Path.of("src/test/resources/references");

    private final List<JsonNode> entries = new ArrayList<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final List<DynamicTest> tests = new ArrayList<>();

    private References(String subject) {
        JsonMapper.builder().build().readTree(FOLDER.resolve(subject + ".json").toFile()).forEach(entries::add);
        entries.stream().filter(e -> !e.has("notCovered")).forEach(e -> open.add(e.get("id").asString()));
    }

    public static References of(String subject) {
        return new References(subject);
    }

    /** Checks every entry whose id begins so; the check is given its inputs and what is expected. */
    public References check(String idBegins, BiConsumer<JsonNode, JsonNode> check) {
        int before = tests.size();
        for (JsonNode e : entries) {
            String id = e.get("id").asString();
            if (id.startsWith(idBegins) && open.remove(id)) {
                tests.add(DynamicTest.dynamicTest(id + " " + e.get("topic").asString() + " [" + e.get("status").asString()
                        + "; " + e.get("source").asString() + "]", () -> check.accept(e.get("inputs"), e.get("expected"))));
            }
        }
        assertThat(tests.size()).as("entries that begin with " + idBegins).isGreaterThan(before);
        return this;
    }

    /** The tests, and one that fails if an entry was forgotten. */
    public List<DynamicTest> tests() {
        tests.add(DynamicTest.dynamicTest("every entry is checked or says why not", () -> assertThat(open).isEmpty()));
        return tests;
    }
}
