package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.water.Water;
import org.junit.jupiter.api.Test;

/** Whether a falling gauge means lost water or only cooler water, and how much is lost a day. */
class LeakRateTest {
    private static final double ATMOSPHERE = 1.01325;
    private static final Vessel VESSEL = new Vessel(12, 1.0);
    private static final double SYSTEM_LITRES = 100;

    /**
     * Cold all the time: 1.5 bar, a day later 1.4. At the mean of 1.45 bar the vessel gives 12 x 2.01325/2.46325² =
     * 3.9817 litres a bar, so 0.1 bar is 0.398 litres.
     */
    @Test
    void twoReadingsGiveARateButNoMargin() {
        LeakRate rate = rate(new TimedPressure(10, 1.5, 15), new TimedPressure(34, 1.4, 15));
        assertThat(rate.lossBarPerDay()).isCloseTo(0.1, within(1e-9));
        assertThat(rate.lossLitresPerDay()).isCloseTo(0.398165, within(1e-5));
        assertThat(rate.marginBarPerDay()).isEmpty();
        assertThat(rate.isLosing()).as("two readings prove nothing").isFalse();
        assertThat(rate.isGaining()).isFalse();
        assertThat(rate.referenceCelsius()).isEqualTo(15);
    }

    /**
     * One reading a day at one temperature: 1.50, 1.42, 1.38, 1.30 bar. Mean day 1.5, sum of squares 5; slope
     * (-1.5 x 1.50 - 0.5 x 1.42 + 0.5 x 1.38 + 1.5 x 1.30)/5 = -0.064. What is left over from the line is 0.004, -0.012,
     * 0.012, -0.004: squares 0.00032, over two degrees of freedom 0.00016; standard error of the slope
     * √(0.00016/5) = 0.0056569; Student's t for 95 % and two degrees is 4.3027 (any table): margin 0.02434.
     */
    @Test
    void scatterGivesTheMargin() {
        LeakRate rate = rate(new TimedPressure(0, 1.50, 12), new TimedPressure(24, 1.42, 12), new TimedPressure(48, 1.38, 12),
                new TimedPressure(72, 1.30, 12));
        assertThat(rate.lossBarPerDay()).isCloseTo(0.064, within(1e-9));
        assertThat(rate.marginBarPerDay().orElseThrow()).isCloseTo(0.024340, within(1e-5));
        assertThat(rate.isLosing()).isTrue();
        assertThat(rate.isGaining()).isFalse();
    }

    /** The gauge falls from 1.99 to 1.2 bar overnight, and nothing is lost: the water cooled from 80 to 10 °C. */
    @Test
    void coolingIsNotALeak() {
        double hot = SealedSystem.hotPressureBar(VESSEL, 1.2, SYSTEM_LITRES, Water.expansionFraction(10, 80)).orElseThrow();
        double warm = SealedSystem.hotPressureBar(VESSEL, 1.2, SYSTEM_LITRES, Water.expansionFraction(10, 40)).orElseThrow();
        assertThat(hot).isGreaterThan(1.9);
        LeakRate rate = rate(new TimedPressure(0, hot, 80), new TimedPressure(3, warm, 40), new TimedPressure(12, 1.2, 10));
        assertThat(rate.lossBarPerDay()).isCloseTo(0, within(1e-9));
        assertThat(rate.lossLitresPerDay()).isCloseTo(0, within(1e-9));
        assertThat(rate.referenceCelsius()).isEqualTo(10);
    }

    @Test
    void aFillingLoopLettingByShowsAsAGain() {
        LeakRate rate = rate(new TimedPressure(0, 1.2, 15), new TimedPressure(12, 1.25, 15), new TimedPressure(24, 1.3, 15));
        assertThat(rate.lossBarPerDay()).isCloseTo(-0.1, within(1e-9));
        assertThat(rate.isGaining()).isTrue();
        assertThat(rate.isLosing()).isFalse();
    }

    /** A needle that swings about its mean may be losing or gaining: neither is said. */
    @Test
    void scatterWiderThanTheTrendProvesNothing() {
        LeakRate falling = rate(new TimedPressure(0, 1.4, 15), new TimedPressure(24, 1.2, 15), new TimedPressure(48, 1.38, 15));
        LeakRate rising = rate(new TimedPressure(0, 1.38, 15), new TimedPressure(24, 1.2, 15), new TimedPressure(48, 1.4, 15));
        assertThat(falling.lossBarPerDay()).isCloseTo(0.01, within(1e-9));
        assertThat(falling.isLosing()).isFalse();
        assertThat(rising.isGaining()).isFalse();
    }

    @Test
    void aGaugeThatNeverMovesNeitherLosesNorGains() {
        LeakRate rate = rate(new TimedPressure(0, 1.4, 15), new TimedPressure(24, 1.4, 15), new TimedPressure(48, 1.4, 15));
        assertThat(rate.lossBarPerDay()).isZero();
        assertThat(rate.marginBarPerDay()).hasValue(0);
        assertThat(rate.isLosing() || rate.isGaining()).isFalse();
    }

