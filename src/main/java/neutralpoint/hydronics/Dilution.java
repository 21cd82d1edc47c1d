package neutralpoint.hydronics;

/**
 * How much of what was in the water is left after clean water has run through.
 *
 * <p>A radiator or a system kept circulating is well mixed: the share left is exp(-n) after n turnovers, and each
 * turnover only takes 63 % of what is still there. A pipe run is nearer to plug flow: clean water pushes the old out
 * before it. Arguments outside their range are refused with {@link IllegalArgumentException}.
 */
public final class Dilution {
    private static final double MOST_TURNOVERS = 100;
    private static final double MOST_LITRES = 100_000;
    private static final double LEAST_CONTENT_LITRES = 0.001;
    private static final double LEAST_SHARE = 1e-9;
    private static final double HIGHEST_CONCENTRATION = 50_000;

    private Dilution() {}

    /**
     * Share left in well-mixed water, exp(-n) (DIL-T entries).
     *
     * @param turnovers clean water run through over water content, 0 to 100
     */
    public static double mixedShareLeft(double turnovers) {
        return Math.exp(-Bounds.within("turnovers", turnovers, 0, MOST_TURNOVERS));
    }

    /**
     * Share left in well-mixed water.
     *
     * @param litresThrough clean water run through, 0 to 100 000 L and to 100 turnovers
     * @param contentLitres water content, 0.001 to 100 000 L
     */
    public static double mixedShareLeft(double litresThrough, double contentLitres) {
        return mixedShareLeft(through(litresThrough) / content(contentLitres));
    }

    /**
     * Share left in plug flow: what clean water has not yet pushed out.
     *
     * @param litresThrough clean water run through, 0 to 100 000 L
     * @param contentLitres water content, 0.001 to 100 000 L
     */
    public static double plugShareLeft(double litresThrough, double contentLitres) {
        return Math.max(0, 1 - through(litresThrough) / content(contentLitres));
    }

    /**
     * Turnovers of well-mixed water until so much is left; the inverse of {@link #mixedShareLeft(double)}.
     *
     * @param share share to be left, 1e-9 to 1
     */
    public static double turnoversToShare(double share) {
        return Math.log(1 / Bounds.within("share", share, LEAST_SHARE, 1));
    }

    /**
     * Clean water to run through well-mixed water until so much is left: content × ln(1 / share).
     *
     * @param share         share to be left, 1e-9 to 1
     * @param contentLitres water content, 0.001 to 100 000 L
     * @return litres
     */
    public static double litresToShare(double share, double contentLitres) {
        return content(contentLitres) * turnoversToShare(share);
    }

    /**
     * Turnovers of mains water until the system is within a share of the mains' own reading,
     * ln((system - mains) / (share × mains)) (DIL-N entries). Zero if it is already.
     *
     * @param system      dissolved solids or conductivity of the system, 0 to 50 000 in the mains' own unit
     * @param mains       the same of the mains, 1 to 50 000
     * @param withinShare share of the mains' reading that is near enough, 0.001 to 1
     */
    public static double turnoversToMains(double system, double mains, double withinShare) {
        Bounds.within("system", system, 0, HIGHEST_CONCENTRATION);
        Bounds.within("mains", mains, 1, HIGHEST_CONCENTRATION);
        Bounds.within("withinShare", withinShare, 0.001, 1);
        double off = Math.abs(system - mains) / (withinShare * mains);
        return Math.log(Math.max(1, off));
    }

    /**
     * Time for so much water at a flow.
     *
     * @param litres              0 to 100 000 L
     * @param flowLitresPerMinute 0.01 to 1000 L/min
     * @return minutes
     */
    public static double minutes(double litres, double flowLitresPerMinute) {
        return through(litres) / Bounds.within("flowLitresPerMinute", flowLitresPerMinute, 0.01, 1000);
    }

    private static double through(double litres) {
        return Bounds.within("litres", litres, 0, MOST_LITRES);
    }

    private static double content(double contentLitres) {
        return Bounds.within("contentLitres", contentLitres, LEAST_CONTENT_LITRES, MOST_LITRES);
    }
}
