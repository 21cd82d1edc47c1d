package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/**
 * A diaphragm expansion vessel. Its air keeps Boyle's law: absolute pressure times volume stays the same, the air being
 * taken to stay at the plant room's temperature.
 *
 * @param litres       whole volume of the shell, 0.1 to 1000
 * @param preChargeBar gauge pressure of the air when the vessel holds no water, above -1.01325 and up to 10. Below 0
 *                     means that even unpressurised it could not push all its water out: the mark of a waterlogged vessel.
 */
public record Vessel(double litres, double preChargeBar) {
    /** Standard atmosphere. */
    public static final double ATMOSPHERE_BAR = 1.01325;

    /** Refuses a volume or a charge outside its range with an IllegalArgumentException. */
    public Vessel {
        Bounds.within("litres", litres, 0.1, 1000);
        Bounds.above("preChargeBar", preChargeBar, -ATMOSPHERE_BAR, 10);
    }

    /**
     * Litres of air when the water side stands at this pressure: the whole shell up to the pre-charge, less above it.
     *
     * @param bar           gauge pressure on the water side, 0 to 20
     * @param atmosphereBar 0.6 to 1.1, and above -preChargeBar
     */
    public double airLitres(double bar, double atmosphereBar) {
        double charge = absoluteChargeBar(atmosphereBar);
        return litres * charge / Math.max(charge, Bounds.within("bar", bar, 0, 20) + atmosphereBar);
    }

    /** Litres of water in the vessel; the arguments are those of {@link #airLitres}. */
    public double waterLitres(double bar, double atmosphereBar) {
        return litres - airLitres(bar, atmosphereBar);
    }

    /**
     * Litres that a rise of one bar would press in, at this pressure: the slope of Boyle's curve there. Nothing below
     * the pre-charge, where the diaphragm lies against the shell. The arguments are those of {@link #airLitres}.
     */
    public double litresPerBar(double bar, double atmosphereBar) {
        double air = airLitres(bar, atmosphereBar);
        return bar < preChargeBar ? 0 : air / (bar + atmosphereBar);
    }

    /** Absolute pressure of the air when the vessel holds no water; atmosphere as in {@link #airLitres}. */
    double absoluteChargeBar(double atmosphereBar) {
        return Bounds.above("preChargeBar", preChargeBar, -atmosphere(atmosphereBar), 10) + atmosphereBar;
    }

    static double atmosphere(double atmosphereBar) {
        return Bounds.within("atmosphereBar", atmosphereBar, 0.6, 1.1);
    }
}
