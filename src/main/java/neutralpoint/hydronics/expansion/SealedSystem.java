package neutralpoint.hydronics.expansion;

import java.util.OptionalDouble;
import neutralpoint.hydronics.Bounds;

/**
 * What the gauge of a sealed system should show when hot, and what vessel would explain what it does show. Pipes and
 * radiators are taken as rigid, so that all expansion goes into the vessel. Pressures are gauge, in bar.
 *
 * <p>A fill below the pre-charge leaves the vessel without water. The first trace of expansion then raises the pressure
 * to the pre-charge at once, having nowhere to go, and from there on the air gives way. In a house a little trapped air
 * softens that step; the end is the same. Every sum refuses an argument outside its range with an
 * IllegalArgumentException. Source of the law: Boyle; of its use here: common practice, no source.
 */
public final class SealedSystem {
    private static final double MOST_BAR = 20;

    private SealedSystem() {}

    /** {@link #hotPressureBar(Vessel, double, double, double, double)} at the standard atmosphere. */
    public static OptionalDouble hotPressureBar(Vessel vessel, double fillBar, double systemLitres,
            double expansionFraction) {
        return hotPressureBar(vessel, fillBar, systemLitres, expansionFraction, Vessel.ATMOSPHERE_BAR);
    }

    /**
     * Gauge pressure when hot. Empty when the expansion would need more than all the vessel's air: no pressure settles,
     * and the safety valve decides.
     *
     * @param fillBar           cold, 0 to 20
     * @param systemLitres      content of the system when cold, 1 to 5000
     * @param expansionFraction gain from the fill to the hot temperature, 0 to 0.1
     * @param atmosphereBar     0.6 to 1.1, and above -preChargeBar
     */
    public static OptionalDouble hotPressureBar(Vessel vessel, double fillBar, double systemLitres, double expansionFraction,
            double atmosphereBar) {
        double expansion = ThermalExpansion.litres(systemLitres, expansionFraction);
        double coldAir = vessel.airLitres(fillBar, atmosphereBar);
        if (expansion == 0) {
            return OptionalDouble.of(fillBar);
        }
        double hotAir = coldAir - expansion;
        return hotAir > 0
                ? OptionalDouble.of(vessel.absoluteChargeBar(atmosphereBar) * vessel.litres() / hotAir - atmosphereBar)
                : OptionalDouble.empty();
    }

    /**
     * The charge at or below the fill pressure with which the vessel would show the hot pressure that was read: air left,
     * told as the gauge pressure it would have with no water in the vessel. Closed form of Boyle's law at the standard
     * atmosphere. A vessel charged above the fill also shows a high hot pressure: see {@link #highChargeThatExplainsBar}.
     * Empty when the pressure did not rise, when the water did not expand, or when even a vessel charged to the fill
     * pressure would show more than was read.
     *
     * @param litres            volume of the vessel, 0.1 to 1000
     * @param fillBar           cold, 0 to 20
     * @param hotBar            hot, 0 to 20
     * @param systemLitres      content of the system when cold, 1 to 5000
     * @param expansionFraction gain from the cold to the hot reading, 0 to 0.1
     */
    public static OptionalDouble preChargeThatExplainsBar(double litres, double fillBar, double hotBar, double systemLitres,
            double expansionFraction) {
        double fill = absolute("fillBar", fillBar);
        double charge = airThatExplains(fillBar, hotBar, systemLitres, expansionFraction) / vesselLitres(litres);
        return charge > 0 && charge <= fill ? OptionalDouble.of(charge - Vessel.ATMOSPHERE_BAR) : OptionalDouble.empty();
    }

    /**
     * The charge at or above the fill pressure that would show the same hot pressure: the vessel was pumped up too far
     * or the system filled too little. Closed form at the standard atmosphere; empty when no such charge does. The
     * arguments are those of {@link #preChargeThatExplainsBar}.
     */
    public static OptionalDouble highChargeThatExplainsBar(double litres, double fillBar, double hotBar, double systemLitres,
            double expansionFraction) {
        double expansion = ThermalExpansion.litres(systemLitres, expansionFraction);
        double charge = absolute("hotBar", hotBar) * (vesselLitres(litres) - expansion) / litres;
        return charge >= absolute("fillBar", fillBar) && expansion > 0
                ? OptionalDouble.of(charge - Vessel.ATMOSPHERE_BAR) : OptionalDouble.empty();
    }

    /**
     * Least cold fill pressure: 0.1 bar for each metre that the highest point stands above the gauge, and 0.3 bar so that
     * it can be vented. Common practice, no source.
     *
     * @param highestPointAboveGaugeMetres 0 to 50; take 0 when the gauge is the highest
     */
    public static double minimumFillBar(double highestPointAboveGaugeMetres) {
        return 0.1 * Bounds.within("highestPointAboveGaugeMetres", highestPointAboveGaugeMetres, 0, 50) + 0.3;
    }

    /**
     * How far the hot pressure stays below the safety valve's setting; negative when the valve must lift.
     *
     * @param hotBar         0 to 20
     * @param safetyValveBar setting of the valve, above 0 and up to 10
     */
    public static double safetyValveMarginBar(double hotBar, double safetyValveBar) {
        return Bounds.above("safetyValveBar", safetyValveBar, 0, 10) - Bounds.within("hotBar", hotBar, 0, MOST_BAR);
    }

    /**
     * Air, as absolute bar times litres, that lets the expansion raise the pressure from one reading to the other:
     * air/p1 - air/p2 = expansion. Zero when the pressure did not rise or the water did not expand.
     */
    private static double airThatExplains(double fromBar, double toBar, double systemLitres, double expansionFraction) {
        double expansion = ThermalExpansion.litres(systemLitres, expansionFraction);
        double from = absolute("fillBar", fromBar);
        double to = absolute("hotBar", toBar);
        return to > from ? expansion * from * to / (to - from) : 0;
    }

    private static double vesselLitres(double litres) {
        return Bounds.within("litres", litres, 0.1, 1000);
    }

    private static double absolute(String name, double bar) {
        return Bounds.within(name, bar, 0, MOST_BAR) + Vessel.ATMOSPHERE_BAR;
    }
}
