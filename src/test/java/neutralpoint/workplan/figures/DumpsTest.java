package neutralpoint.workplan.figures;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.workplan.Houses.MACHINE;
import static neutralpoint.workplan.Houses.figure;
import static neutralpoint.workplan.Houses.isAbout;
import static neutralpoint.workplan.Houses.published;
import static neutralpoint.workplan.Houses.tenRadiators;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.workplan.Houses;
import org.junit.jupiter.api.Test;

/** Radiators run to the drain one by one: how much water, how long, and which of them. */
class DumpsTest {

    /**
     * A panel of 600 x 1000 mm holds 0.40 + 4.75 x 0.6 = 3.25 litres, 15 % either way (RADV-11-600: 3.15). Grey water is clear
     * with a twentieth left: ln 20 = 2.9957 turnovers (DIL-N1500-500), 9.74 litres, and at 12 litres a minute 0.811 minutes.
     */
    @Test
    void aDumpRunsThreeTimesWhatTheRadiatorHolds() {
        assertThat(published("content", "RADV-11-600").asFields().get("litre_per_m").asNumber()).isCloseTo(3.25, within(0.15 * 3.25));
        Dump dump = Quantities.of(tenRadiators(), MACHINE).dumps().get(0);
        assertThat(dump.radiator()).isEqualTo("room 1");
        isAbout(dump.litres(), 8.276, 9.736, 11.197, 0.001);
        assertThat(dump.litres().value().likely()).isCloseTo(3.25 * published("dilution", "DIL-N1500-500").asNumber(), within(0.001));
        isAbout(dump.minutes().orElseThrow(), 0.690, 0.811, 0.933, 0.001);
        isAbout(figure(tenRadiators(), MACHINE, "dump-litres"), 82.76, 97.36, 111.97, 0.01);
        isAbout(figure(tenRadiators(), MACHINE, "dump-minutes"), 6.90, 8.11, 9.33, 0.01);
    }

    /** Straw water is clear with a tenth left, ln 10 = 2.303; black all along wants a fiftieth, ln 50 = 3.912. */
    @Test
    void theDirtierTheWaterTheLongerTheDump() {
        assertThat(turnovers(aJob().panels(3, "type-11", 600, 1000).with("bleed-water", "straw").job()).likely()).isCloseTo(2.3026, within(1e-4));
        assertThat(turnovers(aJob().panels(3, "type-11", 600, 1000).with("bleed-water", "orange").job()).likely()).isCloseTo(2.9957, within(1e-4));
        assertThat(turnovers(aJob().panels(3, "type-11", 600, 1000).with("drain-water", "black-all-along").job()).likely()).isCloseTo(3.9120, within(1e-4));
        assertThat(turnovers(aJob().panels(3, "type-11", 600, 1000).with("cold-base-count", "most").job()).likely()).isCloseTo(3.9120, within(1e-4));
        Estimate unseen = turnovers(aJob().panels(3, "type-11", 600, 1000).job());
        assertThat(unseen.low()).isCloseTo(2.3026 * 0.85, within(1e-4));
        assertThat(unseen.high()).isCloseTo(3.9120 * 1.15, within(1e-4));
        assertThat(Quantities.of(aJob().panels(3, "type-11", 600, 1000).job(), MACHINE).toMeasure()).anyMatch(s -> s.startsWith("Look at the water"));
        // One sign of dirt outweighs a clear cup.
        assertThat(turnovers(aJob().panels(3, "type-11", 600, 1000).with("bleed-water", "clear").with("drain-water", "dirty-then-clear").job())
                .likely()).isCloseTo(2.9957, within(1e-4));
    }

    /** A dump over what a panel of 600 x 1000 mm likely holds. */
    private static Estimate turnovers(Job job) {
        return Quantities.of(job, MACHINE).dumps().get(0).litres().value().times(1 / 3.25);
    }

    /** Only the radiators with a cold base are cleaned when the rest is left alone; one nobody measured holds some 5 litres. */
    @Test
    void aPartialCleanseDumpsOnlyTheColdBases() {
        JobScope hosed = Houses.scope("partial-cleanse", "radiator-off-and-hosed", Set.of("sealed"));
        Job job = tenRadiators().with("radiator-pattern", new Answer.ByRadiator(Map.of("room 2", "cold-at-base", "room 3", "hot-all-over",
                "shed", "cold-at-base")));
        assertThat(Quantities.of(job, hosed).dumps()).extracting(Dump::radiator).containsExactly("room 2", "shed");
        // 3.25 + 5 litres, x 2.9957 = 24.71.
        assertThat(figure(job, hosed, "dump-litres").value().likely()).isCloseTo(24.71, within(0.01));
        assertThat(Quantities.of(tenRadiators(), hosed).toMeasure()).anyMatch(s -> s.startsWith("Say which radiators are cold at the base"));
        assertThat(Quantities.of(tenRadiators(), hosed).figure("water-litres")).as("unknown dumps make no total").isEmpty();
    }
}
