package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import neutralpoint.Radiators;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import org.junit.jupiter.api.Test;

/** What the table of radiators says, with rooms at 20 degrees. */
class SurveyWorkingsTest {
    private static final Radiator HEALTHY = Radiators.read("hall", 68, 62, 71, 60);
    private static final Radiator RESTRICTED = Radiators.read("lounge", 66, 42, 71, 58);

    private static Map<String, String> felt(Radiator... radiators) {
        return ((Answer.ByRadiator) WorkedOut.of(aJob().radiators(radiators).job(), "radiator-pattern").orElseThrow().finding().orElseThrow().answer()).choices();
    }

    private static double figure(Job job, String finding) {
        return ((Answer.Reading) WorkedOut.of(job, finding).orElseThrow().finding().orElseThrow().answer()).value();
    }

    @Test
    void theReadingsSayWhatAHandWouldSay() {
        assertThat(felt(HEALTHY)).containsEntry("hall", "hot-all-over");
        assertThat(felt(RESTRICTED)).as("24 degrees under its top, 16 under the water leaving").containsEntry("lounge", "cold-at-base");
        assertThat(felt(Radiators.read("bath", 40, 60, 71, 60))).containsEntry("bath", "cold-at-top");
        assertThat(felt(Radiators.read("box", 22, 21, 23, 22))).containsEntry("box", "cold-all-over");
        assertThat(felt(Radiators.read("den", 38, 36, 42, 34))).containsEntry("den", "lukewarm");
        assertThat(felt(Radiators.read("far", 60, 45, 70, 44))).as("26 degrees from tail to tail: starved").containsEntry("far", "lukewarm");
        assertThat(felt(Radiators.face("study", 66, 50))).as("without tails the face must do").containsEntry("study", "cold-at-base");
    }

    @Test
    void aColdBodyWithOneHotTailIsNotLukewarm() {
        assertThat(felt(Radiators.read("stuck", 22, 21, 70, 22))).containsEntry("stuck", "one-tail-hot");
        assertThat(felt(Radiators.read("stuck", 22, 21, 22, 70))).containsEntry("stuck", "one-tail-hot");
        assertThat(felt(Radiators.read("off", 22, 21, 32, 22))).as("warmed by its pipe alone").containsEntry("off", "cold-all-over");
    }

    @Test
    void aRadiatorFedBackwardsIsFeltByItsFace() {
        assertThat(felt(Radiators.read("hall", 66, 64, 60, 70))).containsEntry("hall", "hot-all-over");
        assertThat(felt(Radiators.read("hall", 40, 64, 60, 70))).containsEntry("hall", "cold-at-top");
        assertThat(WorkedOut.saying(aJob().radiators(Radiators.read("hall", 40, 64, 60, 70), HEALTHY).job(), "Hotter at the return tail").says())
                .isEqualTo("Hotter at the return tail: hall, 1 of 2.");
    }

    @Test
    void hotOnesAreCounted() {
        Job job = aJob().radiators(HEALTHY, RESTRICTED).job();
        assertThat(WorkedOut.of(job, "radiator-pattern").orElseThrow().says()).isEqualTo("1 of 2 radiators are hot all over.");
        assertThat(WorkedOut.of(aJob().radiators(HEALTHY).job(), "radiator-pattern").orElseThrow().grade()).isEqualTo(PASS);
    }

    @Test
    void aRadiatorShutOffSaysNothing() {
        Radiator shut = Radiators.withValves(Radiators.read("spare", 21, 20, 22, 21), "shut");
        assertThat(WorkedOut.workings(aJob().radiators(shut).job())).isEmpty();
        assertThat(SurveyedRadiator.of(aJob().radiators(Radiators.withValves(HEALTHY, "shut")).job())).as("hot all the same: its valve lets by").hasSize(1);
    }

