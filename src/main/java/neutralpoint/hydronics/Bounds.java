package neutralpoint.hydronics;

import java.util.Locale;
import java.util.function.DoublePredicate;
import neutralpoint.document.Decimals;

/** Refuses a figure outside what can be, in one sentence that names it, its value and what is valid. */
public final class Bounds {
    private Bounds() {}

    /** The value, if it is a number from least to most, both included. */
    public static double within(String name, double value, double least, double most) {
        // Written so that a value that is not a number is refused too.
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s.",
                    name, toldFrom(value, v -> v >= least && v <= most), least, most));
        }
        return value;
    }

    /** The same, with a lower limit that is not itself included. */
    public static double above(String name, double value, double limit, double most) {
        if (!(value > limit && value <= most)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s; it must lie above %s and not above %s.",
                    name, toldFrom(value, v -> v > limit && v <= most), limit, most));
        }
        return value;
    }

    /** To three decimals, unless it would then read as if it were valid. */
    private static double toldFrom(double value, DoublePredicate valid) {
        double rounded = Double.parseDouble(Decimals.given(value));
        return valid.test(rounded) ? value : rounded;
    }
}
