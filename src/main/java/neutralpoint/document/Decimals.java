package neutralpoint.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Stream;

/** How numbers are written, for people and for programs: never with decimals that nobody could have measured. */
public final class Decimals {
    private static final int GIVEN = 3;
    private static final int WORKED_OUT = 2;
    private static final int FOR_PROGRAMS = 4;
    private static final double SMALL = 0.1;
    private static final double WHOLE_FROM = 100;
    private static final double TENTHS_FROM = 10;

    private Decimals() {}

    /** A reading as it was given: three decimals at most, or three figures where it is less than a tenth. */
    public static String given(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        return plain(Math.abs(value) < SMALL ? exact.round(new MathContext(GIVEN, RoundingMode.HALF_UP))
                : exact.setScale(GIVEN, RoundingMode.HALF_UP));
    }

    /** A figure that was worked out: two decimals at most. */
    public static String shown(double value) {
        return to(WORKED_OUT, value);
    }

    /** A figure no finer than its guesses: hundreds in whole numbers, tens to a tenth, less to a hundredth. */
    public static String coarse(double value) {
        return to(Math.abs(value) >= WHOLE_FROM ? 0 : Math.abs(value) >= TENTHS_FROM ? 1 : WORKED_OUT, value);
    }

    /** At most so many decimals, and none that say nothing. */
    public static String to(int decimals, double value) {
        return Double.isFinite(value) ? plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP)) : String.valueOf(value);
    }

    /** The pattern with its %s filled in, numbers as {@link #shown}. */
    public static String sum(String pattern, Object... parts) {
        Object[] shown = Stream.of(parts).map(p -> p instanceof Double d ? shown(d) : p).toArray();
        return String.format(Locale.ROOT, pattern, shown);
    }

    /** A figure for a program to read: four decimals at most. */
    public static double rounded(double value) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(FOR_PROGRAMS, RoundingMode.HALF_EVEN).doubleValue() : value;
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
