package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import org.junit.jupiter.api.Test;

/** What the table of radiators says, with rooms at 20 degrees. */
class SurveyWorkingsTest {
    private static final Radiator HEALTHY = Given.radiator("hall", 68, 62, 71, 60);
    private static final Radiator RESTRICTED = Given.radiator("lounge", 66, 42, 71, 58);

    private static Map<String, String> felt(Radiator... radiators) {
        return ((Answer.ByRadiator) Given.of(Given.house(radiators), "radiator-pattern").orElseThrow().finding().orElseThrow().answer()).choices();
    }

    private static double figure(Job job, String finding) {
        return ((Answer.Reading) Given.of(job, finding).orElseThrow().finding().orElseThrow().answer()).value();
    }

    @Test
    void theReadingsSayWhatAHandWouldSay() {
        assertThat(felt(HEALTHY)).containsEntry("hall", "hot-all-over");
        assertThat(felt(RESTRICTED)).as("24 degrees under its top, 16 under the water leaving").containsEntry("lounge", "cold-at-base");
        assertThat(felt(Given.radiator("bath", 40, 60, 71, 60))).containsEntry("bath", "cold-at-top");
        assertThat(felt(Given.radiator("box", 22, 21, 23, 22))).containsEntry("box", "cold-all-over");
        assertThat(felt(Given.radiator("den", 38, 36, 42, 34))).containsEntry("den", "lukewarm");
        assertThat(felt(Given.radiator("far", 60, 45, 70, 44))).as("26 degrees from tail to tail: starved").containsEntry("far", "lukewarm");
        assertThat(felt(Given.face("study", 66, 50))).as("without tails the face must do").containsEntry("study", "cold-at-base");
    }

    @Test
    void aColdBodyWithOneHotTailIsNotLukewarm() {
        assertThat(felt(Given.radiator("stuck", 22, 21, 70, 22))).containsEntry("stuck", "one-tail-hot");
        assertThat(felt(Given.radiator("stuck", 22, 21, 22, 70))).containsEntry("stuck", "one-tail-hot");
        assertThat(felt(Given.radiator("off", 22, 21, 32, 22))).as("warmed by its pipe alone").containsEntry("off", "cold-all-over");
    }

    @Test
    void aRadiatorFedBackwardsIsFeltByItsFace() {
        assertThat(felt(Given.radiator("hall", 66, 64, 60, 70))).containsEntry("hall", "hot-all-over");
        assertThat(felt(Given.radiator("hall", 40, 64, 60, 70))).containsEntry("hall", "cold-at-top");
        assertThat(Given.saying(Given.house(Given.radiator("hall", 40, 64, 60, 70), HEALTHY), "Hotter at the return tail").says())
                .isEqualTo("Hotter at the return tail: hall, 1 of 2.");
    }

    @Test
    void hotOnesAreCounted() {
        Job job = Given.house(HEALTHY, RESTRICTED);
        assertThat(Given.of(job, "radiator-pattern").orElseThrow().says()).isEqualTo("1 of 2 radiators are hot all over.");
        assertThat(Given.of(Given.house(HEALTHY), "radiator-pattern").orElseThrow().grade()).isEqualTo(PASS);
    }

    @Test
    void aRadiatorShutOffSaysNothing() {
        Radiator shut = Given.withValves(Given.radiator("spare", 21, 20, 22, 21), "shut");
        assertThat(Given.workings(Given.house(shut))).isEmpty();
        assertThat(SurveyedRadiator.of(Given.house(Given.withValves(HEALTHY, "shut")))).as("hot all the same: its valve lets by").hasSize(1);
    }

    @Test
    void aRadiatorReadAtOneEndOnlyIsLeftOut() {
        assertThat(Given.workings(Given.house(new Radiator("hall", "ground")))).isEmpty();
    }

    @Test
    void restrictedBasesAreCountedFromThreeRadiatorsOn() {
        assertThat(Given.choice(bases(0, 3), "cold-base-count")).isEqualTo("none");
        assertThat(Given.choice(bases(1, 3), "cold-base-count")).isEqualTo("one");
        assertThat(Given.choice(bases(2, 5), "cold-base-count")).isEqualTo("few");
        assertThat(Given.choice(bases(2, 4), "cold-base-count")).as("half of them").isEqualTo("most");
        assertThat(Given.choice(bases(2, 2), "cold-base-count")).as("too few to count over").isEmpty();
    }

