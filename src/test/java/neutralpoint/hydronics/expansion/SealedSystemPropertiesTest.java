package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds of every sealed system, whatever its vessel, fill and content. */
class SealedSystemPropertiesTest {

    @Test
    void theInversesInvert() {
        int charged = 0;
        for (long seed = 0; seed < 2000; seed++) {
            House h = new House(seed);
            var hot = h.hot(h.vessel);
            if (hot.isPresent() && hot.getAsDouble() < 10) {
                charged++;
                double bar = hot.getAsDouble();
                var charge = h.vessel.preChargeBar() <= h.fillBar
                        ? SealedSystem.preChargeThatExplainsBar(h.vessel.litres(), h.fillBar, bar, h.systemLitres, h.expansion)
                        : SealedSystem.highChargeThatExplainsBar(h.vessel.litres(), h.fillBar, bar, h.systemLitres, h.expansion);
                assertThat(charge.orElseThrow()).as("charge, seed %d", seed).isCloseTo(h.vessel.preChargeBar(), within(1e-8));
            }
        }
        assertThat(charged).as("houses with a hot pressure").isGreaterThan(500);
    }

    @Test
    void aSmallerVesselNeverGivesALowerHotPressure() {
        for (long seed = 0; seed < 2000; seed++) {
            House h = new House(seed);
            Vessel smaller = new Vessel(h.vessel.litres() * (0.3 + 0.7 * h.random.nextDouble()), h.vessel.preChargeBar());
            assertThat(orValve(h.hot(smaller))).as("seed %d", seed).isGreaterThanOrEqualTo(orValve(h.hot(h.vessel)));
        }
    }

    @Test
    void lessChargeNeverGivesALowerHotPressureWhileTheFillIsAboveIt() {
        for (long seed = 0; seed < 2000; seed++) {
            House h = new House(seed);
            double charge = Math.min(h.vessel.preChargeBar(), h.fillBar);
            Vessel full = new Vessel(h.vessel.litres(), charge);
            Vessel less = new Vessel(h.vessel.litres(), charge - 0.3 * h.random.nextDouble());
            assertThat(orValve(h.hot(less))).as("seed %d", seed).isGreaterThanOrEqualTo(orValve(h.hot(full)));
        }
    }

    /** Water that was in the vessel, the expansion, and the air by Boyle's law at the hot pressure fill the shell. */
    @Test
    void theVolumesAddUpToTheVessel() {
        for (long seed = 0; seed < 2000; seed++) {
            House h = new House(seed);
            h.hot(h.vessel).ifPresent(hot -> {
                double volume = h.vessel.litres();
                double airAtHot = volume * (h.vessel.preChargeBar() + 1.01325) / (hot + 1.01325);
                double waterCold = Math.max(0, volume - volume * (h.vessel.preChargeBar() + 1.01325) / (h.fillBar + 1.01325));
                assertThat(waterCold + h.systemLitres * h.expansion + airAtHot).isCloseTo(volume, within(1e-9));
            });
        }
    }

    /** A system without a hot pressure stands above any that has one. */
    private static double orValve(OptionalDouble hot) {
        return hot.orElse(Double.MAX_VALUE);
    }

    /** Any sealed system of a house. */
    private static final class House {
        private final Random random;
        private final Vessel vessel;
        private final double fillBar;
        private final double systemLitres;
        private final double expansion;

        House(long seed) {
            random = new Random(seed);
            vessel = new Vessel(4 + 30 * random.nextDouble(), 2 * random.nextDouble() - 0.5);
            fillBar = 0.2 + 2 * random.nextDouble();
            systemLitres = 40 + 200 * random.nextDouble();
            expansion = 0.002 + 0.04 * random.nextDouble();
        }

        OptionalDouble hot(Vessel other) {
            return SealedSystem.hotPressureBar(other, fillBar, systemLitres, expansion);
        }
    }
}
