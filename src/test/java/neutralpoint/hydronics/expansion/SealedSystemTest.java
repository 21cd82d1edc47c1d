package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.References;
import neutralpoint.hydronics.water.Water;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the gauge of a sealed system should show when hot, and what a gauge that shows more is telling. */
class SealedSystemTest {
    /** A usual house: 100 litres, filled to 1.2 bar, a 12 litre vessel charged to 1.0 bar, heated from 10 to 80 °C. */
    private static final Vessel TWELVE_LITRES = new Vessel(12, 1.0);
    private static final double FILL_BAR = 1.2;
    private static final double SYSTEM_LITRES = 100;
    private static final double EXPANSION = 0.0287;

    @TestFactory
    List<DynamicTest> published() {
        return References.of("expansion")
                .check("EXP-10-", (in, expected) -> assertThat(
                        100 * Water.expansionFraction(in.get("T_cold").asDouble(), in.get("T_hot").asDouble()))
                        .isCloseTo(expected.asDouble(), within(0.005)))
                .check("EXP-LSBU-80", (in, expected) -> assertThat(100 * Water.expansionFraction(10, 80))
                        .isCloseTo(expected.asDouble(), within(0.02)))
                .check("EXP-LSBU-100", (in, expected) -> assertThat(100 * Water.expansionFraction(10, 100))
                        .isCloseTo(expected.asDouble(), within(0.02)))
                .check("EXP-DOE", (in, expected) -> assertThat(100 * Water.expansionFraction(0, 100))
                        .isCloseTo(expected.asDouble(), within(0.1)))
                .check("EXP-SBZ2", (in, expected) -> assertThat(-100 * Water.expansionFraction(20, 10))
                        .isCloseTo(expected.asDouble(), within(0.03)))
                .check("EXP-SBZ", (in, expected) -> assertThat(
                        1000 + ThermalExpansion.litres(1000, Water.expansionFraction(20, 60)))
                        .isCloseTo(expected.asDouble(), within(0.5)))
                .tests();
    }

    /**
     * Expansion: 100 x 0.0287 = 2.87 litres. Air when cold: 12 x (1.0 + 1.01325)/(1.2 + 1.01325) = 10.9156 litres; hot:
     * 10.9156 - 2.87 = 8.0456 litres. Pressure hot: 12 x 2.01325/8.0456 - 1.01325 = 1.9895 bar.
     */
    @Test
    void aSoundVesselHoldsTheHotPressureWellBelowTheSafetyValve() {
        double hot = hot(TWELVE_LITRES, FILL_BAR);
        assertThat(hot).isCloseTo(1.9895011, within(1e-6));
        assertThat(SealedSystem.safetyValveMarginBar(hot, 3)).isCloseTo(1.0104989, within(1e-6));
    }

    /**
     * The same vessel down to 0.2 bar. Air when cold: 12 x 1.21325/2.21325 = 6.5781 litres; hot: 3.7081 litres; pressure
     * hot: 12 x 1.21325/3.7081 - 1.01325 = 2.9130 bar, at the point of lifting a 3 bar valve.
     */
    @Test
    void aVesselThatLostItsChargeRunsUpToTheSafetyValve() {
        assertThat(hot(new Vessel(12, 0.2), FILL_BAR)).isCloseTo(2.9130099, within(1e-6));
    }

    /** Flat to -0.5 bar it has 12 x 0.51325/2.21325 = 2.78 litres of air for 2.87 litres: the valve decides. */
    @Test
    void aVesselWithLessAirThanTheExpansionNeedsHasNoHotPressure() {
        assertThat(SealedSystem.hotPressureBar(new Vessel(12, -0.5), FILL_BAR, SYSTEM_LITRES, EXPANSION)).isEmpty();
    }

    /** A full litre of air for just a litre of water: 100 litres gain 1 %, a 1 litre vessel filled to its charge. */
    @Test
    void airThatIsJustUsedUpIsNotEnough() {
        assertThat(SealedSystem.hotPressureBar(new Vessel(1, 1), 1, 100, 0.01)).isEmpty();
        assertThat(SealedSystem.hotPressureBar(new Vessel(1.001, 1), 1, 100, 0.01)).isPresent();
    }

