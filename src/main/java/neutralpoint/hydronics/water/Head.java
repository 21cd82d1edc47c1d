package neutralpoint.hydronics.water;

import neutralpoint.hydronics.ValidRange;

/**
 * Head of water and the pressure under it: p = ρ g h, with water's density at 2 bar absolute (IAPWS-IF97) and standard
 * gravity. Negative values mean upwards or below the datum.
 */
public final class Head {
    /** Standard gravity, m/s² (fixed by the CGPM of 1901). */
    public static final double GRAVITY = 9.80665;

    private static final double PASCALS_PER_BAR = 100_000;
    private static final ValidRange METRES = new ValidRange("Head", "m", -1000, 1000);
    private static final ValidRange BAR = new ValidRange("Pressure difference", "bar", -100, 100);

    private Head() {}

    /**
     * Pressure difference of a column of water, bar.
     *
     * @param metres  height of the column, -1000 to 1000 m
     * @param celsius temperature of the water, 0 to 120 °C
     * @throws IllegalArgumentException outside those ranges
     */
    public static double bar(double metres, double celsius) {
        return METRES.check(metres) * barPerMetre(celsius);
    }

    /**
     * Height of the column of water that makes a pressure difference, m.
     *
     * @param bar     pressure difference, -100 to 100 bar
     * @param celsius temperature of the water, 0 to 120 °C
     * @throws IllegalArgumentException outside those ranges
     */
    public static double metres(double bar, double celsius) {
        return BAR.check(bar) / barPerMetre(celsius);
    }

    private static double barPerMetre(double celsius) {
        return Water.usualDensityKgPerCubicMetre(celsius) * GRAVITY / PASCALS_PER_BAR;
    }
}