    /** Water shrinks a little on warming from 1 to 4 °C; a house left cold is no error. */
    @Test
    void nearFreezingIsTaken() {
        LeakRate rate = rate(new TimedPressure(0, 1.4, 1), new TimedPressure(24, 1.4, 4));
        assertThat(rate.lossBarPerDay()).isCloseTo(0, within(0.01));
    }

    /**
     * Systems that lose a known volume each day, warm at some readings and cool at others: the sum finds the volume again,
     * in whatever order the readings are given.
     */
    @Test
    void aKnownLeakIsFoundAgain() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Vessel vessel = new Vessel(10 + 15 * random.nextDouble(), 0.5 + 0.5 * random.nextDouble());
            double systemLitres = 60 + 100 * random.nextDouble();
            double lostPerDay = 0.02 + 0.05 * random.nextDouble();
            double atFirst = 1.0 + 0.5 * random.nextDouble();
            List<TimedPressure> readings = new ArrayList<>();
            for (int day = 0; day < 5; day++) {
                double celsius = day == 2 ? 10 : 10 + 40 * random.nextDouble();
                double water = atFirst - lostPerDay * day + systemLitres * Water.expansionFraction(10, celsius);
                double bar = (vessel.preChargeBar() + ATMOSPHERE) * vessel.litres() / (vessel.litres() - water) - ATMOSPHERE;
                readings.add(new TimedPressure(24 * day, bar, celsius));
            }
            LeakRate rate = LeakRate.of(vessel, systemLitres, readings, Water::expansionFraction);
            assertThat(rate.lossLitresPerDay()).as("seed %d", seed).isCloseTo(lostPerDay, within(0.01 * lostPerDay));
            assertThat(rate.isLosing()).as("seed %d", seed).isTrue();
            readings.add(readings.remove(0));
            assertThat(LeakRate.of(vessel, systemLitres, readings, Water::expansionFraction).lossBarPerDay())
                    .as("seed %d", seed).isCloseTo(rate.lossBarPerDay(), within(1e-12));
        }
    }

    @Test
    void tooLittleToGoByIsRefused() {
        assertThatThrownBy(this::rate).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("readings are 0 but must be at least 2.");
        assertThatThrownBy(() -> rate(new TimedPressure(0, 1.4, 15))).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("readings are 1 but must be at least 2.");
        assertThatThrownBy(() -> rate(new TimedPressure(3, 1.4, 15), new TimedPressure(3, 1.3, 15)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("readings span 0 hours but must span at least 0.1.");
        assertThat(rate(new TimedPressure(0, 1.4, 15), new TimedPressure(0.1, 1.4, 15)).lossBarPerDay()).isZero();
    }

    /** Below the charge the vessel is empty of water; the gauge falls to nothing with the next few drops. */
    @Test
    void aReadingBelowTheChargeIsRefused() {
        assertThatThrownBy(() -> rate(new TimedPressure(0, 1.4, 15), new TimedPressure(24, 0.8, 15)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the reading of 0.8 bar at 24 hours leaves the vessel without water when cool "
                        + "but must leave some.");
        assertThat(rate(new TimedPressure(0, 1.4, 15), new TimedPressure(24, 1.0, 15)).lossBarPerDay())
                .as("just at the charge").isCloseTo(0.4, within(1e-9));
    }

    /** 1.3 bar at 70 °C would be less than the charge at 15 °C: 1.56 litres of water in the vessel, 2.16 given back. */
    @Test
    void aWarmReadingThatWouldCoolToAnEmptyVesselIsRefused() {
        assertThatThrownBy(() -> rate(new TimedPressure(0, 1.4, 15), new TimedPressure(24, 1.3, 70)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("the reading of 1.3 bar at 24 hours");
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        List<TimedPressure> cold = List.of(new TimedPressure(0, 1.5, 15), new TimedPressure(24, 1.4, 15));
        ArgumentRange.closed("systemLitres", 1, 5000,
                x -> LeakRate.of(VESSEL, x, cold, Water::expansionFraction).lossBarPerDay());
        ArgumentRange.closed("expansionFraction", -0.001, 0.1,
                x -> LeakRate.of(new Vessel(100, 0.1), 100, cold, (a, b) -> x).lossBarPerDay());
        ArgumentRange.closed("hours", 0, 10_000, x -> new TimedPressure(x, 1, 15).hours());
        ArgumentRange.closed("bar", 0, 10, x -> new TimedPressure(0, x, 15).bar());
        ArgumentRange.closed("waterCelsius", 0, 110, x -> new TimedPressure(0, 1, x).waterCelsius());
    }

    private LeakRate rate(TimedPressure... readings) {
        return LeakRate.of(VESSEL, SYSTEM_LITRES, List.of(readings), Water::expansionFraction);
    }
}
