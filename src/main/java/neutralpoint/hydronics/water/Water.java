package neutralpoint.hydronics.water;

import neutralpoint.hydronics.ValidRange;

/**
 * Properties of clean water: liquid after IAPWS-IF97 (R7-97(2012), regions 1 and 4), viscosity after IAPWS R12-08.
 * Liquid water is valid from 0 to 350 °C and from its saturation pressure to 1000 bar absolute. Uncertainty of the
 * formulation in a heating system's range: density 0.001 %, heat capacity 0.2 %, viscosity 1 %, saturation pressure
 * 0.025 % (from memory of the releases). Outside a valid range every function throws IllegalArgumentException.
 */
public final class Water {
    /** The pressure at which heating water is reckoned when none is given: about 1 bar on the gauge. */
    public static final double USUAL_BAR_ABSOLUTE = 2;

    private static final double BAR_PER_MEGAPASCAL = 10;
    private static final double MICRO = 1e-6;
    /** Water exactly at its boiling point is still liquid, though the last digits may say otherwise. */
    private static final double ROUNDING = 1e-9;

    private static final double MOST_LIQUID_BAR = 1000;
    private static final ValidRange LIQUID_CELSIUS = new ValidRange("Water temperature", "°C", 0, 350);
    private static final ValidRange SATURATED_CELSIUS = new ValidRange("Boiling water's temperature", "°C", 0, 373.946);
    private static final ValidRange SATURATED_BAR =
            new ValidRange("Boiling water's pressure", "bar absolute",
                    boilingBarAbsolute(0), boilingBarAbsolute(373.946));
    private static final ValidRange USUAL_CELSIUS = new ValidRange("Heating water temperature", "°C", 0, 120);
    private static final ValidRange VISCOSITY_KELVIN = new ValidRange("Water temperature", "K", 273.15, 1173.15);
    private static final ValidRange VISCOSITY_DENSITY = new ValidRange("Water density", "kg/m³", 0, 1200);

    private Water() {}

    /**
     * Density of liquid water, kg/m³ (IAPWS-IF97 region 1).
     *
     * @param celsius     0 to 350 °C
     * @param barAbsolute from saturation pressure to 1000 bar absolute
     */
    public static double densityKgPerCubicMetre(double celsius, double barAbsolute) {
        checkLiquid(celsius, barAbsolute);
        return 1 / If97Region1.specificVolumeCubicMetresPerKg(Kelvin.ofCelsius(celsius), barAbsolute / BAR_PER_MEGAPASCAL);
    }

    /**
     * Heat capacity of liquid water at constant pressure, kJ/(kg K) (IAPWS-IF97 region 1).
     *
     * @param celsius     0 to 350 °C
     * @param barAbsolute from saturation pressure to 1000 bar absolute
     */
    public static double heatCapacityKilojoulesPerKgKelvin(double celsius, double barAbsolute) {
        checkLiquid(celsius, barAbsolute);
        return If97Region1.heatCapacityKilojoulesPerKgKelvin(Kelvin.ofCelsius(celsius), barAbsolute / BAR_PER_MEGAPASCAL);
    }

    /**
     * Dynamic viscosity of liquid water, Pa s (IAPWS R12-08 at the density of IAPWS-IF97).
     *
     * @param celsius     0 to 350 °C
     * @param barAbsolute from saturation pressure to 1000 bar absolute
     */
    public static double viscosityPascalSeconds(double celsius, double barAbsolute) {
        double density = densityKgPerCubicMetre(celsius, barAbsolute);
        return viscosityMicropascalSeconds(Kelvin.ofCelsius(celsius), density) * MICRO;
    }

    /**
     * Dynamic viscosity of water or steam, µPa s (IAPWS R12-08, critical enhancement left out). Below the critical
     * temperature only the densities of liquid and of steam mean anything, not those between.
     *
     * @param kelvin                 273.15 to 1173.15 K
     * @param densityKgPerCubicMetre 0 (the thinnest steam) to 1200 kg/m³
     */
    static double viscosityMicropascalSeconds(double kelvin, double densityKgPerCubicMetre) {
        return IapwsViscosity.micropascalSeconds(VISCOSITY_KELVIN.check(kelvin),
                VISCOSITY_DENSITY.check(densityKgPerCubicMetre));
    }

    /**
     * Pressure at which water boils, bar absolute (IAPWS-IF97 region 4).
     *
     * @param celsius 0 to 373.946 °C, the critical point
     */
    static double saturationPressureBarAbsolute(double celsius) {
        return boilingBarAbsolute(SATURATED_CELSIUS.check(celsius));
    }

    /**
     * Temperature at which water boils, °C (IAPWS-IF97 region 4).
     *
     * @param barAbsolute 0.006112 bar absolute, where ice begins, to 220.64 bar absolute, the critical point
     */
    public static double boilingPointCelsius(double barAbsolute) {
        double megapascals = SATURATED_BAR.check(barAbsolute) / BAR_PER_MEGAPASCAL;
        return Kelvin.toCelsius(If97Region4.temperatureKelvin(megapascals));
    }

    /**
     * How much water grows from cold to hot, as a fraction of its cold volume: 0.0287 means 2.87 %. Negative where it
     * shrinks. Both densities at 2 bar absolute (IAPWS-IF97 region 1).
     *
     * @param coldCelsius 0 to 120 °C
     * @param hotCelsius  0 to 120 °C: at 2 bar absolute water boils just above
     */
    public static double expansionFraction(double coldCelsius, double hotCelsius) {
        return usualDensityKgPerCubicMetre(coldCelsius) / usualDensityKgPerCubicMetre(hotCelsius) - 1;
    }

    /** Density at 2 bar absolute, kg/m³, from 0 to 120 °C. */
    static double usualDensityKgPerCubicMetre(double celsius) {
        return densityKgPerCubicMetre(USUAL_CELSIUS.check(celsius), USUAL_BAR_ABSOLUTE);
    }

    private static double boilingBarAbsolute(double celsius) {
        return If97Region4.pressureMegapascals(Kelvin.ofCelsius(celsius)) * BAR_PER_MEGAPASCAL;
    }

    private static void checkLiquid(double celsius, double barAbsolute) {
        LIQUID_CELSIUS.check(celsius);
        double boilingBar = boilingBarAbsolute(celsius);
        new ValidRange("Pressure on liquid water at " + celsius + " °C", "bar absolute", boilingBar * (1 - ROUNDING),
                MOST_LIQUID_BAR).check(barAbsolute);
    }
}
