package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * The turbidity tube: how deep a column of sample may be before the mark on its base is lost.
 *
 * <p>Depth and turbidity follow depth = 244.13 NTU^-0.662 (Myre and Shaw 2006, as reproduced in a school study; TUB
 * entries) between 5 and 240 NTU. The relation was found with clay, which scatters light. Black heating water absorbs
 * light as well, so that its NTU is indicative only: compare it with the mains in the same tube, by the same eyes.
 */
public final class Turbidity {
    /** Clearest water the relation holds for. */
    public static final double LOWEST_NTU = 5;
    /** Dirtiest water the relation holds for. */
    public static final double HIGHEST_NTU = 240;

    private static final double DEPTH_AT_ONE_NTU = 244.13;
    private static final double EXPONENT = -0.662;
    private static final double LONGEST_TUBE_CENTIMETRES = 200;

    /** A turbidity as far as the tube can tell it. */
    public sealed interface TubeReading permits About, AtMost, AtLeast {}

    /** Within the range of the relation. */
    public record About(double ntu) implements TubeReading {}

    /** The mark was seen deeper than the relation reaches: this or clearer. */
    public record AtMost(double ntu) implements TubeReading {}

    /** The mark was lost shallower than the relation reaches: this or dirtier. */
    public record AtLeast(double ntu) implements TubeReading {}

    private Turbidity() {}

    /**
     * Depth at which the mark is just lost.
     *
     * @param ntu turbidity, 5 to 240 NTU; anything else is refused with {@link IllegalArgumentException}
     * @return cm
     */
    public static double depthCentimetres(double ntu) {
        return DEPTH_AT_ONE_NTU * Math.pow(Bounds.within("ntu", ntu, LOWEST_NTU, HIGHEST_NTU), EXPONENT);
    }

    /**
     * Turbidity from the depth at which the mark is just lost; never extrapolated.
     *
     * @param depthCentimetres depth of sample, 0 to 200 cm; anything else is refused with
     *                         {@link IllegalArgumentException}
     */
    public static TubeReading read(double depthCentimetres) {
        Bounds.within("depthCentimetres", depthCentimetres, 0, LONGEST_TUBE_CENTIMETRES);
        if (depthCentimetres > depthCentimetres(LOWEST_NTU)) {
            return new AtMost(LOWEST_NTU);
        }
        if (depthCentimetres < depthCentimetres(HIGHEST_NTU)) {
            return new AtLeast(HIGHEST_NTU);
        }
        return new About(Math.pow(depthCentimetres / DEPTH_AT_ONE_NTU, 1 / EXPONENT));
    }

    /**
     * The sample's depth as a share of the depth mains water gives in the same tube. A tube gone cloudy with age makes
     * clean water look dirty; the share does not.
     *
     * @param sampleCentimetres depth of the system's sample, 0 to 200 cm
     * @param mainsCentimetres  depth of the mains sample, 1 to 200 cm
     * @return 1 when both are as clear; more when the sample is clearer than the mains
     */
    public static double shareOfMainsDepth(double sampleCentimetres, double mainsCentimetres) {
        return Bounds.within("sampleCentimetres", sampleCentimetres, 0, LONGEST_TUBE_CENTIMETRES)
                / Bounds.within("mainsCentimetres", mainsCentimetres, 1, LONGEST_TUBE_CENTIMETRES);
    }
}
