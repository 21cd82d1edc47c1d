package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.authoring.RuleReader;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * A danger is met however it is told: by a ticked red line, by another answer, by a reading, by a row or by a sum.
 * Holds {@link StandingDangers}.
 */
class DangersTest {
    private static final Catalogue WRITTEN = CatalogueFiles.fromFolder(Path.of("rules/catalogue"));

    @TestFactory
    Stream<DynamicTest> everyWayOfTellingADangerRaisesIt() {
        return WRITTEN.dangers().values().stream().flatMap(danger -> danger.ways().stream().map(way ->
                DynamicTest.dynamicTest(danger.id() + " told by " + way.by(), () -> raises(danger, way))));
    }

    private static void raises(Danger danger, Danger.Way way) {
        Job job = new JobCheck(Shared.CATALOGUE).check(JobFile.draft(way.job(), "told"));
        Assessment a = Shared.ASSESSOR.assess(job);
        assertThat(a.stops()).extracting(Assessment.StopFound::id).contains(danger.id());
        Assessment.StopFound stop = a.stops().stream().filter(s -> s.id().equals(danger.id())).findFirst().orElseThrow();
        assertThat(stop.now().get(0)).isEqualTo(danger.now(a.known(), a.arrangement().traits(), standing(a)).get(0));
        assertThat(a.verdict().course().cleanses()).isFalse();
    }

    private static Set<String> standing(Assessment a) {
        return a.stops().stream().map(Assessment.StopFound::id).collect(Collectors.toSet());
    }

    @Test
    void everyOptionOfTheFirstQuestionIsADangerAndTwoAreNeverOne() {
        List<String> options = Shared.CATALOGUE.finding(FindingId.RED_LINES).optionIds();
        assertThat(options).allSatisfy(option -> assertThat(raisedBy(option)).as(option).hasSize(1));
        assertThat(options.stream().map(o -> raisedBy(o).get(0)).toList()).doesNotHaveDuplicates();
    }

    private static List<String> raisedBy(String redLine) {
        return Shared.ASSESSOR.assess(Shared.job("{\"findings\": {\"red-lines\": [\"" + redLine + "\"]}}")).stops().stream()
                .map(Assessment.StopFound::id).toList();
    }

    @Test
    void noDangerIsToldTwiceInTheSameWords() {
        assertThat(WRITTEN.dangers().values()).allSatisfy(d -> assertThat(d.ways().stream().map(Danger.Way::by).toList())
                .as(d.id()).doesNotHaveDuplicates());
    }

    @TestFactory
    Stream<DynamicTest> anEmergencyRaisesTheDangersItTellsAndNoOther() {
        List<String> houses = List.of("[]", "[\"gas-boiler\"]", "[\"oil-boiler\", \"solid-fuel\"]", "[\"heat-pump\"]");
        return WRITTEN.emergencies().values().stream().flatMap(e -> houses.stream().map(heat -> DynamicTest.dynamicTest(e.id() + " with " + heat, () -> {
            Job job = Shared.job("{\"findings\": {\"red-lines\": [], \"heat-source\": " + heat + "}, \"emergencies\": ["
                    + "{\"at\": \"2026-11-02T08:00\", \"what\": \"" + e.id() + "\"}]}");
            assertThat(Shared.ASSESSOR.assess(job).stops()).extracting(Assessment.StopFound::id)
                    .containsExactlyInAnyOrderElementsOf(WRITTEN.dangersOf(e, job, Set.of()).stream().map(Danger::id).toList());
        })));
    }

    @Test
    void noWordMeansTwoEmergencies() {
        assertThat(WRITTEN.emergencies().values().stream().flatMap(e -> e.words().stream()).toList()).doesNotHaveDuplicates();
    }

    @Test
    void whatIsOverStandsNoLongerAndWhatIsOnTheFirstQuestionStays() {
        Job job = Shared.job("{\"findings\": {\"red-lines\": [\"mixed-tap-water\"]}, \"emergencies\": ["
                + "{\"at\": \"2026-11-02T08:00\", \"what\": \"water-out\"}, {\"at\": \"2026-11-02T09:00\", \"over\": \"water-out\"}]}");
        assertThat(Shared.ASSESSOR.assess(job).stops()).extracting(Assessment.StopFound::id).containsExactly("waters-mixed");
    }

    /**
     * A rule that no way of telling meets could be broken unseen, and a way that is left out is missed here: every answer that
     * a stop rule takes is given by a way that meets the rule.
     */
    @Test
    void everyAnswerThatAStopRuleTakesIsGivenByAWayThatMeetsIt() {
        Set<String> met = new TreeSet<>();
        WRITTEN.dangers().values().forEach(danger -> danger.ways().forEach(way -> {
            Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).check(JobFile.draft(way.job(), "told")));
            a.stops().stream().flatMap(s -> s.rules().stream()).forEach(rule -> {
                met.add(rule.id());
                a.known().answers().forEach((finding, answer) -> options(answer).forEach(o -> met.add(rule.id() + ": " + finding + " " + o)));
            });
        }));
        List<String> taken = new ArrayList<>();
        for (RuleText rule : RuleReader.all(Path.of("rules"))) {
            if (rule.folder().equals("stop")) {
                taken.add(rule.id());
                rule.patterns().stream().filter(p -> p.fact().equals("Observed") && !p.absent()).forEach(p -> quoted(p, "finding")
                        .forEach(f -> quoted(p, "answer").forEach(o -> taken.add(rule.id() + ": " + f + " " + o))));
            }
        }
        assertThat(taken.stream().filter(t -> !met.contains(t)).toList()).isEmpty();
    }

    private static List<String> options(Answer answer) {
        return answer instanceof Answer.One one ? List.of(one.choice()) : answer instanceof Answer.Several several ? several.choices()
                : answer instanceof Answer.ByRadiator by ? List.copyOf(by.choices().values()) : List.of();
    }

    /** The quoted words that a condition asks of a field. */
    private static List<String> quoted(RuleText.Pattern pattern, String field) {
        return pattern.constraints().stream().filter(c -> c.matches(field + "\\s+(==|in)\\b.*|" + field + "\\s*==.*"))
                .flatMap(c -> Pattern.compile("\"([^\"]*)\"").matcher(c).results().map(m -> m.group(1))).toList();
    }
}
