package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * Water hardness, kept as milligrams per litre of calcium carbonate, 0 to 2000.
 *
 * <p>Every argument outside its range is refused with {@link IllegalArgumentException}.
 */
public final class Hardness {

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

    private Hardness() {}

    /**
     * @param value hardness on the scale, up to what 2000 mg/L comes to
     * @return mg/L as calcium carbonate
     */
    public static double milligramsPerLitre(Scale scale, double value) {
        return Bounds.within("value", value, 0, HIGHEST * scale.perMilligram) / scale.perMilligram;
    }
}
