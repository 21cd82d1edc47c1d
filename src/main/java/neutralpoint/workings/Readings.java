package neutralpoint.workings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** The numbers of a job, and how numbers are shown. */
public final class Readings {
    private Readings() {}

    /** The reading of a number finding; empty when it was not given. */
    public static OptionalDouble of(Job job, String finding) {
        return job.answers().get(finding) instanceof Answer.Reading r ? OptionalDouble.of(r.value()) : OptionalDouble.empty();
    }

    /** True when all of these number findings were read. */
    public static boolean has(Job job, String... findings) {
        for (String finding : findings) {
            if (of(job, finding).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** A reading that is known to be there. */
    public static double get(Job job, String finding) {
        return of(job, finding).orElseThrow();
    }

    /** With two decimals at most, and none that say nothing. */
    public static String shown(double value) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }

    /** The pattern with its %s filled in, numbers as {@link #shown}. */
    public static String sum(String pattern, Object... parts) {
        Object[] shown = Stream.of(parts).map(p -> p instanceof Double d ? shown(d) : p).toArray();
        return String.format(Locale.ROOT, pattern, shown);
    }
}
