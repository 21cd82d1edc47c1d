package neutralpoint.hydronics.water;

import neutralpoint.hydronics.Bounds;

/**
 * Heat that flowing water carries: watts = flow x density x heat capacity x drop. Any of the three follows from the
 * other two. The short forms take the water as it is near 65 degrees C, right to 1.6 % from 30 to 85; the
 * long forms take the water's own figures.
 */
public final class HeatCarried {
    /** Density of water at 65 degrees C (IAPWS-IF97 gives 0.981). */
    public static final double KILOGRAMS_PER_LITRE = 0.98;
    /** Heat capacity of water, 4.18 to 4.19 from 30 to 80 degrees C (IAPWS-IF97). */
    public static final double KILOJOULES_PER_KILOGRAM_KELVIN = 4.18;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double MOST_WATTS = 1_000_000;

    private HeatCarried() {}

    /**
     * Heat given up by water that cools.
     *
     * @param flowLitresPerMinute 0 to 10 000
     * @param dropKelvin          0 to 120
     * @param kilogramsPerLitre   0.9 to 1.2
     * @param kilojoulesPerKilogramKelvin 3 to 4.5
     */
    public static double watts(double flowLitresPerMinute, double dropKelvin, double kilogramsPerLitre,
            double kilojoulesPerKilogramKelvin) {
        Bounds.within("The flow in litres per minute", flowLitresPerMinute, 0, 10_000);
        Bounds.within("The drop in kelvin", dropKelvin, 0, 120);
        return flowLitresPerMinute * dropKelvin
                * wattsPerLitreMinuteKelvin(kilogramsPerLitre, kilojoulesPerKilogramKelvin);
    }

    /** The same for water near 65 degrees C. */
    public static double watts(double flowLitresPerMinute, double dropKelvin) {
        return watts(flowLitresPerMinute, dropKelvin, KILOGRAMS_PER_LITRE, KILOJOULES_PER_KILOGRAM_KELVIN);
    }

    /**
     * The flow that gives up so much heat over a drop.
     *
     * @param watts      0 to 1 000 000
     * @param dropKelvin 0.1 to 120
     * @param kilogramsPerLitre 0.9 to 1.2
     * @param kilojoulesPerKilogramKelvin 3 to 4.5
     */
    public static double flowLitresPerMinute(double watts, double dropKelvin, double kilogramsPerLitre,
            double kilojoulesPerKilogramKelvin) {
        Bounds.within("The heat in watts", watts, 0, MOST_WATTS);
        Bounds.within("The drop in kelvin", dropKelvin, 0.1, 120);
        return watts / dropKelvin / wattsPerLitreMinuteKelvin(kilogramsPerLitre, kilojoulesPerKilogramKelvin);
    }

    /** The same for water near 65 degrees C. */
    public static double flowLitresPerMinute(double watts, double dropKelvin) {
        return flowLitresPerMinute(watts, dropKelvin, KILOGRAMS_PER_LITRE, KILOJOULES_PER_KILOGRAM_KELVIN);
    }

    /** The flow a boiler's whole output wants: {@code boilerKilowatts} 0 to 1000, {@code dropKelvin} 0.1 to 120. */
    public static double systemFlowLitresPerMinute(double boilerKilowatts, double dropKelvin) {
        return flowLitresPerMinute(boilerKilowatts * 1000, dropKelvin);
    }

    /**
     * How far water near 65 degrees C cools in giving up so much heat. Pure arithmetic: the answer may be more than
     * the water has to give, which says that the flow cannot carry the heat.
     *
     * @param watts               0 to 1 000 000
     * @param flowLitresPerMinute 0.001 to 10 000
     */
    public static double dropKelvin(double watts, double flowLitresPerMinute) {
        Bounds.within("The heat in watts", watts, 0, MOST_WATTS);
        Bounds.within("The flow in litres per minute", flowLitresPerMinute, 0.001, 10_000);
        return watts / flowLitresPerMinute
                / wattsPerLitreMinuteKelvin(KILOGRAMS_PER_LITRE, KILOJOULES_PER_KILOGRAM_KELVIN);
    }

    private static double wattsPerLitreMinuteKelvin(double kilogramsPerLitre, double kilojoulesPerKilogramKelvin) {
        Bounds.within("The density in kilograms per litre", kilogramsPerLitre, 0.9, 1.2);
        Bounds.within("The heat capacity in kilojoules per kilogram and kelvin", kilojoulesPerKilogramKelvin, 3, 4.5);
        return kilogramsPerLitre * kilojoulesPerKilogramKelvin * 1000 / SECONDS_PER_MINUTE;
    }
}
