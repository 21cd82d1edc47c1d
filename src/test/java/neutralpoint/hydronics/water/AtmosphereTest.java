package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {

    /** Printed table of the standard atmosphere by geopotential height, ICAO Doc 7488 (from memory). */
    @ParameterizedTest
    @CsvSource({"0, 1013.25", "500, 954.61", "1000, 898.75", "1500, 845.56", "2000, 794.95", "3000, 701.09"})
    void followsTheStandardAtmosphere(double altitudeMetres, double hectopascals) {
        assertThat(Atmosphere.pressureBar(altitudeMetres) * 1000).isCloseTo(hectopascals, within(0.02));
    }

    /** Hydrostatics: over one metre the pressure falls by the weight of the air there, p g / (R T). */
    @Test
    void fallsByTheWeightOfTheAirPassed() {
        for (double metres = -100; metres < 3000; metres += 50) {
            double middle = metres + 0.5;
            double airKgPerCubicMetre = Atmosphere.pressureBar(middle) * 1e5 / (287.053 * (288.15 - 0.0065 * middle));
            double fallPascals = (Atmosphere.pressureBar(metres) - Atmosphere.pressureBar(metres + 1)) * 1e5;
            assertThat(fallPascals).as(metres + " m").isCloseTo(airKgPerCubicMetre * 9.80665, within(0.0002));
        }
    }

    @Test
    void waterBoilsCoolerOnTheHill() {
        double atSeaLevel = Water.boilingPointCelsius(Atmosphere.pressureBar(0));
        double onTheHill = Water.boilingPointCelsius(Atmosphere.pressureBar(400));
        assertThat(atSeaLevel).isCloseTo(99.974, within(0.002));
        assertThat(atSeaLevel - onTheHill).as("about one kelvin for each 300 m, common practice, no source")
                .isCloseTo(1.33, within(0.05));
    }

    @Test
    void onlyHeightsWherePeopleLive() {
        assertThat(Atmosphere.pressureBar(-100)).isCloseTo(1.0253, within(0.0001));
        assertThatIllegalArgumentException().isThrownBy(() -> Atmosphere.pressureBar(-100.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Atmosphere.pressureBar(3000.1))
                .withMessage("Altitude in m is 3000.1; it must lie between -100.0 and 3000.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Atmosphere.pressureBar(Double.NaN));
    }
}
