package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GlycolTest {

    /**
     * A chemist's handbook, 15th edition, table 5.13: propylene glycol by volume, specific gravity on water, both at
     * 15.6 °C (water 999.0 kg/m³), and freezing point. Another source than the tables'.
     */
    @ParameterizedTest
    @CsvSource({"0.10, 1.006, -2.2", "0.15, 1.012, -3.9", "0.20, 1.017, -6.7", "0.25, 1.020, -8.9",
        "0.30, 1.024, -12.8", "0.35, 1.028, -16.1", "0.40, 1.032, -20.6", "0.45, 1.037, -26.7", "0.50, 1.040, -33.3"})
    void propyleneGlycolFollowsAnotherHandbook(double share, double specificGravity, double freezingCelsius) {
        assertThat(Glycol.PROPYLENE.densityKgPerCubicMetre(share, 15.6))
                .isCloseTo(specificGravity * 999.0, withinPercentage(0.5));
        assertThat(Glycol.PROPYLENE.freezingPointCelsius(share)).isCloseTo(freezingCelsius, within(1.7));
    }

    /** Aqueous glycol by volume from an engineers' handbook, freezing points (from memory). */
    @ParameterizedTest
    @CsvSource({"ETHYLENE, 0.089, -3.2", "ETHYLENE, 0.181, -7.8", "ETHYLENE, 0.277, -14.1", "ETHYLENE, 0.375, -22.3",
        "PROPYLENE, 0.096, -3.3", "PROPYLENE, 0.194, -7.1", "PROPYLENE, 0.294, -12.7", "PROPYLENE, 0.396, -21.1"})
    void iceFormsWhereTheHandbookSays(Glycol glycol, double share, double freezingCelsius) {
        assertThat(glycol.freezingPointCelsius(share)).isCloseTo(freezingCelsius, within(1.0));
    }

    /** Common practice, no source: half and half of ethylene glycol guards a car to some 37 degrees of frost. */
    @Test
    void halfAndHalfStandsAHardFrost() {
        assertThat(Glycol.ETHYLENE.freezingPointCelsius(0.5)).isCloseTo(-37, within(1.0));
    }

    /** Between the tabled shares the published fit itself (IIR 2010) is the check; it gives these values. */
    @ParameterizedTest
    @CsvSource({"PROPYLENE, 0.25, 60, 998.8, 4.009, -10.0", "PROPYLENE, 0.45, 20, 1036.6, 3.605, -27.9",
        "ETHYLENE, 0.25, 60, 1014.1, 3.872, -12.0", "ETHYLENE, 0.35, 80, 1012.6, 3.770, -20.1"})
    void betweenTheTabledSharesItFollowsTheFit(Glycol glycol, double share, double celsius, double density,
            double heatCapacity, double freezingCelsius) {
        assertThat(glycol.densityKgPerCubicMetre(share, celsius)).isCloseTo(density, within(0.5));
        assertThat(glycol.heatCapacityKilojoulesPerKgKelvin(share, celsius)).isCloseTo(heatCapacity, within(0.005));
        assertThat(glycol.freezingPointCelsius(share)).isCloseTo(freezingCelsius, within(0.2));
    }

    @Test
    void atATabledPointItIsTheTable() {
        assertThat(Glycol.PROPYLENE.densityKgPerCubicMetre(0.3, 80)).isCloseTo(987.9, within(1e-9));
        assertThat(Glycol.PROPYLENE.heatCapacityKilojoulesPerKgKelvin(0.5, 100)).isCloseTo(3.824, within(1e-9));
        assertThat(Glycol.ETHYLENE.densityKgPerCubicMetre(0.1, 0)).isCloseTo(1015.2, within(1e-9));
        assertThat(Glycol.ETHYLENE.heatCapacityKilojoulesPerKgKelvin(0.5, 0)).isCloseTo(3.140, within(1e-9));
        assertThat(Glycol.ETHYLENE.freezingPointCelsius(0.1)).isCloseTo(-3.7, within(1e-9));
    }

    @Test
    void antifreezeWantsABiggerVesselAndMoreFlow() {
        assertThat(Water.expansionFraction(10, 80)).isCloseTo(0.0287, within(0.0001));
        assertThat(Glycol.PROPYLENE.expansionFraction(0.3, 10, 80)).isCloseTo(0.0414, within(0.0005));
        assertThat(Glycol.ETHYLENE.expansionFraction(0.3, 10, 80)).isCloseTo(0.0382, within(0.0005));
        assertThat(Glycol.PROPYLENE.expansionFraction(0.3, 80, 10)).isCloseTo(-0.0398, within(0.0005));
        double water = Water.densityKgPerCubicMetre(70, 2) * Water.heatCapacityKilojoulesPerKgKelvin(70, 2);
        double mixture = Glycol.PROPYLENE.densityKgPerCubicMetre(0.4, 70)
                * Glycol.PROPYLENE.heatCapacityKilojoulesPerKgKelvin(0.4, 70);
        assertThat(mixture / water).as("heat carried by each litre").isCloseTo(0.94, within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void noGlycolIsWater(Glycol glycol) {
        for (double celsius = 0; celsius <= 100; celsius += 2.5) {
            double water = Water.densityKgPerCubicMetre(celsius, 2);
            assertThat(glycol.densityKgPerCubicMetre(0, celsius)).isCloseTo(water, within(1e-9));
            assertThat(glycol.heatCapacityKilojoulesPerKgKelvin(0, celsius))
                    .isCloseTo(Water.heatCapacityKilojoulesPerKgKelvin(celsius, 2), within(1e-12));
            assertThat(glycol.expansionFraction(0, 10, celsius))
                    .isCloseTo(Water.expansionFraction(10, celsius), within(1e-12));
        }
        assertThat(glycol.freezingPointCelsius(0)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void moreGlycolIsDenserCarriesLessHeatFreezesLaterAndGrowsMore(Glycol glycol) {
        Random random = new Random(44);
        for (int i = 0; i < 2000; i++) {
            double share = random.nextDouble() * 0.49;
            double more = share + 0.001 + random.nextDouble() * (0.499 - share);
            double celsius = random.nextDouble() * 100;
            String tried = "seed 44, try " + i + ": " + share + " and " + more + " at " + celsius + " °C";
            assertThat(glycol.densityKgPerCubicMetre(more, celsius)).as(tried)
                    .isGreaterThan(glycol.densityKgPerCubicMetre(share, celsius));
            assertThat(glycol.heatCapacityKilojoulesPerKgKelvin(more, celsius)).as(tried)
                    .isLessThan(glycol.heatCapacityKilojoulesPerKgKelvin(share, celsius));
            assertThat(glycol.freezingPointCelsius(more)).as(tried).isLessThan(glycol.freezingPointCelsius(share));
            assertThat(glycol.expansionFraction(more, 10, 80)).as(tried)
                    .isGreaterThan(glycol.expansionFraction(share, 10, 80));
        }
    }

    @ParameterizedTest
    @EnumSource
    void warmerIsThinnerInWeightAndNoStepIsTaken(Glycol glycol) {
        Random random = new Random(45);
        for (int i = 0; i < 2000; i++) {
            double share = random.nextDouble() * 0.499;
            double celsius = 4 + random.nextDouble() * 95;
            String tried = "seed 45, try " + i + ": " + share + " at " + celsius + " °C";
            double density = glycol.densityKgPerCubicMetre(share, celsius);
            double heatCapacity = glycol.heatCapacityKilojoulesPerKgKelvin(share, celsius);
            assertThat(glycol.densityKgPerCubicMetre(share, celsius + 1)).as(tried).isBetween(density - 1.1, density);
            assertThat(glycol.densityKgPerCubicMetre(share + 0.001, celsius)).as(tried)
                    .isCloseTo(density, within(0.25));
            assertThat(glycol.heatCapacityKilojoulesPerKgKelvin(share, celsius + 0.1)).as(tried)
                    .isCloseTo(heatCapacity, within(0.001));
            assertThat(glycol.heatCapacityKilojoulesPerKgKelvin(share + 0.001, celsius)).as(tried)
                    .isCloseTo(heatCapacity, within(0.005));
            assertThat(glycol.freezingPointCelsius(share + 0.001)).as(tried)
                    .isCloseTo(glycol.freezingPointCelsius(share), within(0.2));
        }
    }

    @Test
    void theLimitsThemselvesAreValid() {
        assertThat(Glycol.PROPYLENE.densityKgPerCubicMetre(0.5, 100)).isCloseTo(979.5, within(1e-9));
        assertThat(Glycol.PROPYLENE.densityKgPerCubicMetre(0, 0)).isCloseTo(999.89, within(0.01));
        assertThat(Glycol.PROPYLENE.freezingPointCelsius(0.5)).isCloseTo(-34.9, within(1e-9));
    }

    @Test
    void strongerOrHotterThanTheTablesIsRefused() {
        Glycol glycol = Glycol.ETHYLENE;
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.densityKgPerCubicMetre(0.51, 20)).withMessage(
                "Glycol's share by volume in of the whole is 0.51; it must lie between 0.0 and 0.5.");
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.densityKgPerCubicMetre(0.2, 100.1))
                .withMessage("Antifreeze temperature in °C is 100.1; it must lie between 0.0 and 100.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.heatCapacityKilojoulesPerKgKelvin(-0.01, 20))
                .withMessageStartingWith("Glycol's share");
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.heatCapacityKilojoulesPerKgKelvin(0.2, 100.1))
                .withMessageStartingWith("Antifreeze temperature");
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.expansionFraction(0.2, -0.1, 80));
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.expansionFraction(0.2, 10, 101));
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.freezingPointCelsius(0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> glycol.freezingPointCelsius(Double.NaN));
    }
}
