package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;

/** Pressure lost along a straight round pipe that runs full, by Darcy and Weisbach. */
public final class PipeLoss {
    /** Roughness of drawn copper and of plastic tube; with it Colebrook repeats published copper tables within 2 %. */
    public static final double SMOOTH_TUBE_ROUGHNESS_MILLIMETRES = 0.0015;

    private static final double MOST_FLOW = 10_000;
    private static final double MOST_LENGTH = 10_000;

    private PipeLoss() {}

    /**
     * Mean velocity of the water.
     *
     * @param flowLitresPerMinute flow, 0 to 10 000 L/min
     * @param boreMillimetres     inside diameter, 1 to 500 mm
     * @return m/s
     * @throws IllegalArgumentException if either is out of range
     */
    public static double velocityMetresPerSecond(double flowLitresPerMinute, double boreMillimetres) {
        Bounds.within("flowLitresPerMinute", flowLitresPerMinute, 0, MOST_FLOW);
        double boreMetres = Bounds.within("boreMillimetres", boreMillimetres, 1, 500) / 1000;
        return flowLitresPerMinute / 60_000 / (Math.PI / 4 * boreMetres * boreMetres);
    }

    /**
     * Reynolds number, velocity · bore / kinematic viscosity.
     *
     * @param flowLitresPerMinute flow, 0 to 10 000 L/min
     * @param boreMillimetres     inside diameter, 1 to 500 mm
     * @param kinematicViscositySquareMetresPerSecond 1e-7 to 1e-4 m²/s
     * @return without unit
     * @throws IllegalArgumentException if any is out of range
     */
    public static double reynolds(double flowLitresPerMinute, double boreMillimetres,
            double kinematicViscositySquareMetresPerSecond) {
        Fluid.checkViscosity(kinematicViscositySquareMetresPerSecond);
        return velocityMetresPerSecond(flowLitresPerMinute, boreMillimetres) * boreMillimetres / 1000
                / kinematicViscositySquareMetresPerSecond;
    }

    /**
     * Pressure lost in each metre of pipe: f · density · velocity² / (2 · bore), with f as {@link Friction} has it.
     *
     * @param flowLitresPerMinute   flow, 0 to 10 000 L/min
     * @param boreMillimetres       inside diameter, 1 to 500 mm
     * @param roughnessMillimetres  roughness of the wall, 0 to a twentieth of the bore
     * @param densityKgPerCubicMetre 500 to 1500 kg/m³
     * @param kinematicViscositySquareMetresPerSecond 1e-7 to 1e-4 m²/s
     * @return Pa/m, 0 for still water
     * @throws IllegalArgumentException if any is out of range
     */
    public static double pressurePascalPerMetre(double flowLitresPerMinute, double boreMillimetres,
            double roughnessMillimetres, double densityKgPerCubicMetre,
            double kinematicViscositySquareMetresPerSecond) {
        double reynolds = reynolds(flowLitresPerMinute, boreMillimetres, kinematicViscositySquareMetresPerSecond);
        Bounds.within("roughnessMillimetres", roughnessMillimetres, 0, boreMillimetres / 20);
        Fluid.checkDensity(densityKgPerCubicMetre);
        double boreMetres = boreMillimetres / 1000;
        // f · v² written as (f · Re) · viscosity · v / bore, so that still water needs no case of its own.
        return Friction.factorTimesReynolds(reynolds, roughnessMillimetres / boreMillimetres)
                * kinematicViscositySquareMetresPerSecond * densityKgPerCubicMetre
                * velocityMetresPerSecond(flowLitresPerMinute, boreMillimetres) / (2 * boreMetres * boreMetres);
    }

    /**
     * Pressure lost along a run of pipe and its fittings.
     *
     * @param pascalPerMetre         loss in each metre, 0 to 1e18 Pa/m
     * @param lengthMetres           length of pipe, 0 to 10 000 m
     * @param equivalentLengthMetres length of pipe that would lose as much as the fittings do, 0 to 10 000 m
     * @return Pa
     * @throws IllegalArgumentException if any is out of range
     */
    public static double lossPascal(double pascalPerMetre, double lengthMetres, double equivalentLengthMetres) {
        Bounds.within("pascalPerMetre", pascalPerMetre, 0, 1e18);
        return pascalPerMetre * (checkLength("lengthMetres", lengthMetres)
                + checkLength("equivalentLengthMetres", equivalentLengthMetres));
    }

    static double checkLength(String name, double metres) {
        return Bounds.within(name, metres, 0, MOST_LENGTH);
    }
}
