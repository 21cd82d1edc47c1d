package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.report.ArrangementSheet;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The double-check before a valve is closed, as an engineer meets it.
 * Holds {@link neutralpoint.rulebase.ArrangementWeighing}.
 */
@UsesStandardStreams
class ArrangementCommandTest {
    private static final Path GOLDEN = Path.of("src/test/resources/sheets");
    private static final String GAS = "'heat-source': ['gas-boiler']";

    @TempDir
    Path folder;

    private Run run(String findings, String... options) throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(job, "{'findings': {" .replace('\'', '"') + findings.replace('\'', '"') + "}}");
        return Run.of(Stream.concat(Stream.of("arrangement", job.toString()), Stream.of(options)).toArray(String[]::new));
    }

    /** The same sheet without the start of the program. */
    private static String sheet(String findings, int width) {
        Assessment a = Shared.ASSESSOR.assess(Shared.job("{'findings': {".replace('\'', '"') + findings.replace('\'', '"') + "}}"));
        return ArrangementSheet.of(a, Shared.CATALOGUE, new ArrangementQuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE).best(a), width, false);
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static Map<String, String> descriptions() {
        Map<String, String> seen = new LinkedHashMap<>();
        seen.put("Open-vented, separate feed and vent", "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'two', 'feed-and-vent-join': 'far-apart'");
        seen.put("Open-vented, combined feed and vent", "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'two', 'feed-and-vent-join': 'one-pipe'");
        seen.put("Open-vented, close-coupled feed and vent", "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'two', 'feed-and-vent-join': 'within-150-mm'");
        seen.put("Sealed, separate components", "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'one-large', 'pump-and-vessel-place': 'outside', " + GAS);
        seen.put("Sealed, system boiler", "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'cylinder', 'pump-and-vessel-place': 'in-case', " + GAS);
        seen.put("Sealed, combination boiler", "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'on-demand', 'loft-tanks': 'no-tanks', " + GAS);
        seen.put("Converted from open-vented to sealed", "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'small-dry', 'old-vent-left': 'capped-stub'");
        seen.put("Open-vented, single-feed indirect cylinder", "'heating-filled-by': 'shared-tank', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'one-large', 'cylinder-style': 'single-feed'");
        seen.put("Open-vented, direct cylinder", "'heating-filled-by': 'shared-tank', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'one-large', 'cylinder-style': 'direct'");
        seen.put("Open-vented, solid fuel or back boiler", "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'heat-source': ['solid-fuel']");
        seen.put("Sealed, heat pump", "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'cylinder', 'heat-source': ['heat-pump']");
        return seen;
    }

    @TestFactory
    Stream<DynamicTest> whatIsSeenNamesTheSystemAndTheSheetFitsItsWidth() {
        return descriptions().entrySet().stream().map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
            for (int width : List.of(60, 80, 120)) {
                String sheet = sheet(e.getValue(), width);
                // A system that shares the taps' water begins with its danger.
                assertThat(words(sheet)).matches("(STOP: Heating water in the hot taps .*)?System: " + Pattern.quote(e.getKey()) + " \\(.*");
                assertThat(sheet).contains("NEUTRAL POINT", "IF OPEN-VENTED", "IF SEALED", "Never close", "Put back");
                assertThat(sheet.lines()).allMatch(line -> line.length() <= width);
            }
        }));
    }

    @Test
    void aSettledSystemAsksForNothingMore() {
        assertThat(sheet(descriptions().get("Sealed, combination boiler"), 120)).contains("Nothing more is needed to be sure of it.", "IF SEALED (this one): combination boiler");
    }

    /** Answers that cannot all be right, and the words that send the engineer back to look. */
    private static final Map<String, String> CONTRADICTIONS = Map.of(
            "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'on-demand', 'loft-tanks': 'two'", "Find out what the small tank feeds",
            "'heating-filled-by': 'filling-loop', 'hot-water-made-by': 'cylinder', 'loft-tanks': 'two', 'small-tank-serves': 'heating'", "the mains runs over in the loft",
            "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'gauge-tells': 'rises-when-hot'", "Look again where the feed goes",
            "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'heat-source': ['heat-pump']", "near the heat pump",
            "'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'small-tank-serves': 'something-else'", "Look again for a filling loop");

    @TestFactory
    Stream<DynamicTest> contradictoryAnswersAreLookedAtAgainBeforeAValveIsClosed() {
        return CONTRADICTIONS.entrySet().stream().map(e -> DynamicTest.dynamicTest(e.getValue(), () -> {
            assertThat(words(sheet(e.getKey(), 80))).startsWith("System: not clear while answers contradict each other")
                    .contains("look again:", e.getValue(), "Close no valve until", "Would settle it:")
                    .doesNotContain("(this one)");
        }));
    }

    @Test
    void nothingSeenYetAsksHowItIsFilled() {
        assertThat(sheet("", 80)).contains("not clear yet", "Would settle it: How is the heating filled with water?");
    }

    @Test
    void figuresStandBesideTheChecks() {
        String sheet = sheet(descriptions().get("Open-vented, close-coupled feed and vent")
                + ", 'pump-head-m': 5, 'tee-resistance-percent': 20, 'vent-rise-mm': 450", 80);
        assertThat(words(sheet)).contains("fail The pump lifts water 1 m up a vent of 0.45 m",
                "open height of the vent: How far does the tank's water stand above the boiler?", "5 m head", "vent 450 mm above the water");
    }

    /** What was closed last is opened first, and the fuse goes back only after everything is open. */
    @Test
    void theFuseGoesBackLast() {
        String sheet = sheet(descriptions().get("Open-vented, combined feed and vent") + ", 'motorised-valves': 'one-three-port'", 60);
        String putBack = sheet.substring(sheet.indexOf("Put back"), sheet.indexOf("IF SEALED"));
        assertThat(putBack.strip().lines().filter(l -> l.startsWith("- ")).reduce((a, b) -> b).orElseThrow()).startsWith("- Refit the fuse last");
    }

    @Test
    void aStopComesFirst() throws IOException {
        Run run = run("'red-lines': ['gas-smell']");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).startsWith("STOP: ");
    }

    @Test
    void aFileThatIsNotThereIsOneSentence() {
        Run run = Run.of("arrangement", folder.resolve("none.json").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
    }

    @TestFactory
    Stream<DynamicTest> theSheetThatWasLookedAt() {
        return Stream.of("hawthorn-row.60", "hawthorn-row.80", "hawthorn-row.120", "hawthorn-row.plain").map(name -> DynamicTest.dynamicTest(name, () -> {
            String width = name.endsWith("plain") ? "80" : name.substring(name.indexOf('.') + 1);
            List<String> args = new java.util.ArrayList<>(List.of("arrangement", "cases/hawthorn-row.json", "--width", width));
            if (name.endsWith("plain")) {
                args.add("--plain");
            }
            Run run = Run.of(args.toArray(String[]::new));
            assertThat(run.out()).isEqualTo(Files.readString(GOLDEN.resolve(name + ".txt")));
        }));
    }
}