    /**
     * Filled to 0.6 bar only, the vessel charged to 1.0 bar holds no water and has its whole 12 litres of air. The first
     * expansion lifts the gauge to 1.0 bar at once; then 12 x 2.01325/(12 - 2.87) - 1.01325 = 1.6329 bar, just as if
     * it had been filled to 1.0 bar.
     */
    @Test
    void aFillBelowTheChargeFirstJumpsToTheCharge() {
        assertThat(hot(TWELVE_LITRES, 0.6)).isCloseTo(1.6328617, within(1e-6)).isEqualTo(hot(TWELVE_LITRES, 1.0));
    }

    @Test
    void waterThatStaysColdStaysAtItsFillPressure() {
        assertThat(SealedSystem.hotPressureBar(TWELVE_LITRES, 0.6, SYSTEM_LITRES, 0)).hasValue(0.6);
        assertThat(SealedSystem.hotPressureBar(TWELVE_LITRES, 1.2, SYSTEM_LITRES, 0)).hasValue(1.2);
    }

    /** At 0.9 bar of atmosphere: 12 x 1.9/2.1 = 10.8571; less 2.87 is 7.9871; 12 x 1.9/7.9871 - 0.9 = 1.9546 bar. */
    @Test
    void aThinnerAtmosphereChangesTheGaugeALittle() {
        assertThat(SealedSystem.hotPressureBar(TWELVE_LITRES, FILL_BAR, SYSTEM_LITRES, EXPANSION, 0.9).orElseThrow())
                .isCloseTo(1.954588, within(1e-5));
    }

    /**
     * The gauge reads 2.9 bar hot. Air, as bar times litres: 2.87 x 2.21325 x 3.91325/(3.91325 - 2.21325) = 14.6218; in
     * 12 litres that is 1.2185 absolute, a charge of 0.2052 bar: it has lost 0.8. Or, charged as it should be, the vessel
     * works as if it had 14.6218/2.01325 = 7.263 litres. Or its charge is 3.91325 x 9.13/12 - 1.01325 = 1.9641 bar.
     */
    @Test
    void threeThingsThatExplainAHighHotPressure() {
        assertThat(SealedSystem.preChargeThatExplainsBar(12, FILL_BAR, 2.9, SYSTEM_LITRES, EXPANSION).orElseThrow())
                .isCloseTo(0.2052339, within(1e-6));
        assertThat(SealedSystem.highChargeThatExplainsBar(12, FILL_BAR, 2.9, SYSTEM_LITRES, EXPANSION).orElseThrow())
                .isCloseTo(1.9640810, within(1e-6));
    }

    /** Filled to its charge a 12 litre vessel would go from 1.2 to 1.896 bar; a gauge that stops at 1.8 has more give. */
    @Test
    void aHotPressureBelowTheBestThatTheVesselCouldDoIsNotExplainedByAnyCharge() {
        assertThat(hot(new Vessel(12, 1.2), FILL_BAR)).isCloseTo(1.8960, within(1e-3));
        assertThat(SealedSystem.preChargeThatExplainsBar(12, FILL_BAR, 1.8, SYSTEM_LITRES, EXPANSION)).isEmpty();
        assertThat(SealedSystem.highChargeThatExplainsBar(12, FILL_BAR, 1.8, SYSTEM_LITRES, EXPANSION)).isEmpty();
    }

    /**
     * Two litres of air at the atmosphere, none of it charged or filled, squeezed by one litre: the absolute pressure
     * doubles, so the gauge shows one atmosphere. Charge equal to fill is where both explanations meet.
     */
    @Test
    void aChargeEqualToTheFillIsFoundFromBothSides() {
        assertThat(hot(new Vessel(2, 0), 0, 0.01)).isEqualTo(1.01325);
        assertThat(SealedSystem.preChargeThatExplainsBar(2, 0, 1.01325, SYSTEM_LITRES, 0.01)).hasValue(0);
        assertThat(SealedSystem.highChargeThatExplainsBar(2, 0, 1.01325, SYSTEM_LITRES, 0.01)).hasValue(0);
    }

