package neutralpoint.hydronics.water;

import neutralpoint.hydronics.ValidRange;

/** Pressure of the air at a house's height above the sea, which is what a gauge leaves out. */
public final class Atmosphere {
    private static final double SEA_LEVEL_BAR = 1.01325;
    private static final double SEA_LEVEL_KELVIN = 288.15;
    private static final double LAPSE_KELVIN_PER_METRE = 0.0065;
    /** Specific gas constant of dry air, J/(kg K), as the standard gives it. */
    private static final double AIR_GAS_CONSTANT = 287.05287;
    private static final double EXPONENT = Head.GRAVITY / (AIR_GAS_CONSTANT * LAPSE_KELVIN_PER_METRE);
    private static final ValidRange ALTITUDE = new ValidRange("Altitude", "m", -100, 3000);

    private Atmosphere() {}

    /**
     * Pressure of the standard atmosphere, bar absolute (International Standard Atmosphere, ISO 2533:1975, troposphere;
     * constants from memory). Weather moves the true pressure some 0.05 bar either way.
     *
     * @param altitudeMetres geopotential height above sea level, -100 to 3000 m
     * @throws IllegalArgumentException outside that range
     */
    public static double pressureBar(double altitudeMetres) {
        double cooling = LAPSE_KELVIN_PER_METRE * ALTITUDE.check(altitudeMetres) / SEA_LEVEL_KELVIN;
        return SEA_LEVEL_BAR * Math.pow(1 - cooling, EXPONENT);
    }
}
