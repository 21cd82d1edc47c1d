package neutralpoint.hydronics;

import java.util.Collection;

/**
 * A guessed figure said honestly: the least and the most it may well be, and the likeliest between them. The unit is
 * that of the name it is given.
 *
 * @param low    finite, not above likely
 * @param likely finite
 * @param high   finite, not below likely
 */
public record Estimate(double low, double likely, double high) {
    public static final Estimate NOTHING = new Estimate(0, 0, 0);

    /** @throws IllegalArgumentException if a figure is not finite or they are not in ascending order */
    public Estimate {
        if (!Double.isFinite(low) || !Double.isFinite(likely) || !Double.isFinite(high)
                || low > likely || likely > high) {
            throw new IllegalArgumentException("A range must hold finite figures in ascending order, and was "
                    + low + ", " + likely + ", " + high + ".");
        }
    }

    /** A figure that is known: no spread. */
    public static Estimate exactly(double value) {
        return new Estimate(value, value, value);
    }

    /**
     * A figure that may be out by a share either way.
     *
     * @param likely 0 or more
     * @param share  0 to 1: 0.15 means 15 % either way
     */
    public static Estimate about(double likely, double share) {
        Bounds.within("The likely figure", likely, 0, Double.MAX_VALUE);
        Bounds.within("The share", share, 0, 1);
        return new Estimate(likely * (1 - share), likely, likely * (1 + share));
    }

    /** The ends added to the ends: the widest the sum can be, since guesses of one kind tend to be wrong one way. */
    public Estimate plus(Estimate other) {
        return new Estimate(low + other.low, likely + other.likely, high + other.high);
    }

    /** @param factor 0 or more */
    public Estimate times(double factor) {
        Bounds.within("The factor", factor, 0, Double.MAX_VALUE);
        return new Estimate(low * factor, likely * factor, high * factor);
    }

    /** Least by least and most by most; neither may reach below 0. */
    public Estimate times(Estimate factor) {
        Bounds.within("The least of the figure", low, 0, Double.MAX_VALUE);
        Bounds.within("The least of the factor", factor.low, 0, Double.MAX_VALUE);
        return new Estimate(low * factor.low, likely * factor.likely, high * factor.high);
    }

    /** Least by most and most by least; the figure may not reach below 0, and the divisor is more than 0. */
    public Estimate over(Estimate divisor) {
        Bounds.within("The least of the figure", low, 0, Double.MAX_VALUE);
        Bounds.above("The least of the divisor", divisor.low, 0, Double.MAX_VALUE);
        return new Estimate(low / divisor.high, likely / divisor.likely, high / divisor.low);
    }

    /** The sum of all; nothing when there are none. */
    public static Estimate total(Collection<Estimate> ranges) {
        return ranges.stream().reduce(NOTHING, Estimate::plus);
    }

    /** True when the value lies between low and high, ends included. */
    boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** True when some value lies in both, a shared end included. */
    public boolean overlaps(Estimate other) {
        return low <= other.high && other.low <= high;
    }
}
