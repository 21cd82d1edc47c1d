package neutralpoint.property;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * How many random examples a property is tried on. Each number is moderate as it stands here, smaller with {@code -Pquick}
 * and large with {@code -Pmillion}; any of them can be set by {@code -D} and the name that is given.
 */
public final class Tries {
    /** Call-outs, {@code neutralpoint.tries}. */
    public static final int CALLOUTS = Integer.getInteger("neutralpoint.tries", 10000);
    /** Call-outs in each of which something is changed, {@code neutralpoint.whatIfs}. */
    public static final int WHAT_IFS = Integer.getInteger("neutralpoint.whatIfs", 2000);
    /** Call-outs that are planned, {@code neutralpoint.planTries}. */
    public static final int PLANS = Integer.getInteger("neutralpoint.planTries", 1500);
    /** Call-outs into which each danger is put, {@code neutralpoint.dangerTries}. */
    public static final int PER_DANGER = Integer.getInteger("neutralpoint.dangerTries", 20);
    /** Jobs full of readings, {@code neutralpoint.readingTries}. */
    public static final int READINGS = Integer.getInteger("neutralpoint.readingTries", 3000);
    /** What the random examples are made from, {@code neutralpoint.seed}; the same seed makes the same examples. */
    public static final long SEED = Long.getLong("neutralpoint.seed", 1950);

    private static final Path NOTES = Path.of("target/random-tries.txt");

    static {
        write("", StandardOpenOption.TRUNCATE_EXISTING);
    }

    private Tries() {}

    /** Keeps a line of what was tried in {@code target/random-tries.txt}, so that one can see what a property has met. */
    public static synchronized void note(String format, Object... values) {
        write(String.format(format + "%n", values), StandardOpenOption.APPEND);
    }

    private static void write(String text, StandardOpenOption how) {
        try {
            Files.writeString(NOTES, text, StandardOpenOption.CREATE, how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
