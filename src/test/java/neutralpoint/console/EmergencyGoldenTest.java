package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Emergency;
import neutralpoint.job.Job;
import neutralpoint.report.EmergencyPage;
import neutralpoint.report.text.Wrap;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What is told in each emergency in three houses, on a telephone's 44 columns. After a change that is meant, run it once
 * with {@code -Dneutralpoint.rewrite=true} and read the pictures aloud: short, calm, plain.
 */
class EmergencyGoldenTest {
    private static final Path PICTURES = Path.of("src/test/resources/console/emergency");
    private static final int COLUMNS = 44;
    private static final int LINES = 20;

    private static final Map<String, String> HOUSES = Map.of(
            "open-vented-with-stove", """
                    {"findings": {"red-lines": [], "heating-filled-by": "loft-tank", "hot-water-made-by": "cylinder",
                     "feed-and-vent-join": "one-pipe", "heat-source": ["oil-boiler", "solid-fuel"], "heat-leak-path": "valved",
                     "stopcock-shuts": "no"}}""",
            "combination-boiler-in-a-flat", """
                    {"findings": {"red-lines": [], "heating-filled-by": "filling-loop", "hot-water-made-by": "on-demand",
                     "heat-source": ["gas-boiler"]}}""",
            "heat-pump-with-unvented-cylinder", """
                    {"findings": {"red-lines": [], "heating-filled-by": "filling-loop", "hot-water-made-by": "cylinder",
                     "cylinder-style": "unvented", "heat-source": ["heat-pump"], "stopcock-shuts": "yes"}}""");

    @TestFactory
    Stream<DynamicTest> whatIsToldInEachHouse() {
        return HOUSES.keySet().stream().sorted().flatMap(house -> Shared.CATALOGUE.emergencies().values().stream().map(emergency ->
                DynamicTest.dynamicTest(emergency.id() + ", " + house, () -> isAsPictured(emergency, house))));
    }

    private static void isAsPictured(Emergency emergency, String house) throws IOException {
        Job job = Shared.job(HOUSES.get(house));
        List<String> shown = EmergencyDialogue.pages(EmergencyPage.of(emergency, Shared.CATALOGUE, job, Set.of()), COLUMNS - 1).stream()
                .map(page -> page.stream().map(line -> Wrap.keepingIndent(COLUMNS - 1, line)).collect(Collectors.joining("\n"))).toList();
        String text = String.join("\n" + "-".repeat(COLUMNS) + "\n", shown) + "\n";

        Path golden = PICTURES.resolve(emergency.id() + "-" + house + ".txt");
        if (Boolean.getBoolean("neutralpoint.rewrite")) {
            Files.createDirectories(PICTURES);
            Files.writeString(golden, text);
        }
        assertThat(text).isEqualTo(Files.readString(golden));
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(COLUMNS));
        assertThat(shown).as("a blank line above and the prompt below still fit").allSatisfy(page ->
                assertThat(page.lines().count() + 2).isLessThanOrEqualTo(LINES));
    }
}
