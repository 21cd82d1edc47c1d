package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** A made-up mixture with simple figures, so that each step of the reckoning can be followed by hand. */
class GlycolTableTest {
    private final GlycolTable table = new GlycolTable(
            rows(1010, 1020, 1030, 1040, 1050), rows(4.0, 3.9, 3.8, 3.7, 3.6), new double[] {-3, -7, -13, -21, -33});

    @Test
    void whatIsTabledIsTakenAsAShareOfWater() {
        for (double celsius = 0; celsius <= 100; celsius += 20) {
            double density = Water.densityKgPerCubicMetre(celsius, 2);
            double heatCapacity = Water.heatCapacityKilojoulesPerKgKelvin(celsius, 2);
            assertThat(table.densityRatio(0.1, celsius)).isCloseTo(1010 / density, within(1e-12));
            assertThat(table.densityRatio(0.5, celsius)).isCloseTo(1050 / density, within(1e-12));
            assertThat(table.heatCapacityRatio(0.2, celsius)).isCloseTo(3.9 / heatCapacity, within(1e-12));
        }
    }

    @Test
    void withoutGlycolTheShareIsOneAndTheFreezingPointZero() {
        for (double celsius = 0; celsius <= 100; celsius += 10) {
            assertThat(table.densityRatio(0, celsius)).isCloseTo(1, within(1e-12));
            assertThat(table.heatCapacityRatio(0, celsius)).isCloseTo(1, within(1e-12));
        }
        assertThat(table.freezingPointCelsius(0)).isZero();
    }

    @Test
    void halfWayBetweenTwoSharesIsTheirMean() {
        double mean = (table.densityRatio(0.3, 40) + table.densityRatio(0.4, 40)) / 2;
        assertThat(table.densityRatio(0.35, 40)).isCloseTo(mean, within(1e-12));
        double nextToWater = (1 + table.heatCapacityRatio(0.1, 60)) / 2;
        assertThat(table.heatCapacityRatio(0.05, 60)).isCloseTo(nextToWater, within(1e-12));
    }

    @Test
    void freezingPointsAreMetAndBentSmoothlyBetween() {
        assertThat(table.freezingPointCelsius(0.1)).isCloseTo(-3, within(1e-12));
        assertThat(table.freezingPointCelsius(0.5)).isCloseTo(-33, within(1e-12));
        assertThat(table.freezingPointCelsius(0.25)).as("above the straight line, as the curve bends downwards")
                .isBetween(-10.0, -9.0);
    }

    private static double[][] rows(double... ofShares) {
        double[][] rows = new double[ofShares.length][6];
        for (int i = 0; i < rows.length; i++) {
            Arrays.fill(rows[i], ofShares[i]);
        }
        return rows;
    }
}
