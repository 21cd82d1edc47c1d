package neutralpoint.workplan;

import java.util.List;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** The same house as if it were filled the other way, to set the two plans side by side. */
public final class SystemConversion {
    public static final List<String> SIDES = List.of(TraitId.OPEN_VENTED, TraitId.SEALED);
    /** Answers that can be true on one side only. */
    private static final List<String> OF_ONE_SIDE = List.of(FindingId.LOFT_TANKS, FindingId.FEED_AND_VENT_JOIN, FindingId.FEED_AND_VENT_LAYOUT,
            FindingId.SMALL_TANK_SERVES, FindingId.GAUGE_TELLS, FindingId.PUMP_AND_VESSEL_PLACE, FindingId.OLD_VENT_LEFT, FindingId.PRESSURE_COLD_BAR, FindingId.PRESSURE_HOT_BAR);

    private SystemConversion() {}

    /** @param side one of {@link #SIDES} */
    public static Job asIf(Job job, String side) {
        Job other = job;
        for (String finding : OF_ONE_SIDE) {
            other = other.without(finding);
        }
        boolean open = side.equals(TraitId.OPEN_VENTED);
        return other.with(FindingId.HEATING_FILLED_BY, new Answer.One(open ? "loft-tank" : "filling-loop"))
                .with(FindingId.LOFT_TANKS, new Answer.One(open ? "two" : "no-tanks"))
                .with(open ? FindingId.FEED_AND_VENT_JOIN : FindingId.PUMP_AND_VESSEL_PLACE, new Answer.One(open ? "within-150-mm" : "outside"));
    }
}
