package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/**
 * How large an expansion vessel should be, by the rules in use. They differ in the reserve they keep, so each stands for
 * itself. Pressures are gauge, in bar, unless the name says absolute. Every sum refuses an argument outside its range
 * with an IllegalArgumentException.
 */
public final class VesselSizing {
    /** Expansion behind the handbook's table of vessel factors: water from 10 to about 107 °C (fitted to that table). */
    public static final double TABLE_EXPANSION = 0.049;

    private static final double LEAST_RESERVE_LITRES = 3;
    private static final double RESERVE_SHARE = 0.005;

    private VesselSizing() {}

    /**
     * A vessel by the method of EN 12828.
     *
     * @param expansionLitres  what the water gains
     * @param reserveLitres    water kept in the vessel when cold
     * @param finalPressureBar highest working pressure
     * @param vesselLitres     least volume of the vessel
     */
    public record Sizing(double expansionLitres, double reserveLitres, double finalPressureBar, double vesselLitres) {}

    /**
     * VN = (Ve + Vwr)(pe + 1)/(pe - p0), with a reserve Vwr of 0.5 % of the content and at least 3 litres, and a final
     * pressure pe of 0.5 bar below the safety valve. EN 12828 Annex D, from memory; the standard takes the atmosphere as
     * 1 bar. It lets a vessel of up to 15 litres keep a fifth of its volume instead: not used, being the smaller.
     *
     * @param systemLitres      content of the system when cold, 1 to 5000
     * @param expansionFraction gain to the highest temperature, 0 to 0.1
     * @param preChargeBar      charge of the vessel, 0 to 4.4, and at least 0.1 bar below the final pressure
     * @param safetyValveBar    setting of the valve, 1 to 5: the 0.5 bar holds for these
     */
    public static Sizing vesselLitresByEn12828(double systemLitres, double expansionFraction, double preChargeBar,
            double safetyValveBar) {
        double expansion = ThermalExpansion.litres(systemLitres, expansionFraction);
        double reserve = Math.max(RESERVE_SHARE * systemLitres, LEAST_RESERVE_LITRES);
        double finalBar = Bounds.within("safetyValveBar", safetyValveBar, 1, 5) - 0.5;
        Bounds.within("preChargeBar", preChargeBar, 0, finalBar - 0.1);
        return new Sizing(expansion, reserve, finalBar, (expansion + reserve) * (finalBar + 1) / (finalBar - preChargeBar));
    }

    /**
     * Litres of vessel for each litre of system, as in the handbook's table for a vessel filled to its charge:
     * 0.049/(1 - (p0 + 1)/(pmax + 1)), pmax being 0.35 bar below the safety valve. Fitted to that table, which it meets
     * within 1.2 %; the table is from memory.
     *
     * @param safetyValveBar setting of the valve, 1 to 10
     * @param chargeBar      charge and cold fill, 0 to 9.55, and at least 0.1 bar below pmax
     */
    public static double vesselFactor(double safetyValveBar, double chargeBar) {
        double mostBar = Bounds.within("safetyValveBar", safetyValveBar, 1, 10) - 0.35;
        return TABLE_EXPANSION / (1 - (Bounds.within("chargeBar", chargeBar, 0, mostBar - 0.1) + 1) / (mostBar + 1));
    }

    /**
     * Useful volume of an open cistern: k Vw (v1/v0 - 1) (a general engineering reference).
     *
     * @param allowanceFactor   k, 1 to 5; about 2
     * @param systemLitres      content of the system when cold, 1 to 5000
     * @param expansionFraction v1/v0 - 1, 0 to 0.1
     */
    public static double openCisternLitres(double allowanceFactor, double systemLitres, double expansionFraction) {
        return allowance(allowanceFactor) * ThermalExpansion.litres(systemLitres, expansionFraction);
    }

    /**
     * Volume of a diaphragm vessel: k Vw (v1/v0 - 1)/(1 - p0/p1) (a general engineering reference).
     *
     * @param allowanceFactor    k, 1 to 5; usually 1
     * @param systemLitres       content of the system when cold, 1 to 5000
     * @param expansionFraction  v1/v0 - 1, 0 to 0.1
     * @param initialAbsoluteBar p0, 0.6 to 10.9, and at least 0.1 bar below p1
     * @param finalAbsoluteBar   p1, 0.7 to 11
     */
    public static double diaphragmLitres(double allowanceFactor, double systemLitres, double expansionFraction,
            double initialAbsoluteBar, double finalAbsoluteBar) {
        Bounds.within("finalAbsoluteBar", finalAbsoluteBar, 0.7, 11);
        Bounds.within("initialAbsoluteBar", initialAbsoluteBar, 0.6, finalAbsoluteBar - 0.1);
        return allowance(allowanceFactor) * ThermalExpansion.litres(systemLitres, expansionFraction)
                / (1 - initialAbsoluteBar / finalAbsoluteBar);
    }

    private static double allowance(double factor) {
        return Bounds.within("allowanceFactor", factor, 1, 5);
    }
}