    @Test
    void aRadiatorReadAtOneEndOnlyIsLeftOut() {
        assertThat(WorkedOut.workings(aJob().radiators(new Radiator("hall", "ground")).job())).isEmpty();
    }

    @Test
    void restrictedBasesAreCountedFromThreeRadiatorsOn() {
        assertThat(WorkedOut.choice(bases(0, 3), "cold-base-count")).isEqualTo("none");
        assertThat(WorkedOut.choice(bases(1, 3), "cold-base-count")).isEqualTo("one");
        assertThat(WorkedOut.choice(bases(2, 5), "cold-base-count")).isEqualTo("few");
        assertThat(WorkedOut.choice(bases(2, 4), "cold-base-count")).as("half of them").isEqualTo("most");
        assertThat(WorkedOut.choice(bases(2, 2), "cold-base-count")).as("too few to count over").isEmpty();
    }

    private static Job bases(int restricted, int all) {
        return Job.begin("test").withRadiators(IntStream.range(0, all).mapToObj(i -> new Radiator("room " + i, "ground")
                .withTemperatures((i < restricted ? RESTRICTED : HEALTHY).temperatures())).toList());
    }

    @Test
    void theWorstRadiatorIsTheOneAHandWouldPick() {
        Job job = aJob().radiators(HEALTHY, RESTRICTED, Radiators.read("dining", 66, 30, 71, 58), Radiators.read("far", 60, 45, 70, 44)).job();
        // 66 - 30 = 36 degrees, and 71 - 58 = 13 between its tails.
        assertThat(figure(job, "top-over-base-degrees")).isEqualTo(36);
        assertThat(figure(job, "tail-drop-degrees")).isEqualTo(13);
        // Without a restricted base the one with most gas: 40 - 60.
        assertThat(figure(aJob().radiators(HEALTHY, Radiators.read("bath", 40, 60, 71, 60)).job(), "top-over-base-degrees")).isEqualTo(-20);
        // Without either the widest drop: 70 - 44.
        assertThat(figure(aJob().radiators(HEALTHY, Radiators.read("far", 60, 45, 70, 44)).job(), "tail-drop-degrees")).isEqualTo(26);
    }

    @Test
    void aDifferenceThatCannotBeIsReadAgain() {
        Job job = aJob().radiators(Radiators.face("hall", 110, -5)).job();
        assertThat(WorkedOut.of(job, "top-over-base-degrees")).isEmpty();
        assertThat(WorkedOut.saying(job, "The worst radiator").says())
                .isEqualTo("The worst radiator is hall: top over base 115 degrees, which is hard to believe; read it again.");
    }

    @Test
    void aLongListIsCutShort() {
        List<Radiator> radiators = new ArrayList<>(bases(40, 40).radiators());
        Calculation listed = WorkedOut.saying(Job.begin("test").withRadiators(radiators), "Base restricted");
        assertThat(listed.says()).startsWith("Base restricted: room 0, room 1, ").endsWith(" more, 40 of 40.").hasSizeLessThan(160);
        assertThat(listed.sums()).hasSize(40);
        assertThat(listed.grade()).isEqualTo(WARN);
    }

    @Test
    void aWarmRoomLeavesLessToTell() {
        Job warm = aJob().radiators(Radiators.face("hall", 38, 37)).readings("room-celsius", 35).job();
        assertThat(SurveyedRadiator.of(warm).get(0).state()).isEqualTo(RadiatorState.COLD);
        assertThat(SurveyedRadiator.of(warm.without("room-celsius")).get(0).state()).as("at 20 degrees").isEqualTo(RadiatorState.LUKEWARM);
    }

    private static List<String> reaches(double... runs) {
        return SurveyedRadiator.of(Job.begin("test").withRadiators(IntStream.range(0, runs.length)
                .mapToObj(i -> Radiators.atRun(Radiators.face("room " + i, 68, 62), runs[i])).toList())).stream().map(SurveyedRadiator::reach).toList();
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
