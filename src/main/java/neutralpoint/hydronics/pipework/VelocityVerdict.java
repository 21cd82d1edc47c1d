package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;

/** What the velocity of the water means for a small copper heating pipe. Each limit is stated below. */
public enum VelocityVerdict {
    /** Below {@link #SETTLING_BELOW}: sludge can settle. */
    SLUGGISH,
    /** Up to {@link #DESIGN_HIGHEST}: as pipes are sized. */
    WITHIN_DESIGN,
    /** Up to {@link #NOISE_ABOVE}: faster than pipes are sized for, not yet heard. */
    BRISK,
    /** Up to {@link #EROSION_ABOVE}: heard. */
    NOISY,
    /** Above {@link #EROSION_ABOVE}: wears the copper wall. */
    EROSIVE;

    /** Below this sludge can settle, m/s. Source: copper trade association, publication 150. */
    public static final double SETTLING_BELOW = 0.5;
    /** Highest velocity to size heating pipes up to 50 mm for, m/s. Source: course notes quoting CIBSE. */
    public static final double DESIGN_HIGHEST = 1.0;
    /** Above this small copper tube and microbore are heard, m/s. Source: copper trade association, publication 150. */
    public static final double NOISE_ABOVE = 1.5;
    /** Above this the copper wall erodes, m/s. Source: copper trade association, publication 150. */
    public static final double EROSION_ABOVE = 2.5;
    /** Where the band that suits retained microbore begins, m/s. Source: a national energy-saving body's toolkit. */
    public static final double MICROBORE_BEST_FROM = 0.9;
    /** Where the band that suits retained microbore ends, m/s. Source: as for where it begins. */
    public static final double MICROBORE_BEST_TO = 1.0;
    /** Steepest loss to size pipes for, Pa/m. Source: course notes quoting CIBSE. */
    public static final double STEEPEST_PASCAL_PER_METRE = 300;

    private static final double FASTEST = 1e6;

    /**
     * The verdict on a velocity.
     *
     * @param metresPerSecond 0 to 1e6 m/s
     * @throws IllegalArgumentException if it is out of range
     */
    public static VelocityVerdict of(double metresPerSecond) {
        Bounds.within("metresPerSecond", metresPerSecond, 0, FASTEST);
        if (metresPerSecond < SETTLING_BELOW) {
            return SLUGGISH;
        }
        if (metresPerSecond <= DESIGN_HIGHEST) {
            return WITHIN_DESIGN;
        }
        if (metresPerSecond <= NOISE_ABOVE) {
            return BRISK;
        }
        return metresPerSecond <= EROSION_ABOVE ? NOISY : EROSIVE;
    }

    /** True in the band that suits microbore that is kept: it carries dirt and air along, yet is quiet. */
    public static boolean suitsMicrobore(double metresPerSecond) {
        return metresPerSecond >= MICROBORE_BEST_FROM && metresPerSecond <= MICROBORE_BEST_TO;
    }

    /** True when a pipe loses more in each metre than it should be sized for. */
    public static boolean isSteep(double pascalPerMetre) {
        return pascalPerMetre > STEEPEST_PASCAL_PER_METRE;
    }
}
