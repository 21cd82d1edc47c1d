package neutralpoint.workings;

import java.util.Locale;
import java.util.OptionalDouble;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** The numbers of a job, and how numbers are shown. */
final class Figures {
    private Figures() {}

    static OptionalDouble of(Job job, String finding) {
        return job.answers().get(finding) instanceof Answer.Reading r ? OptionalDouble.of(r.value()) : OptionalDouble.empty();
    }

    static boolean has(Job job, String... findings) {
        for (String finding : findings) {
            if (of(job, finding).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    static double get(Job job, String finding) {
        return of(job, finding).orElseThrow();
    }

    /** With two decimals at most, and none that say nothing. */
    static String shown(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
        return text.equals("-0") ? "0" : text;
    }

    static String sum(String pattern, Object... parts) {
        for (int i = 0; i < parts.length; i++) {
            parts[i] = parts[i] instanceof Double d ? shown(d) : parts[i];
        }
        return String.format(Locale.ROOT, pattern, parts);
    }
}
