package neutralpoint.workplan;

import java.util.List;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** The same house as if it were filled the other way, to set the two plans side by side. */
public final class SystemConversion {
    private static final String OPEN_VENTED = "open-vented";
    public static final List<String> SIDES = List.of(OPEN_VENTED, "sealed");
    /** Answers that can be true on one side only. */
    private static final List<String> OF_ONE_SIDE = List.of("loft-tanks", "feed-and-vent-join", "feed-and-vent-layout",
            "small-tank-serves", "gauge-tells", "pump-and-vessel-place", "old-vent-left", "pressure-cold-bar", "pressure-hot-bar");

    private SystemConversion() {}

    /** @param side one of {@link #SIDES} */
    public static Job asIf(Job job, String side) {
        Job other = job;
        for (String finding : OF_ONE_SIDE) {
            other = other.without(finding);
        }
        boolean open = side.equals(OPEN_VENTED);
        return other.with("heating-filled-by", new Answer.One(open ? "loft-tank" : "filling-loop"))
                .with("loft-tanks", new Answer.One(open ? "two" : "no-tanks"))
                .with(open ? "feed-and-vent-join" : "pump-and-vessel-place", new Answer.One(open ? "within-150-mm" : "outside"));
    }
}
