package neutralpoint.hydronics;

/**
 * How much of what was in the water is left after clean water has run through.
 *
 * <p>A radiator or a system kept circulating is well mixed: the share left is exp(-n) after n turnovers, and each
 * turnover only takes 63 % of what is still there. Arguments outside their range are refused with {@link IllegalArgumentException}.
 */
public final class Dilution {
    private static final double LEAST_SHARE = 1e-9;
    private static final double HIGHEST_CONCENTRATION = 50_000;

    private Dilution() {}

    /**
     * Turnovers of well-mixed water until so much is left.
     *
     * @param share share to be left, 1e-9 to 1
     */
    public static double turnoversToShare(double share) {
        return Math.log(1 / Bounds.within("share", share, LEAST_SHARE, 1));
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
}
