package neutralpoint.workplan;

import java.util.OptionalDouble;
import neutralpoint.hydronics.Range;
import neutralpoint.job.Job;
import neutralpoint.workings.Figures;

/**
 * A figure that was read on site, or what is usual where it was not.
 *
 * @param isRead true when it was read
 */
record Given(Range value, String unit, boolean isRead) {

    static Given of(Job job, String finding, String unit, Range usual) {
        OptionalDouble read = Figures.of(job, finding);
        return new Given(read.isPresent() ? Range.exactly(read.getAsDouble()) : usual, unit, read.isPresent());
    }

    /** The figure with its unit, and a guess called a guess. */
    String shown() {
        return Said.range(value, unit) + (isRead ? "" : ", taken as usual: common practice, no source");
    }
}
