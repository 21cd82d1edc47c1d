package neutralpoint.hydronics;

import java.util.Locale;

/** Refuses a figure outside what can be, in one sentence that names it, its value and what is valid. */
public final class Bounds {
    private Bounds() {}

    /** The value, if it is a number from least to most, both included. */
    public static double within(String name, double value, double least, double most) {
        // Written so that a value that is not a number is refused too.
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s.",
                    name, value, least, most));
        }
        return value;
    }

    /** The same, with a lower limit that is not itself included. */
    public static double above(String name, double value, double limit, double most) {
        if (!(value > limit && value <= most)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it must lie above %s and not above %s.",
                    name, value, limit, most));
        }
        return value;
    }
}
