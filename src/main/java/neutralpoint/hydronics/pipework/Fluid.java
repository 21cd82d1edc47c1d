package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.water.Head;
import neutralpoint.hydronics.water.HeatCarried;

/**
 * What the sums need to know of the water in the pipes, plain or dosed, at its mean temperature.
 *
 * @param densityKgPerCubicMetre                  900 to 1200 kg/m³
 * @param kinematicViscositySquareMetresPerSecond 1e-7 to 1e-4 m²/s
 * @param specificHeatJoulesPerKgKelvin           3000 to 4500 J/(kg K)
 */
public record Fluid(double densityKgPerCubicMetre, double kinematicViscositySquareMetresPerSecond,
        double specificHeatJoulesPerKgKelvin) {
    public Fluid {
        checkDensity(densityKgPerCubicMetre);
        checkViscosity(kinematicViscositySquareMetresPerSecond);
        Bounds.within("specificHeatJoulesPerKgKelvin", specificHeatJoulesPerKgKelvin, 3000, 4500);
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
        return HeatCarried.flowLitresPerMinute(watts, dropKelvin, densityKgPerCubicMetre / 1000, specificHeatJoulesPerKgKelvin / 1000);
    }

    /** The pressure of one metre of head of this water, Pa. */
    public double pascalPerMetreOfHead() {
        return densityKgPerCubicMetre * Head.GRAVITY;
    }

    static void checkDensity(double densityKgPerCubicMetre) {
        Bounds.within("densityKgPerCubicMetre", densityKgPerCubicMetre, 900, 1200);
    }

    static void checkViscosity(double kinematicViscositySquareMetresPerSecond) {
        Bounds.within("kinematicViscositySquareMetresPerSecond", kinematicViscositySquareMetresPerSecond, 1e-7, 1e-4);
    }
}
