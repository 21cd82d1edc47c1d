package neutralpoint.hydronics;

import java.util.Locale;

/** One way to refuse a number: by its name, its value and its valid range. */
final class InRange {
    private InRange() {}

    /** The value, if it lies between the limits or on one; NaN never does. */
    static double check(String name, double value, double lowest, double highest) {
        if (value >= lowest && value <= highest) {
            return value;
        }
        throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s.",
                name, value, lowest, highest));
    }
}
