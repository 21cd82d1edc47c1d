package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class KvTest {
    /** A radiator valve of Kv 0.5 at 0.04 bar passes 0.5 · √0.04 = 0.1 m³/h, which is 1.67 L/min. */
    @Test
    void aRadiatorValve() {
        assertThat(Kv.flowCubicMetresPerHour(0.5, 0.04, 1000)).isCloseTo(0.1, within(1e-12));
        assertThat(Kv.pressureDropBar(0.1, 0.5, 1000)).isCloseTo(0.04, within(1e-12));
        assertThat(Kv.kv(0.1, 0.04, 1000)).isCloseTo(0.5, within(1e-12));
    }

    /** Glycol of 1040 kg/m³ needs 1.04 times the drop of water for the same flow. */
    @Test
    void aDenserLiquidDropsMore() {
        assertThat(Kv.pressureDropBar(0.1, 0.5, 1040)).isCloseTo(0.0416, within(1e-12));
    }

    /** Two alike in series: Kv / √2 = 0.7071; two alike side by side: 2. For 3 and 4 in series: 1 / √(1/9 + 1/16) = 2.4. */
    @Test
    void valvesTogether() {
        assertThat(Kv.inSeries(1, 1)).isCloseTo(0.70711, within(0.00001));
        assertThat(Kv.inSeries(3, 4)).isCloseTo(2.4, within(1e-12));
        assertThat(Kv.inSeries(0.7)).isCloseTo(0.7, within(1e-12));
        assertThat(Kv.inParallel(1, 1)).isEqualTo(2);
        assertThat(Kv.inParallel(0.3, 0.5, 0.7)).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void theThreeFormsInvertEachOtherAndDropsAddInSeries() {
        long seed = 20260103;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double kv = 0.05 + 10 * random.nextDouble();
            double other = 0.05 + 10 * random.nextDouble();
            double bar = 1e-5 + 2 * random.nextDouble();
            double density = 900 + 200 * random.nextDouble();
            double flow = Kv.flowCubicMetresPerHour(kv, bar, density);
            String as = "seed " + seed + ", Kv " + kv + " and " + other + ", " + bar + " bar";
            assertThat(Kv.kv(flow, bar, density)).as(as).isCloseTo(kv, Percentage.withPercentage(1e-9));
            assertThat(Kv.pressureDropBar(flow, kv, density)).as(as).isCloseTo(bar, Percentage.withPercentage(1e-9));
            assertThat(Kv.pressureDropBar(flow, Kv.inSeries(kv, other), density)).as(as)
                    .isCloseTo(bar + Kv.pressureDropBar(flow, other, density), Percentage.withPercentage(1e-9));
            assertThat(Kv.flowCubicMetresPerHour(Kv.inParallel(kv, other), bar, density)).as(as)
                    .isCloseTo(flow + Kv.flowCubicMetresPerHour(other, bar, density), Percentage.withPercentage(1e-9));
        }
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        ArgumentRange.limits("flowCubicMetresPerHour", 0, 10_000, flow -> Kv.kv(flow, 1, 1000));
        ArgumentRange.limits("flowCubicMetresPerHour", 0, 10_000, flow -> Kv.pressureDropBar(flow, 1, 1000));
        ArgumentRange.limits("pressureDropBar", 1e-6, 100, bar -> Kv.kv(1, bar, 1000));
        ArgumentRange.limits("pressureDropBar", 0, 100, bar -> Kv.flowCubicMetresPerHour(1, bar, 1000));
        ArgumentRange.limits("kv", 1e-6, 10_000, kv -> Kv.pressureDropBar(1, kv, 1000));
        ArgumentRange.limits("kv", 1e-6, 10_000, kv -> Kv.flowCubicMetresPerHour(kv, 1, 1000));
        ArgumentRange.limits("kv", 1e-6, 10_000, kv -> Kv.inSeries(1, kv));
        ArgumentRange.limits("kv", 1e-6, 10_000, kv -> Kv.inParallel(1, kv));
        ArgumentRange.limits("densityKgPerCubicMetre", 900, 1200, density -> Kv.kv(1, 1, density));
        assertThatIllegalArgumentException().isThrownBy(Kv::inSeries).withMessageContaining("the number of valves is 0.0");
        assertThatIllegalArgumentException().isThrownBy(Kv::inParallel).withMessageContaining("the number of valves is 0.0");
    }
}
