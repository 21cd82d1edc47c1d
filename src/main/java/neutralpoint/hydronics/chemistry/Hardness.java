package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * Water hardness, kept as milligrams per litre of calcium carbonate, 0 to 2000.
 *
 * <p>Every argument outside its range is refused with {@link IllegalArgumentException}.
 */
public final class Hardness {
    /** Below this, in mg/L as calcium carbonate, water is soft (HARD-WW). */
    public static final double MODERATELY_HARD_FROM = 100;
    /** Above this, in mg/L as calcium carbonate, water is hard (HARD-WW). */
    public static final double HARD_ABOVE = 200;
    /** Above this, in mg/L as calcium carbonate, a new boiler wants scale reduction (WQ-08). */
    public static final double SCALE_REDUCTION_ABOVE = 200;

    private static final double HIGHEST = 2000;

    /** Molar mass of calcium carbonate in g/mol; atomic masses from memory. */
    private static final double CALCIUM_CARBONATE = 100.087;

    /** A way to write hardness, with its size of one milligram per litre of calcium carbonate. */
    public enum Scale {
        /** Milligrams of calcium per litre. */
        MILLIGRAMS_CALCIUM_PER_LITRE(40.078 / CALCIUM_CARBONATE),
        /** Degrees Clark: one grain of calcium carbonate (64.79891 mg) in a UK gallon (4.54609 L). */
        CLARK_DEGREES(4.54609 / 64.79891),
        /** French degrees: 10 mg of calcium carbonate in a litre. */
        FRENCH_DEGREES(0.1),
        /** German degrees: 10 mg of calcium oxide (56.077 g/mol) in a litre. */
        GERMAN_DEGREES(56.077 / CALCIUM_CARBONATE / 10),
        /** Millimoles of alkaline earths per litre. */
        MILLIMOLES_PER_LITRE(1 / CALCIUM_CARBONATE);

        private final double perMilligram;

        Scale(double perMilligram) {
            this.perMilligram = perMilligram;
        }
    }

    /** Three bands as a UK water company names them; others draw them differently and no law draws any. */
    public enum HardnessBand { SOFT, MODERATELY_HARD, HARD }

    private Hardness() {}

    /**
     * @param milligramsPerLitre hardness as calcium carbonate, 0 to 2000 mg/L
     * @return the same hardness on the scale
     */
    public static double on(Scale scale, double milligramsPerLitre) {
        return valid(milligramsPerLitre) * scale.perMilligram;
    }

    /**
     * @param value hardness on the scale, up to what 2000 mg/L comes to
     * @return mg/L as calcium carbonate
     */
    public static double milligramsPerLitre(Scale scale, double value) {
        return Bounds.within("value", value, 0, HIGHEST * scale.perMilligram) / scale.perMilligram;
    }

    /** @param milligramsPerLitre hardness as calcium carbonate, 0 to 2000 mg/L */
    public static HardnessBand band(double milligramsPerLitre) {
        if (valid(milligramsPerLitre) < MODERATELY_HARD_FROM) {
            return HardnessBand.SOFT;
        }
        return milligramsPerLitre > HARD_ABOVE ? HardnessBand.HARD : HardnessBand.MODERATELY_HARD;
    }

    /**
     * Whether mains water is hard enough for scale reduction to be expected with a new boiler.
     *
     * @param milligramsPerLitre hardness as calcium carbonate, 0 to 2000 mg/L
     */
    public static boolean wantsScaleReduction(double milligramsPerLitre) {
        return valid(milligramsPerLitre) > SCALE_REDUCTION_ABOVE;
    }

    private static double valid(double milligramsPerLitre) {
        return Bounds.within("milligramsPerLitre", milligramsPerLitre, 0, HIGHEST);
    }
}
