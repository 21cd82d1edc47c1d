package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A danger is met however it is told: by a ticked red line, by another answer, by a reading, by a row or by a sum. */
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
        List<String> options = Shared.CATALOGUE.finding(Catalogue.RED_LINES).optionIds();
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

    /** A rule that no way of telling meets could be broken unseen, and a way that is left out is missed here. */
    @Test
    void everyStopRuleIsMetBySomeWayOfTellingItsDanger() {
        Set<String> met = new TreeSet<>();
        WRITTEN.dangers().values().forEach(danger -> danger.ways().forEach(way -> Shared.ASSESSOR
                .assess(new JobCheck(Shared.CATALOGUE).check(JobFile.draft(way.job(), "told"))).stops().stream()
                .filter(s -> s.id().equals(danger.id())).forEach(s -> s.rules().forEach(r -> met.add(r.id())))));
        assertThat(Shared.RULES.rules().values().stream().filter(r -> r.folder().equals("stop")).map(RuleInfo::id).toList())
                .isSubsetOf(met);
    }
}
