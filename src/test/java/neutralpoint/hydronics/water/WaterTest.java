package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import neutralpoint.hydronics.References;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

class WaterTest {
    private static final double ICE_POINT_KELVIN = 273.15;
    private static final double ATMOSPHERE_BAR = 1.01325;

    @TestFactory
    List<DynamicTest> published() {
        return References.of("water")
                .check("IF97-R1", WaterTest::liquid)
                .check("IF97-PS", (in, expected) -> assertThat(
                        Water.saturationPressureBarAbsolute(number(in, "T_K") - ICE_POINT_KELVIN) / 10)
                        .isCloseTo(expected.asDouble(), relative(expected.asDouble(), 1e-8)))
                .check("IF97-TS", (in, expected) -> assertThat(
                        Water.boilingPointCelsius(number(in, "p_MPa") * 10) + ICE_POINT_KELVIN)
                        .isCloseTo(expected.asDouble(), relative(expected.asDouble(), 1e-8)))
                .check("MU-VOGEL", (in, expected) -> assertThat(Water.viscosityPascalSeconds(number(in, "T_C"), 2))
                        .as("the simple formula is 0.6 % low").isCloseTo(expected.asDouble(), withinPercentage(0.7)))
                .check("MU-", (in, expected) -> assertThat(
                        Water.viscosityMicropascalSeconds(number(in, "T_K"), number(in, "rho")))
                        .isCloseTo(expected.asDouble(), within(1e-6)))
                .check("H2O-", WaterTest::atTwoBar)
                .check("LSBU-", WaterTest::table)
                .check("CP-", (in, expected) -> assertThat(
                        Water.heatCapacityKilojoulesPerKgKelvin(number(in, "T_C"), ATMOSPHERE_BAR))
                        .isCloseTo(expected.asDouble(), withinPercentage(0.1)))
                .check("BOIL-", (in, expected) -> assertThat(Water.boilingPointCelsius(number(in, "p_MPa") * 10))
                        .isCloseTo(expected.asDouble(), within(0.002)))
                .check("HEAD-", (in, expected) -> assertThat(Head.bar(1, 10))
                        .isCloseTo(expected.asDouble(), within(0.0001)))
                .tests();
    }

    /** Density and heat capacity are all that heating needs of region 1; between them they hang on every term kept. */
    private static void liquid(JsonNode in, JsonNode expected) {
        double celsius = number(in, "T_K") - ICE_POINT_KELVIN;
        double bar = number(in, "p_MPa") * 10;
        assertThat(1 / Water.densityKgPerCubicMetre(celsius, bar))
                .isCloseTo(number(expected, "v"), relative(number(expected, "v"), 1e-8));
        assertThat(Water.heatCapacityKilojoulesPerKgKelvin(celsius, bar))
                .isCloseTo(number(expected, "cp"), relative(number(expected, "cp"), 1e-8));
    }

    private static void atTwoBar(JsonNode in, JsonNode expected) {
        double celsius = number(in, "T_C");
        assertThat(Water.densityKgPerCubicMetre(celsius, 2)).isCloseTo(number(expected, "rho"), within(0.01));
        assertThat(Water.heatCapacityKilojoulesPerKgKelvin(celsius, 2))
                .isCloseTo(number(expected, "cp"), within(0.0005));
        assertThat(Water.viscosityPascalSeconds(celsius, 2) * 1e6).isCloseTo(number(expected, "mu"), within(0.05));
    }

    /** The table is for one atmosphere; at 100 °C that is a hair below the boiling pressure, where the liquid ends. */
    private static void table(JsonNode in, JsonNode expected) {
        double celsius = number(in, "T_C");
        double boilingBar = Water.saturationPressureBarAbsolute(celsius);
        double bar = Math.max(ATMOSPHERE_BAR, boilingBar);
        assertThat(Water.densityKgPerCubicMetre(celsius, bar)).isCloseTo(number(expected, "rho"), within(0.1));
        assertThat(Water.viscosityPascalSeconds(celsius, bar) * 1000)
                .isCloseTo(number(expected, "mu"), withinPercentage(1.5));
        assertThat(boilingBar * 100).isCloseTo(number(expected, "p_vap"), withinPercentage(0.1));
    }

    @Test
    void aSystemFilledColdGrowsByNearlyThreePerCentAtEightyDegrees() {
        assertThat(Water.expansionFraction(10, 80)).isCloseTo(0.0287, within(0.00005));
        assertThat(Water.expansionFraction(80, 10)).as("and shrinks as it cools").isCloseTo(-0.0279, within(0.00005));
        assertThat(Water.expansionFraction(60, 60)).isZero();
    }

    @Test
    void waterIsDensestAtFourDegrees() {
        assertThat(Water.densityKgPerCubicMetre(4, 1)).isGreaterThan(Water.densityKgPerCubicMetre(0, 1))
                .isGreaterThan(Water.densityKgPerCubicMetre(8, 1));
        for (double celsius = 4; celsius < 140; celsius += 0.5) {
            for (double bar = 4; bar <= 10; bar++) {
                assertThat(Water.densityKgPerCubicMetre(celsius + 0.5, bar)).as(celsius + " °C, " + bar + " bar")
                        .isLessThan(Water.densityKgPerCubicMetre(celsius, bar));
            }
        }
    }

    @Test
    void waterGetsThinnerAsItWarms() {
        for (double celsius = 0; celsius < 150; celsius++) {
            assertThat(Water.viscosityPascalSeconds(celsius + 1, 6)).as(celsius + " °C")
                    .isLessThan(Water.viscosityPascalSeconds(celsius, 6));
        }
    }

