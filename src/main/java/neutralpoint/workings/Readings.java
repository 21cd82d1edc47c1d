package neutralpoint.workings;

import java.util.OptionalDouble;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** The numbers that were read on a job. */
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
}
