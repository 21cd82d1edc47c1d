package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import org.junit.jupiter.api.Test;

/**
 * What the gauge of a sealed system says of its vessel. The house holds 100 litres; from 15 to a mean of 65 degrees
 * they gain 1.89 % = 1.89 litres (densities 999.1 and 980.6 kg/m3).
 */
class VesselWorkingsTest {
    private static final String VESSEL = "vessel-worked-out";

    private static Job house(double vesselLitres, double coldBar, double hotBar) {
        return aJob().readings("system-content-litres", 100, "vessel-size-litres", vesselLitres, "pressure-cold-bar", coldBar,
                "pressure-hot-bar", hotBar).job();
    }

    private static Job charged(double chargeBar, Job house) {
        return more(house).readings("vessel-charge-bar", chargeBar).job();
    }

    private static String verdict(Job job) {
        return WorkedOut.choice(job, VESSEL);
    }

    private static Calculation hot(Job job) {
        return WorkedOut.saying(job, "Hot gauge");
    }

    @Test
    void aSoundVesselGivesWay() {
        // Boyle: 2.013 bar x 12 l / (12 - 1.89) l = 2.39 bar absolute = 1.38 on the gauge.
        assertThat(verdict(house(12, 1, 1.4))).isEqualTo("as-expected");
        assertThat(hot(house(12, 1, 1.4)).says()).isEqualTo("Hot gauge 1.4 bar; a sound vessel of 12 litres would show 1.38 bar.");
        assertThat(hot(house(12, 1, 1.4)).grade()).isEqualTo(PASS);
    }

    @Test
    void aSteepRiseMeansThatTheChargeIsGone() {
        // Air that explains it: 1.89 x 2.513 x 3.613 / 1.1 = 15.6 bar litres; / 12 l = 1.30 bar absolute = 0.29 on the gauge.
        Calculation w = hot(house(12, 1.5, 2.6));
        assertThat(verdict(house(12, 1.5, 2.6))).isEqualTo("charge-lost");
        assertThat(w.says()).endsWith("Vessel charge about 0.29 bar.");
        assertThat(w.sums()).last().asString().isEqualTo("a charge of 0.29 bar would explain 2.6 bar hot");
        assertThat(w.grade()).isEqualTo(FAIL);
    }

    @Test
    void aVesselWithoutAnyAirIsFullOfWater() {
        // 1.89 x 2.013 x 3.813 / 1.8 = 8.1 bar litres; / 12 l = 0.67 bar absolute, less than the air outside.
        assertThat(hot(house(12, 1, 2.8)).says()).endsWith("Vessel charge about 0 bar.");
        assertThat(hot(house(12, 1, 2.8)).sums()).last().asString().startsWith("only a vessel full of water would explain");
    }

    @Test
    void aSystemFilledToLessThanTheChargeRisesSteeplyToo() {
        // A charge of 1.27 bar gives it as well: 2.713 x 10.1 / 12 = 2.28 bar absolute. New vessels have 0.5 to 1.5 bar.
        assertThat(verdict(house(12, 0.3, 1.7))).isEmpty();
        assertThat(hot(house(12, 0.3, 1.7)).says()).endsWith("Measure the vessel's charge to tell more.");
        assertThat(verdict(charged(1.27, house(12, 0.3, 1.7)))).as("and measured, it explains all").isEqualTo("as-expected");
    }

    @Test
    void aMeasuredChargeUnderHalfOfWhatItShouldBeIsLost() {
        assertThat(verdict(charged(0.49, house(12, 1, 2.8)))).isEqualTo("charge-lost");
        assertThat(hot(charged(0.3, house(12, 1, 2.8))).says())
                .isEqualTo("Hot gauge 2.8 bar; a sound vessel of 12 litres would show 1.38 bar. Its charge is only 0.3 bar.");
    }

    @Test
    void aChargedVesselThatTheWaterDoesNotReachLetsThePressureRunUp() {
        assertThat(verdict(charged(1, house(12, 1, 2.8)))).isEqualTo("too-small");
        assertThat(hot(charged(1, house(12, 1, 2.8))).says()).endsWith("Its charge is there, so water does not reach all of it.");
    }

    @Test
    void anUndersizedVesselRunsUpEvenWhenSound() {
        // 2.013 x 4 / (4 - 1.89) = 3.82 bar absolute = 2.8: within 0.35 of the safety valve.
        assertThat(verdict(house(4, 1, 2.9))).isEqualTo("too-small");
        assertThat(hot(house(4, 1, 2.9)).says()).endsWith("It is too small for this much water.");
        assertThat(verdict(house(1, 1, 3))).as("less vessel than expansion").isEqualTo("too-small");
        assertThat(hot(house(1, 1, 3)).says()).contains("would lift the safety valve");
        assertThat(hot(house(1, 1, 3)).sums()).anyMatch(s -> s.endsWith("it cannot take that much at any pressure"));
    }

    @Test
    void aVesselIsNotBlamedForAFillThatIsTooHigh() {
        // From 2.4 bar: 3.413 x 12 / 10.1 = 4.05 absolute = 3.04 bar. Filled to 1.5 bar it would have shown 1.97.
        assertThat(verdict(house(12, 2.4, 2.9))).isEmpty();
        assertThat(hot(house(12, 2.4, 2.9)).says()).endsWith("The system is filled too high: set that right first.");
    }

