package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.document.Json;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.report.AssessmentJson;
import neutralpoint.workings.Calculation;
import org.junit.jupiter.api.Test;

/** What the readings of a house come to in its assessment, beside what was answered by hand. */
class SurveyTest {
    private static final String PATTERN = "survey-pattern";

    /** So many radiators that all drop 26 degrees from tail to tail. */
    private static Job starved(int radiators) {
        return Job.begin("test").withRadiators(IntStream.range(0, radiators).mapToObj(i ->
                new Radiator("room " + i, "ground").withTemperatures(Temperatures.of(66, 47, 70, 44))).toList());
    }

    private static Optional<Answer> workedOut(Job job, String finding) {
        return Shared.ASSESSOR.assess(job).workedOut().stream().flatMap(w -> w.finding().stream())
                .filter(f -> f.id().equals(finding)).map(Calculation.Found::answer).findFirst();
    }

    @Test
    void fourCompleteRadiatorsMakeAPattern() {
        assertThat(workedOut(starved(4), PATTERN)).contains(new Answer.Several(List.of("all-starved")));
    }

    @Test
    void fewerMakeNone() {
        assertThat(workedOut(starved(3), PATTERN)).isEmpty();
        Radiator boxedIn = new Radiator("hall", "ground").withTemperatures(new Temperatures(OptionalDouble.of(66), OptionalDouble.of(47),
                OptionalDouble.of(70), OptionalDouble.empty()));
        assertThat(workedOut(starved(4).withRadiators(List.of(starved(4).radiators().get(0), starved(4).radiators().get(1),
                starved(4).radiators().get(2), boxedIn)), PATTERN)).as("one tail unread").isEmpty();
    }

    @Test
    void aHouseWithoutAPatternSaysSo() {
        Job mixed = starved(1).withRadiators(List.of(radiator("a", 58), radiator("b", 57), radiator("c", 60), radiator("d", 55)));
        assertThat(workedOut(mixed, PATTERN)).contains(new Answer.Several(List.of()));
    }

    private static Radiator radiator(String name, double returnTail) {
        return new Radiator(name, "ground").withTemperatures(Temperatures.of(68, returnTail, 70, returnTail));
    }

    @Test
    void anAnswerByHandStandsAndTheDifferenceIsNamed() {
        Job job = starved(4).with("cold-base-count", new Answer.One("most"));
        Assessment a = Shared.ASSESSOR.assess(job);

        assertThat(a.known().answer("cold-base-count")).as("the readings say none").contains(new Answer.One("most"));
        assertThat(a.disagreements()).singleElement().satisfies(w ->
                assertThat(w.finding().orElseThrow()).isEqualTo(new Calculation.Found("cold-base-count", new Answer.One("none"))));
    }

    @Test
    void anAnswerByHandThatAgreesIsNoDifference() {
        assertThat(Shared.ASSESSOR.assess(starved(4).with("cold-base-count", new Answer.One("none"))).disagreements()).isEmpty();
        assertThat(Shared.ASSESSOR.assess(starved(4).with("cold-base-count", Answer.NOT_CHECKED)).disagreements()).isEmpty();
        assertThat(Shared.ASSESSOR.assess(starved(4).with("tail-drop-degrees", new Answer.Reading(24, "degrees"))).disagreements())
                .as("two readings of 26 degrees differ by as much").isEmpty();
        assertThat(Shared.ASSESSOR.assess(starved(4).with("tail-drop-degrees", new Answer.Reading(22, "degrees"))).disagreements()).hasSize(1);
    }

    @Test
    void aHandAndAThermometerNeedNotHaveBeenAtTheSameRadiators() {
        Job job = starved(4).with("radiator-pattern", new Answer.ByRadiator(Map.of("room 1", "lukewarm", "attic", "cold-all-over")));
        assertThat(Shared.ASSESSOR.assess(job).disagreements()).isEmpty();
        Job other = job.with("radiator-pattern", new Answer.ByRadiator(Map.of("room 1", "cold-at-base")));
        assertThat(Shared.ASSESSOR.assess(other).disagreements()).hasSize(1);
    }

    @Test
    void whatWasLeftOpenIsFilledIn() {
        Assessment a = Shared.ASSESSOR.assess(starved(4).with("cold-base-count", Answer.NOT_CHECKED));
        assertThat(a.known().answer("cold-base-count")).contains(new Answer.One("none"));
        assertThat(a.job().answer("cold-base-count")).as("the engineer's own record is left alone").contains(Answer.NOT_CHECKED);
    }

    @Test
    void aWhatIfLeavesNoTrace() {
        Job job = starved(5).with("complaint", new Answer.Several(List.of("all-lukewarm")));
        String before = json(job);
        Shared.ASSESSOR.assess(job.with("pump-head-m", new Answer.Reading(2, "m")).with("cold-base-count", new Answer.One("most")));
        Shared.ASSESSOR.assess(job.withRadiators(List.of()));
        assertThat(json(job)).isEqualTo(before);
    }

    private static String json(Job job) {
        return Json.pretty(AssessmentJson.of(Shared.ASSESSOR.assess(job), List.of()));
    }
}
