package neutralpoint.workplan.figures;

import java.util.List;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.EstimateFormat;

/**
 * A figure of the plan with its arithmetic.
 *
 * @param value  low, likely and high; all the same where nothing in it is a guess
 * @param sums   the arithmetic, line by line
 * @param source where the sum and its guesses come from
 */
public record Figure(String id, String title, Estimate value, String unit, List<String> sums, String source) {
    public Figure {
        sums = List.copyOf(sums);
    }

    /** The value with its unit, and its ends where they differ. */
    public String shown() {
        return EstimateFormat.range(value, unit);
    }
}
