package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * Whether water lays down or dissolves calcium carbonate: the Langelier and the Ryznar index.
 *
 * <p>pHs = (9.3 + A + B) - (C + D), from corrosion textbooks (LSI and RSI entries). Calcium and alkalinity count as
 * calcium carbonate. Use the temperature of the hottest water, which is the flow: water that is in balance in the cold
 * tap may lay down scale at 80 °C. The indices speak of fresh and topped-up water; they do not judge an inhibitor.
 */
public final class Langelier {
    /** Either side of zero by so much, the Langelier index says no more than balance; common practice, no source. */
    public static final double BALANCE = 0.5;
    /** Below this Ryznar index scale grows (RSI-CLASS). */
    public static final double SCALE_BELOW = 6;
    /** Above this Ryznar index no protective film forms (RSI-CLASS). */
    public static final double NO_FILM_ABOVE = 7;
    /** Above this Ryznar index mild steel corrodes (RSI-CLASS). */
    public static final double CORRODES_ABOVE = 8;

    private static final double KELVIN_IN_FORMULA = 273;

    /** What the Langelier index says. */
    public enum Saturation { DISSOLVES_SCALE, NEAR_BALANCE, LAYS_DOWN_SCALE }

    /** What the Ryznar index says. */
    public enum Tendency { SCALE_GROWS, LITTLE_EITHER_WAY, NO_PROTECTIVE_FILM, STEEL_CORRODES }

    /**
     * A water analysis; values outside the ranges are refused with {@link IllegalArgumentException}.
     *
     * @param ph                             4 to 12
     * @param tdsMilligramsPerLitre          dissolved solids, 10 to 10 000 mg/L
     * @param calciumMilligramsPerLitre      calcium hardness as calcium carbonate, 1 to 2000 mg/L
     * @param alkalinityMilligramsPerLitre   total alkalinity as calcium carbonate, 1 to 2000 mg/L
     */
    public record Analysis(double ph, double tdsMilligramsPerLitre, double calciumMilligramsPerLitre,
            double alkalinityMilligramsPerLitre) {
        public Analysis {
            Bounds.within("ph", ph, 4, 12);
            Bounds.within("tdsMilligramsPerLitre", tdsMilligramsPerLitre, 10, 10_000);
            Bounds.within("calciumMilligramsPerLitre", calciumMilligramsPerLitre, 1, 2000);
            Bounds.within("alkalinityMilligramsPerLitre", alkalinityMilligramsPerLitre, 1, 2000);
        }
    }

    private Langelier() {}

    /**
     * The pH at which this water would be just saturated with calcium carbonate.
     *
     * @param flowCelsius temperature of the hottest water, 0 to 100 °C
     */
    public static double saturationPh(Analysis water, double flowCelsius) {
        return 9.3 + solids(water.tdsMilligramsPerLitre()) + temperature(flowCelsius)
                - calcium(water.calciumMilligramsPerLitre()) - alkalinity(water.alkalinityMilligramsPerLitre());
    }

    /**
     * The Langelier saturation index, pH - pHs: positive lays down scale, negative dissolves it.
     *
     * @param flowCelsius temperature of the hottest water, 0 to 100 °C
     */
    public static double index(Analysis water, double flowCelsius) {
        return water.ph() - saturationPh(water, flowCelsius);
    }

    /**
     * The Ryznar stability index, 2 pHs - pH.
     *
     * @param flowCelsius temperature of the hottest water, 0 to 100 °C
     */
    public static double ryznar(Analysis water, double flowCelsius) {
        return 2 * saturationPh(water, flowCelsius) - water.ph();
    }

    /** @param flowCelsius temperature of the hottest water, 0 to 100 °C */
    public static Saturation saturation(Analysis water, double flowCelsius) {
        return saturation(index(water, flowCelsius));
    }

    static Saturation saturation(double index) {
        if (index > BALANCE) {
            return Saturation.LAYS_DOWN_SCALE;
        }
        return index < -BALANCE ? Saturation.DISSOLVES_SCALE : Saturation.NEAR_BALANCE;
    }

    /** @param flowCelsius temperature of the hottest water, 0 to 100 °C */
    public static Tendency tendency(Analysis water, double flowCelsius) {
        return tendency(ryznar(water, flowCelsius));
    }

    static Tendency tendency(double ryznar) {
        if (ryznar < SCALE_BELOW) {
            return Tendency.SCALE_GROWS;
        }
        if (ryznar <= NO_FILM_ABOVE) {
            return Tendency.LITTLE_EITHER_WAY;
        }
        return ryznar <= CORRODES_ABOVE ? Tendency.NO_PROTECTIVE_FILM : Tendency.STEEL_CORRODES;
    }

    /** A of the formula. */
    static double solids(double tdsMilligramsPerLitre) {
        return (Math.log10(tdsMilligramsPerLitre) - 1) / 10;
    }

    /** B of the formula. */
    static double temperature(double celsius) {
        return -13.12 * Math.log10(Bounds.within("flowCelsius", celsius, 0, 100) + KELVIN_IN_FORMULA) + 34.55;
    }

    /** C of the formula. */
    static double calcium(double milligramsPerLitre) {
        return Math.log10(milligramsPerLitre) - 0.4;
    }

    /** D of the formula. */
    static double alkalinity(double milligramsPerLitre) {
        return Math.log10(milligramsPerLitre);
    }
}