    private static Job bases(int restricted, int all) {
        return Job.begin("test").withRadiators(IntStream.range(0, all).mapToObj(i -> new Radiator("room " + i, "ground")
                .withTemperatures((i < restricted ? RESTRICTED : HEALTHY).temperatures())).toList());
    }

    @Test
    void theWorstRadiatorIsTheOneAHandWouldPick() {
        Job job = Given.house(HEALTHY, RESTRICTED, Given.radiator("dining", 66, 30, 71, 58), Given.radiator("far", 60, 45, 70, 44));
        // 66 - 30 = 36 degrees, and 71 - 58 = 13 between its tails.
        assertThat(figure(job, "top-over-base-degrees")).isEqualTo(36);
        assertThat(figure(job, "tail-drop-degrees")).isEqualTo(13);
        // Without a restricted base the one with most gas: 40 - 60.
        assertThat(figure(Given.house(HEALTHY, Given.radiator("bath", 40, 60, 71, 60)), "top-over-base-degrees")).isEqualTo(-20);
        // Without either the widest drop: 70 - 44.
        assertThat(figure(Given.house(HEALTHY, Given.radiator("far", 60, 45, 70, 44)), "tail-drop-degrees")).isEqualTo(26);
    }

    @Test
    void aDifferenceThatCannotBeIsReadAgain() {
        Job job = Given.house(Given.face("hall", 110, -5));
        assertThat(Given.of(job, "top-over-base-degrees")).isEmpty();
        assertThat(Given.saying(job, "The worst radiator").says())
                .isEqualTo("The worst radiator is hall: top over base 115 degrees, which is hard to believe; read it again.");
    }

    @Test
    void aLongListIsCutShort() {
        List<Radiator> radiators = new ArrayList<>(bases(40, 40).radiators());
        Calculation listed = Given.saying(Job.begin("test").withRadiators(radiators), "Base restricted");
        assertThat(listed.says()).startsWith("Base restricted: room 0, room 1, ").endsWith(" more, 40 of 40.").hasSizeLessThan(160);
        assertThat(listed.sums()).hasSize(40);
        assertThat(listed.grade()).isEqualTo(WARN);
    }

    @Test
    void aWarmRoomLeavesLessToTell() {
        Job warm = Given.with(Given.house(Given.face("hall", 38, 37)), "room-celsius", 35);
        assertThat(SurveyedRadiator.of(warm).get(0).state()).isEqualTo(RadiatorState.COLD);
        assertThat(SurveyedRadiator.of(warm.without("room-celsius")).get(0).state()).as("at 20 degrees").isEqualTo(RadiatorState.LUKEWARM);
    }

    private static List<String> reaches(double... runs) {
        return SurveyedRadiator.of(Job.begin("test").withRadiators(IntStream.range(0, runs.length)
                .mapToObj(i -> Given.atRun(Given.face("room " + i, 68, 62), runs[i])).toList())).stream().map(SurveyedRadiator::reach).toList();
    }

    @Test
    void theShortestThirdIsNearAndTheLongestFar() {
        assertThat(reaches(4, 8, 12, 16, 20, 24)).containsExactly("near", "near", "middle", "middle", "far", "far");
        assertThat(reaches(20, 4, 12)).containsExactly("far", "near", "middle");
        assertThat(reaches(4, 20)).containsExactly("unknown", "unknown");
    }

    @Test
    void equalRunsReachEquallyFar() {
        assertThat(reaches(5, 5, 5, 5, 9)).containsExactly("near", "near", "near", "near", "far");
        assertThat(reaches(7, 7, 7, 7)).as("neither near nor far").containsOnly("middle");
        assertThat(reaches(3, 5, 5, 5, 5, 5, 9)).containsExactly("near", "middle", "middle", "middle", "middle", "middle", "far");
    }
}
