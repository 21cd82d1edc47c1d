package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * Conductivity and total dissolved solids (TDS) of a water sample, and what they say of a rinse.
 *
 * <p>Every argument outside its stated range is refused with {@link IllegalArgumentException}.
 */
public final class Conductivity {
    /** Least milligrams per litre of dissolved solids for each microsiemens per centimetre (EC-TDS). */
    public static final double LEAST_TDS_FACTOR = 0.5;
    /** Greatest milligrams per litre of dissolved solids for each microsiemens per centimetre (EC-TDS). */
    public static final double GREATEST_TDS_FACTOR = 0.7;
    /** Difference from the mains, as a share of the mains, up to which a rinse is accepted (WQ-06). */
    public static final double ACCEPTED_SHARE = 0.10;
    /** Difference from the mains, as a share of the mains, above which a rinse has failed (WQ-07). */
    public static final double FAILED_SHARE = 0.20;

    private static final double HIGHEST_MICROSIEMENS = 50_000;
    private static final double HIGHEST_TDS = 50_000;

    /** What the dissolved solids say of a rinse. */
    public enum Rinse {
        /** Within a tenth of the mains. */
        ACCEPTED,
        /** Between a tenth and a fifth off: the source leaves this open, and another rinse is the safer reading. */
        REPEAT,
        /** More than a fifth off the mains. */
        FAILED
    }

    private Conductivity() {}

    /**
     * Dissolved solids from conductivity: TDS = factor × EC.
     *
     * @param microsiemensAt25PerCentimetre conductivity at 25 °C, 0 to 50 000 µS/cm
     * @param factor                        0.5 to 0.7 mg/L per µS/cm, as set in the meter
     * @return mg/L
     */
    public static double tdsMilligramsPerLitre(double microsiemensAt25PerCentimetre, double factor) {
        return conductivity(microsiemensAt25PerCentimetre) * tdsFactor(factor);
    }

    /**
     * How far the system stands over the mains, as a share of the mains: 0.10 is a tenth over, negative is under.
     *
     * @param system dissolved solids or conductivity of the system, 0 to 50 000 in the mains' own unit
     * @param mains  the same of the cold tap in the same house, read with the same meter, 1 to 50 000
     */
    public static double shareOverMains(double system, double mains) {
        Bounds.within("system", system, 0, HIGHEST_TDS);
        Bounds.within("mains", mains, 1, HIGHEST_TDS);
        return (system - mains) / mains;
    }

    /**
     * The verdict on a rinse. A system well below the mains is as far off as one above it: the two samples are then not
     * of the same water.
     *
     * @param system as for {@link #shareOverMains}
     * @param mains  as for {@link #shareOverMains}
     */
    public static Rinse rinse(double system, double mains) {
        double off = Math.abs(shareOverMains(system, mains));
        if (off <= ACCEPTED_SHARE) {
            return Rinse.ACCEPTED;
        }
        return off <= FAILED_SHARE ? Rinse.REPEAT : Rinse.FAILED;
    }

    private static double conductivity(double microsiemensPerCentimetre) {
        return Bounds.within("microsiemensPerCentimetre", microsiemensPerCentimetre, 0, HIGHEST_MICROSIEMENS);
    }

    private static double tdsFactor(double factor) {
        return Bounds.within("factor", factor, LEAST_TDS_FACTOR, GREATEST_TDS_FACTOR);
    }
}
