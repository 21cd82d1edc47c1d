package neutralpoint.report;

import java.util.List;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/**
 * A check that figures can make, and the readings it needs.
 *
 * @param title what is checked
 * @param needs ids of the number findings
 */
record RequiredReadings(String title, List<String> needs) {
    private static final String VESSEL = "vessel";
    private static final List<RequiredReadings> OPEN = List.of(
            new RequiredReadings("what the pump does at the vent", List.of(FindingId.PUMP_HEAD_M, FindingId.TEE_RESISTANCE_PERCENT, FindingId.VENT_RISE_MM)),
            new RequiredReadings("height of the vent", List.of(FindingId.TANK_ABOVE_BOILER_M, FindingId.VENT_RISE_MM)),
            new RequiredReadings("height of the tank", List.of(FindingId.TANK_ABOVE_HIGHEST_PART_M)),
            new RequiredReadings("room in the tank", List.of(FindingId.FEED_TANK_ROOM_LITRES)),
            new RequiredReadings("margin to boiling", List.of(FindingId.TANK_ABOVE_BOILER_M, FindingId.BOILER_FLOW_CELSIUS)));
    private static final List<RequiredReadings> SEALED = List.of(
            new RequiredReadings("fill for the height", List.of(FindingId.PRESSURE_COLD_BAR, FindingId.HIGHEST_RADIATOR_ABOVE_GAUGE_M)),
            new RequiredReadings("margin to the safety valve", List.of(FindingId.PRESSURE_HOT_BAR)),
            new RequiredReadings(VESSEL, List.of(FindingId.PRESSURE_COLD_BAR, FindingId.PRESSURE_HOT_BAR, FindingId.VESSEL_SIZE_LITRES)));

    static List<RequiredReadings> of(String side) {
        return side.equals(TraitId.SEALED) ? SEALED : OPEN;
    }

    boolean isOfVessel() {
        return title.equals(VESSEL);
    }

    /** The readings that are not there yet. */
    List<String> missing(Job job) {
        return needs.stream().filter(n -> !(job.answer(n).orElse(null) instanceof Answer.Reading)).toList();
    }
}
