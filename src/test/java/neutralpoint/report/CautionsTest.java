package neutralpoint.report;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Method;
import neutralpoint.catalogue.Moment;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workplan.WorkPlan;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cautions that people will read: the few that matter first, the rest a word away, and in a plan each once.
 * After a change that is meant, run {@code theFirstViewLooksAsItShould} once with {@code -Dneutralpoint.rewrite=true}
 * and look at what changed in the pictures.
 */
class CautionsTest {
    private static final Path PICTURES = Path.of("src/test/resources/first-views");
    /** Wide enough that nothing is wrapped. */
    private static final DisplayOptions WIDE = DisplayOptions.plain(100_000);
    private static final List<String> WORST_FIRST = List.of("kills", "injures", "damages", "costs");
    private static final List<String> SOONEST_FIRST = List.of("before", "during", "leaving");

    @ParameterizedTest
    @ValueSource(strings = {"hawthorn-row", "gorse-hill"})
    void theFirstViewLooksAsItShould(String house) throws IOException {
        Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).read(Path.of("cases", house + ".json")));
        String seen = AssessmentText.of(a, List.of(), DisplayOptions.plain(60), CautionView.AT_A_PROMPT);

        Path golden = PICTURES.resolve(house + ".60.txt");
        if (Boolean.getBoolean("neutralpoint.rewrite")) {
            Files.createDirectories(PICTURES);
            Files.writeString(golden, seen);
        }
        assertThat(seen).isEqualTo(Files.readString(golden));
        assertThat(seen.lines()).allMatch(line -> line.length() <= 60);
    }

    /** What no engineer would leave unsaid beside these dangers. Common practice, no source. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            boiling                  | {"red-lines": ["boiling-or-steam"]}                                                     | scald
            scalding taps            | {"red-lines": ["scalding-taps"]}                                                        | scald
            water on electrics       | {"red-lines": ["water-on-electrics"]}                                                   | electrical-isolation
            heating water at taps    | {"red-lines": ["mixed-tap-water"]}                                                      | no-additives
            chemical, single feed    | {"cylinder-style": "single-feed", "recent-work": ["chemical-added"]}                    | no-additives
            hot tundish              | {"cylinder-style": "unvented", "tundish": "hot-water"}                                  | unvented-licensed
            hot tundish              | {"cylinder-style": "unvented", "tundish": "hot-water"}                                  | scald
            smell of gas             | {"red-lines": ["gas-smell"]}                                                            | gas-licensed-only
            stove with a capped vent | {"heat-source": ["solid-fuel"], "vent-end": "capped-or-valved"}                         | solid-fuel-never-valve-vent
            old lagging              | {"red-lines": ["asbestos-suspected"]}                                                   | asbestos
            """)
    void aStopNeverLosesItsOwn(String danger, String findings, String caution) {
        Assessment a = Shared.ASSESSOR.assess(Shared.job("{\"findings\": " + findings + "}"));
        assertThat(a.stops()).isNotEmpty();
        assertThat(AssessmentText.of(a, List.of(), WIDE, CautionView.AT_A_PROMPT)).contains(Shared.CATALOGUE.caution(caution).text());
    }

    /** Title and address of each source stand beside its value in {@code references/safety.json}. */
    @ParameterizedTest(name = "{0} says {2}")
    @CsvSource({"blending-valve-for-the-frail, SAF-44, °C at most at a bath", "blending-valve-for-the-frail, SAF-TMV, °C at a basin or shower",
            "blending-valve-for-the-frail, SAF-LEG60, °C and have", "legionella, SAF-LEG60, °C or more", "foul-drain-only, SAF-43, °C"})
    void theLimitsSaidAreThePublishedOnes(String caution, String reference, String says) {
        Node expected = Documents.readJson(Path.of("src/test/resources/references/safety.json")).asItems().items().stream().map(Node::asFields)
                .filter(e -> e.text("id").equals(reference)).findFirst().orElseThrow().get("expected");
        double limit = expected instanceof Node.Fields outlets ? outlets.get("basin").asNumber() : expected.asNumber();
        assertThat(Shared.CATALOGUE.caution(caution).text()).contains(Math.round(limit) + " " + says);
    }

    @TestFactory
    Stream<DynamicTest> theFirstViewHoldsAStopsOwnAndAtMostTwoOthersAndCountsTheRest() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            Assessment a = Shared.assessed(c);
            String view = AssessmentText.of(a, List.of(), WIDE, CautionView.FROM_FILES);
            List<Caution> shown = a.cautions().stream().filter(x -> view.contains(x.text())).toList();
            List<Caution> others = shown.stream().filter(x -> !a.stopCautions().contains(x)).toList();
            assertThat(shown).containsAll(a.stopCautions());
            assertThat(others).hasSizeLessThanOrEqualTo(2).allMatch(x -> x.moment() == Moment.BEFORE);
            int rest = a.cautions().size() - shown.size();
            assertThat(view.contains(rest + " more: \"assess --cautions\" prints all.")).isEqualTo(rest > 0);
        }));
    }

    @Test
    void withNoStopNoneIsAStopsOwn() {
        Assessment a = Shared.ASSESSOR.assess(aJob().with("occupants-need-warmth", "yes").with("tank-warmth", "hot").with("tank-rises-with-pump-off", "no").job());
        assertThat(a.stops()).isEmpty();
        assertThat(a.cautions()).extracting(Caution::id).contains("occupants-need-warmth", "plastic-tank-support");
        assertThat(a.stopCautions()).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> jsonHasAllTheWorstFirst() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            Assessment a = Shared.assessed(c);
            @SuppressWarnings("unchecked")
            List<Map<String, Object>> json = (List<Map<String, Object>>) AssessmentJson.of(a, List.of()).get("cautions");
            assertThat(json).extracting(x -> x.get("id")).containsExactlyElementsOf(a.cautions().stream().map(Caution::id).toList());
            assertThat(json).extracting(x -> 10 * WORST_FIRST.indexOf(x.get("harm")) + SOONEST_FIRST.indexOf(x.get("moment"))).isSorted()
                    .allMatch(rank -> rank >= 0);
        }));
    }

    @Test
    void allAreListedByTheirMoment() {
        Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).read(Path.of("cases/hawthorn-row.json")));
        String all = CautionView.ALL.of(a, 100_000);
        assertThat(all.lines().filter(l -> !l.startsWith("- "))).containsExactly("Before you touch anything", "While you work", "Before you leave");
        assertThat(all.lines().filter(l -> l.startsWith("- "))).hasSameSizeAs(a.cautions());
        assertThat(all.indexOf("lock off and prove dead")).isLessThan(all.indexOf("While you work"));
        assertThat(all.indexOf("Take every cap")).isGreaterThan(all.indexOf("Before you leave"));
    }

    /** A flushing machine is heated and pumped by electricity in a tray of water, whichever house it stands in. Common practice, no source. */
    @Test
    void aMachineBringsItsOwnCautions() {
        Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).read(Path.of("cases/hawthorn-row.json")));
        assertThat(a.cleansing().map(x -> x.method().id())).contains("machine-flush");
        assertThat(a.cautions()).extracting(Caution::id).contains("machine-electricity");
        List<WorkPlan> byMachine = Shared.allCases().stream()
                .map(c -> WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, c.job(), Optional.of("machine-flush")))
                .filter(p -> p.method().equals(Optional.of("machine-flush"))).toList();
        assertThat(byMachine).allSatisfy(p -> assertThat(p.cautions()).extracting(Caution::id).contains("machine-electricity"))
                .as("some where the engineer chose the machine and not the rules").anyMatch(p -> p.assessment().cautions().stream()
                        .noneMatch(c -> c.id().equals("machine-electricity")));
    }

    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> aPlanPrintsEachInFullOnce() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            for (Optional<String> method : methods()) {
                WorkPlan plan = WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, c.job(), method);
                Set<Caution> cautions = new HashSet<>(plan.cautions());
                plan.steps().forEach(s -> s.caution().map(Shared.CATALOGUE::caution).ifPresent(cautions::add));
                String text = WorkPlanText.of(plan, Shared.CATALOGUE, 100_000, false);
                String markdown = read(WorkPlanMarkdown.of(plan, Shared.CATALOGUE));
                for (Caution x : cautions) {
                    assertThat(times(x.text(), text)).as("%s by %s in text", x.id(), method).isEqualTo(1);
                    assertThat(times(x.text(), markdown)).as("%s by %s in Markdown", x.id(), method).isEqualTo(1);
                }
            }
        }));
    }

    @Test
    void laterStepsNameItShortly() {
        WorkPlan plan = WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE,
                new JobCheck(Shared.CATALOGUE).read(Path.of("cases/hawthorn-row.json")), Optional.empty());
        long scalds = plan.steps().stream().filter(s -> s.caution().equals(Optional.of("scald"))).count();
        assertThat(scalds).isGreaterThan(1);
        assertThat(times("Caution: scald, as above", WorkPlanText.of(plan, Shared.CATALOGUE, 100_000, false))).isEqualTo((int) scalds - 1);
    }

    private static List<Optional<String>> methods() {
        List<Optional<String>> methods = new ArrayList<>(Shared.CATALOGUE.methods().values().stream().map(Method::id).map(Optional::of).toList());
        methods.add(Optional.empty());
        return methods;
    }

    /** The words of a Markdown document as a reader sees them. */
    private static String read(String markdown) {
        StringBuilder words = new StringBuilder();
        Parser.builder().build().parse(markdown).accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }
        });
        return words.toString();
    }

    private static int times(String words, String in) {
        return (in.length() - in.replace(words, "").length()) / words.length();
    }
}