    @Test
    void aVesselIsNotBlamedForAChargeAboveTheFill() {
        // It takes no water before 2.2 bar: 3.213 x 12 / 10.1 = 3.82 absolute = 2.8 bar. Charged to the fill it would show 1.38.
        assertThat(verdict(charged(2.2, house(12, 1, 2.8)))).isEmpty();
        assertThat(hot(charged(2.2, house(12, 1, 2.8))).says()).endsWith("Its charge stands above the fill: set that right first.");
        assertThat(hot(charged(2.2, house(12, 1, 2.8))).grade()).isEqualTo(WARN);
    }

    @Test
    void aGaugeThatHardlyMovesIsNotARiseAsItShouldBe() {
        // A vessel of 4 litres should show 2.8; half the way up from 1 bar, less a misreading, is 1.6.
        assertThat(verdict(house(4, 1, 1.05))).isEmpty();
        assertThat(hot(house(4, 1, 1.05)).grade()).isEqualTo(NOTE);
    }

    @Test
    void nothingIsSaidFromAGaugeReadWhileTheBoilerWasCool() {
        assertThat(verdict(more(house(12, 1, 2.8)).readings("boiler-flow-celsius", 39).job())).isEmpty();
        assertThat(verdict(more(house(12, 1, 2.8)).readings("boiler-flow-celsius", 75).job())).isEqualTo("charge-lost");
    }

    @Test
    void aHotReadingUnderTheColdOneSaysNothing() {
        assertThat(WorkedOut.workings(house(12, 1.5, 1.0))).noneMatch(w -> w.says().startsWith("Hot gauge"));
    }

    @Test
    void whatTheContentLeavesOpenStaysOpen() {
        // 8 radiators hold 67.5 to 112.5 litres: a vessel of 4 should show anything from 1.9 to over 3 bar.
        Job unsure = aJob().panels(8, "type-11", 600, 1000).readings("vessel-size-litres", 4, "pressure-cold-bar", 1, "pressure-hot-bar", 2.7).job();
        Job byCount = unsure.withRadiators(unsure.radiators().stream().map(r -> new Radiator(r.name(), r.floor())).toList());
        assertThat(verdict(byCount)).isEmpty();
        assertThat(hot(byCount).grade()).isEqualTo(NOTE);
    }

    @Test
    void aVesselLargerThanTheSystemHardlyMovesTheGauge() {
        Job job = aJob().readings("system-content-litres", 10, "vessel-size-litres", 200, "pressure-cold-bar", 1, "pressure-hot-bar", 1.1).job();
        assertThat(verdict(job)).isEqualTo("as-expected");
        assertThat(hot(job).says()).contains("would show 1 bar");
    }

    @Test
    void theHottestFlowGainsMost() {
        // Flow 120, drop 20: mean 110 degrees, 951 kg/m3, 5.06 % of 100 litres.
        Job job = more(house(12, 1, 3)).readings("boiler-flow-celsius", 120, "boiler-flow-return-kelvin", 20).job();
        assertThat(hot(job).sums().get(1)).startsWith("from 15 to 110 degrees it gains 5.0");
    }

    @Test
    void theFillReachesTheHighestRadiator() {
        // 0.1 bar for each of 7 m and 0.3 bar to vent it: 1 bar.
        assertThat(fill(1, 7)).isEqualTo(PASS);
        assertThat(fill(0.94, 7)).isEqualTo(WARN);
        assertThat(fill(0.69, 7)).as("the top radiator stands empty").isEqualTo(FAIL);
        assertThat(fill(0.3, -3)).as("a gauge in the loft").isEqualTo(PASS);
        assertThat(fill(2.1, 7)).as("too high").isEqualTo(WARN);
        assertThat(fill(0, 0)).as("no pressure, though nothing stands above the gauge").isEqualTo(WARN);
    }

    private static Calculation.Grade fill(double coldBar, double metres) {
        return WorkedOut.saying(aJob().readings("pressure-cold-bar", coldBar, "highest-radiator-above-gauge-m", metres).job(), "Filled to").grade();
    }

    @Test
    void theHotGaugeStaysUnderTheSafetyValve() {
        assertThat(WorkedOut.saying(aJob().readings("pressure-hot-bar", 2.6).job(), "Hot, the").grade()).isEqualTo(PASS);
        assertThat(WorkedOut.saying(aJob().readings("pressure-hot-bar", 2.7).job(), "Hot, the").grade()).isEqualTo(WARN);
        assertThat(WorkedOut.saying(aJob().readings("pressure-hot-bar", 3).job(), "Hot, the").grade()).isEqualTo(FAIL);
        assertThat(WorkedOut.saying(aJob().readings("pressure-hot-bar", 2.2).job(), "Hot, the").says())
                .isEqualTo("Hot, the gauge stands 0.8 bar under the safety valve.");
        assertThat(WorkedOut.saying(aJob().readings("pressure-hot-bar", 6).job(), "Hot, the").says())
                .isEqualTo("Hot, the gauge stands at 6 bar and the usual safety valve lifts at 3.");
    }

    @Test
    void theLineIsWhatASoundVesselShows() {
        PressureLine line = VesselWorkings.line(house(12, 1, 1.4)).orElseThrow();
        assertThat(line.expectedBar().apply(15).orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(line.expectedBar().apply(65).orElseThrow()).isCloseTo(1.38, within(0.005));
        assertThat(line.expectedBar().apply(-40)).isEqualTo(line.expectedBar().apply(15));
        assertThat(line.expectedBar().apply(400)).isEqualTo(line.expectedBar().apply(120));
        assertThat(VesselWorkings.line(aJob().readings("pressure-cold-bar", 1).job())).isEmpty();
    }
}