    @Test
    void boilingPointAndSaturationPressureUndoEachOther() {
        Random random = new Random(41);
        for (int i = 0; i < 2000; i++) {
            double celsius = random.nextDouble() * 373.9;
            assertThat(Water.boilingPointCelsius(Water.saturationPressureBarAbsolute(celsius)))
                    .as("seed 41, try " + i).isCloseTo(celsius, within(1e-5));
            double lower = random.nextDouble() * celsius;
            assertThat(Water.saturationPressureBarAbsolute(lower)).as("seed 41, try " + i)
                    .isLessThan(Water.saturationPressureBarAbsolute(celsius));
        }
    }

    @Test
    void everyValidStateHasASoundValueAndNoStepBesideIt() {
        Random random = new Random(42);
        for (int i = 0; i < 2000; i++) {
            double celsius = random.nextDouble() * 349.9;
            double least = Water.saturationPressureBarAbsolute(celsius + 0.001);
            double bar = least + random.nextDouble() * (1000 - least);
            String state = "seed 42, try " + i + ": " + celsius + " °C, " + bar + " bar";
            double density = Water.densityKgPerCubicMetre(celsius, bar);
            double heatCapacity = Water.heatCapacityKilojoulesPerKgKelvin(celsius, bar);
            double viscosity = Water.viscosityPascalSeconds(celsius, bar);
            assertThat(density).as(state).isBetween(570.0, 1050.0);
            assertThat(heatCapacity).as(state).isBetween(3.8, 10.2);
            assertThat(viscosity).as(state).isBetween(6e-5, 1.8e-3);
            assertThat(Water.densityKgPerCubicMetre(celsius + 0.001, bar)).as(state).isCloseTo(density, within(0.02));
            assertThat(Water.heatCapacityKilojoulesPerKgKelvin(celsius + 0.001, bar)).as(state)
                    .isCloseTo(heatCapacity, within(0.001));
            assertThat(Water.viscosityPascalSeconds(celsius + 0.001, bar)).as(state)
                    .isCloseTo(viscosity, withinPercentage(0.01));
        }
    }

    @Test
    void viscosityIsSoundOverAllItsRange() {
        for (double density : new double[] {0, 1, 321.9, 322, 1000, 1200}) {
            for (double kelvin : new double[] {273.15, 500, 647.096, 1173.15}) {
                assertThat(Water.viscosityMicropascalSeconds(kelvin, density)).isBetween(1.0, 4000.0);
            }
        }
    }

    @Test
    void waterAtItsBoilingPointIsStillLiquid() {
        for (double bar = 0.5; bar < 160; bar += 0.5) {
            assertThat(Water.densityKgPerCubicMetre(Water.boilingPointCelsius(bar), bar)).isPositive();
        }
        assertThat(Water.densityKgPerCubicMetre(0, Water.saturationPressureBarAbsolute(0)))
                .isCloseTo(999.79, within(0.01));
        assertThat(Water.densityKgPerCubicMetre(350, 1000)).isPositive();
        assertThat(Water.boilingPointCelsius(Water.saturationPressureBarAbsolute(0))).isCloseTo(0, within(1e-6));
        assertThat(Water.boilingPointCelsius(Water.saturationPressureBarAbsolute(373.946)))
                .isCloseTo(373.946, within(1e-5));
        assertThat(Water.expansionFraction(0, 120)).isCloseTo(0.0603, within(0.0001));
        assertThat(Water.expansionFraction(120, 0)).isCloseTo(-0.0568, within(0.0001));
    }

    @Test
    void boilingWaterHasNoDensityOfALiquid() {
        assertThatIllegalArgumentException().isThrownBy(() -> Water.densityKgPerCubicMetre(110, 1.4))
                .withMessageMatching("Pressure on liquid water at 110\\.0 °C in bar absolute is 1\\.4; it must lie "
                        + "between 1\\.43\\d+ and 1000\\.0\\.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.heatCapacityKilojoulesPerKgKelvin(110, 1.4));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.viscosityPascalSeconds(110, 1.4));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.densityKgPerCubicMetre(20, 1000.1));
    }

    @Test
    void whatLiesOutsideTheFormulationIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Water.densityKgPerCubicMetre(-0.1, 2))
                .withMessage("Water temperature in °C is -0.1; it must lie between 0.0 and 350.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.heatCapacityKilojoulesPerKgKelvin(350.1, 900));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.densityKgPerCubicMetre(Double.NaN, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.densityKgPerCubicMetre(20, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.saturationPressureBarAbsolute(-0.01))
                .withMessage("Boiling water's temperature in °C is -0.01; it must lie between 0.0 and 373.946.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.saturationPressureBarAbsolute(373.95));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.boilingPointCelsius(0.0061));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.boilingPointCelsius(220.65))
                .withMessageStartingWith("Boiling water's pressure in bar absolute is 220.65;");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.expansionFraction(-0.1, 80))
                .withMessage("Heating water temperature in °C is -0.1; it must lie between 0.0 and 120.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.expansionFraction(10, 120.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.viscosityMicropascalSeconds(273.1, 1))
                .withMessage("Water temperature in K is 273.1; it must lie between 273.15 and 1173.15.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.viscosityMicropascalSeconds(1173.2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Water.viscosityMicropascalSeconds(300, -0.1))
                .withMessage("Water density in kg/m³ is -0.1; it must lie between 0.0 and 1200.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Water.viscosityMicropascalSeconds(300, 1200.1));
    }

    private static double number(JsonNode node, String name) {
        assertThat(node.has(name)).as(name + " in " + node).isTrue();
        return node.get(name).asDouble();
    }

    private static Offset<Double> relative(double expected, double share) {
        return within(Math.abs(expected) * share);
    }
}
