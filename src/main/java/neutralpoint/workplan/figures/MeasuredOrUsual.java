package neutralpoint.workplan.figures;

import java.util.OptionalDouble;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Job;
import neutralpoint.workings.EstimateFormat;
import neutralpoint.workings.Readings;

/**
 * A figure that was read on site, or what is usual where it was not.
 *
 * @param isRead true when it was read
 */
record MeasuredOrUsual(Estimate value, String unit, boolean isRead) {

    static MeasuredOrUsual of(Job job, String finding, String unit, Estimate usual) {
        OptionalDouble read = Readings.of(job, finding);
        return new MeasuredOrUsual(read.isPresent() ? Estimate.exactly(read.getAsDouble()) : usual, unit, read.isPresent());
    }

    /** The figure with its unit, and a guess called a guess. */
    String shown() {
        return EstimateFormat.range(value, unit) + (isRead ? "" : ", taken as usual: common practice, no source");
    }
}
