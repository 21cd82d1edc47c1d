package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/**
 * What dissolved metals and conductivity say of corrosion in a closed circuit. Arguments outside their range are
 * refused with {@link IllegalArgumentException}.
 */
public final class Corrosion {
    /** Copper ions of about this much start to eat aluminium, mg/L; an order of size (COR-CU-AL). */
    public static final double COPPER_ON_ALUMINIUM_MILLIGRAMS_PER_LITRE = 0.02;
    /** Copper from which it plates out on steel and aluminium, mg/L (COR-CU2). */
    public static final double COPPER_PLATES_FROM_MILLIGRAMS_PER_LITRE = 0.5;
    /** Copper from which corrosion or flux is at work, mg/L (COR-CU). */
    public static final double COPPER_ACTION_MILLIGRAMS_PER_LITRE = 1.0;
    /** Total iron often quoted as the upper guide, mg/L; from memory, no hard limit (COR-BG50). */
    public static final double TOTAL_IRON_GUIDE_MILLIGRAMS_PER_LITRE = 15;
    /** Dissolved iron often quoted as the upper guide, mg/L; from memory, no hard limit (COR-BG50). */
    public static final double DISSOLVED_IRON_GUIDE_MILLIGRAMS_PER_LITRE = 3;

    private static final double HIGHEST_MILLIGRAMS = 10_000;

    /** What dissolved copper says. */
    public enum Copper { LITTLE, ATTACKS_ALUMINIUM, PLATES_OUT, CORROSION_OR_FLUX }

    private Corrosion() {}

    /**
     * @param milligramsPerLitre dissolved copper, 0 to 10 000 mg/L
     * @param aluminium          whether the system has aluminium, most often the boiler's exchanger
     */
    public static Copper copper(double milligramsPerLitre, boolean aluminium) {
        milligrams(milligramsPerLitre);
        if (milligramsPerLitre >= COPPER_ACTION_MILLIGRAMS_PER_LITRE) {
            return Copper.CORROSION_OR_FLUX;
        }
        if (milligramsPerLitre >= COPPER_PLATES_FROM_MILLIGRAMS_PER_LITRE) {
            return Copper.PLATES_OUT;
        }
        return aluminium && milligramsPerLitre >= COPPER_ON_ALUMINIUM_MILLIGRAMS_PER_LITRE
                ? Copper.ATTACKS_ALUMINIUM
                : Copper.LITTLE;
    }

    /**
     * Whether iron stands above the guide values that are often quoted; a hint, and no ground for a verdict by itself.
     *
     * @param totalMilligramsPerLitre     iron with the dirt shaken up, 0 to 10 000 mg/L and no less than dissolved
     * @param dissolvedMilligramsPerLitre iron in the filtered sample, 0 to 10 000 mg/L
     */
    public static boolean ironAboveGuide(double totalMilligramsPerLitre, double dissolvedMilligramsPerLitre) {
        milligrams(dissolvedMilligramsPerLitre);
        Bounds.within("totalMilligramsPerLitre", totalMilligramsPerLitre, dissolvedMilligramsPerLitre,
                HIGHEST_MILLIGRAMS);
        return totalMilligramsPerLitre >= TOTAL_IRON_GUIDE_MILLIGRAMS_PER_LITRE
                || dissolvedMilligramsPerLitre >= DISSOLVED_IRON_GUIDE_MILLIGRAMS_PER_LITRE;
    }

    private static void milligrams(double milligramsPerLitre) {
        Bounds.within("milligramsPerLitre", milligramsPerLitre, 0, HIGHEST_MILLIGRAMS);
    }
}
