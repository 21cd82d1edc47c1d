package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;

/**
 * What the sums need to know of the water in the pipes, plain or dosed, at its mean temperature.
 *
 * @param densityKgPerCubicMetre                  500 to 1500 kg/m³
 * @param kinematicViscositySquareMetresPerSecond 1e-7 to 1e-4 m²/s
 * @param specificHeatJoulesPerKgKelvin           2000 to 5000 J/(kg K)
 */
public record Fluid(double densityKgPerCubicMetre, double kinematicViscositySquareMetresPerSecond,
        double specificHeatJoulesPerKgKelvin) {
    /** Standard gravity, m/s². */
    static final double GRAVITY = 9.80665;

    public Fluid {
        checkDensity(densityKgPerCubicMetre);
        checkViscosity(kinematicViscositySquareMetresPerSecond);
        Bounds.within("specificHeatJoulesPerKgKelvin", specificHeatJoulesPerKgKelvin, 2000, 5000);
    }

    /**
     * The flow that carries so much heat: watts / (density · specific heat · drop).
     *
     * @param watts      heat given off, 0 to 1e6 W
     * @param dropKelvin flow temperature less return temperature, 1 to 60 K
     * @return L/min
     * @throws IllegalArgumentException if either is out of range
     */
    public double flowLitresPerMinute(double watts, double dropKelvin) {
        Bounds.within("watts", watts, 0, 1e6);
        Bounds.within("dropKelvin", dropKelvin, 1, 60);
        return 60_000 * watts / (densityKgPerCubicMetre * specificHeatJoulesPerKgKelvin * dropKelvin);
    }

    /** The pressure of one metre of head of this water, Pa. */
    public double pascalPerMetreOfHead() {
        return densityKgPerCubicMetre * GRAVITY;
    }

    static void checkDensity(double densityKgPerCubicMetre) {
        Bounds.within("densityKgPerCubicMetre", densityKgPerCubicMetre, 500, 1500);
    }

    static void checkViscosity(double kinematicViscositySquareMetresPerSecond) {
        Bounds.within("kinematicViscositySquareMetresPerSecond", kinematicViscositySquareMetresPerSecond, 1e-7, 1e-4);
    }
}