    @Test
    void aPressureThatDidNotRiseIsNotExplained() {
        assertThat(SealedSystem.preChargeThatExplainsBar(12, 1.2, 1.2, SYSTEM_LITRES, EXPANSION)).isEmpty();
        assertThat(SealedSystem.highChargeThatExplainsBar(12, 1.2, 1.2, SYSTEM_LITRES, EXPANSION)).isEmpty();
    }

    @Test
    void waterThatDidNotExpandIsNotTheVesselsDoing() {
        assertThat(SealedSystem.preChargeThatExplainsBar(12, 1.2, 2.0, SYSTEM_LITRES, 0)).isEmpty();
        assertThat(SealedSystem.highChargeThatExplainsBar(12, 1.2, 2.0, SYSTEM_LITRES, 0)).isEmpty();
    }

    /** A top radiator 5 m over the gauge: 0.5 bar to reach it and 0.3 to vent it. */
    @Test
    void theFillMustReachTheTopWithSomethingToSpare() {
        assertThat(SealedSystem.minimumFillBar(5)).isCloseTo(0.8, within(1e-12));
        assertThat(SealedSystem.minimumFillBar(0)).isCloseTo(0.3, within(1e-12));
        assertThat(SealedSystem.safetyValveMarginBar(3.2, 3)).isCloseTo(-0.2, within(1e-12));
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("fillBar", 0, 20, x -> ArgumentRange.orZero(
                SealedSystem.preChargeThatExplainsBar(12, x, 2, 100, 0.03)));
        ArgumentRange.closed("hotBar", 0, 20, x -> ArgumentRange.orZero(
                SealedSystem.preChargeThatExplainsBar(12, 1, x, 100, 0.03)));
        ArgumentRange.closed("litres", 0.1, 1000, x -> ArgumentRange.orZero(
                SealedSystem.preChargeThatExplainsBar(x, 1, 2, 100, 0.03)));
        ArgumentRange.closed("litres", 0.1, 1000, x -> ArgumentRange.orZero(
                SealedSystem.highChargeThatExplainsBar(x, 1, 2, 100, 0.03)));
        ArgumentRange.closed("fillBar", 0, 20, x -> ArgumentRange.orZero(
                SealedSystem.highChargeThatExplainsBar(12, x, 2, 100, 0.03)));
        ArgumentRange.closed("hotBar", 0, 20, x -> ArgumentRange.orZero(
                SealedSystem.highChargeThatExplainsBar(12, 1, x, 100, 0.03)));
        ArgumentRange.closed("bar", 0, 20, x -> ArgumentRange.orZero(
                SealedSystem.hotPressureBar(TWELVE_LITRES, x, 100, 0.03)));
        ArgumentRange.closed("atmosphereBar", 0.6, 1.1, x -> ArgumentRange.orZero(
                SealedSystem.hotPressureBar(TWELVE_LITRES, 1, 100, 0.03, x)));
        ArgumentRange.closed("highestPointAboveGaugeMetres", 0, 50, SealedSystem::minimumFillBar);
        ArgumentRange.closed("hotBar", 0, 20, x -> SealedSystem.safetyValveMarginBar(x, 3));
        ArgumentRange.above("safetyValveBar", 0, 10, x -> SealedSystem.safetyValveMarginBar(2, x));
        assertThatThrownBy(() -> SealedSystem.hotPressureBar(new Vessel(12, -1), 1, 100, 0.03, 0.9))
                .as("less than no air").isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("preChargeBar is -1.0");
    }

    private static double hot(Vessel vessel, double fillBar) {
        return hot(vessel, fillBar, EXPANSION);
    }

    private static double hot(Vessel vessel, double fillBar, double expansion) {
        return SealedSystem.hotPressureBar(vessel, fillBar, SYSTEM_LITRES, expansion).orElseThrow();
    }
}
