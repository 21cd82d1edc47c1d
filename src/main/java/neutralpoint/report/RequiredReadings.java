package neutralpoint.report;

import java.util.List;
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
            new RequiredReadings("what the pump does at the vent", List.of("pump-head-m", "tee-resistance-percent", "vent-rise-mm")),
            new RequiredReadings("height of the vent", List.of("tank-above-boiler-m", "vent-rise-mm")),
            new RequiredReadings("height of the tank", List.of("tank-above-highest-part-m")),
            new RequiredReadings("room in the tank", List.of("feed-tank-room-litres")),
            new RequiredReadings("margin to boiling", List.of("tank-above-boiler-m", "boiler-flow-celsius")));
    private static final List<RequiredReadings> SEALED = List.of(
            new RequiredReadings("fill for the height", List.of("pressure-cold-bar", "highest-radiator-above-gauge-m")),
            new RequiredReadings("margin to the safety valve", List.of("pressure-hot-bar")),
            new RequiredReadings(VESSEL, List.of("pressure-cold-bar", "pressure-hot-bar", "vessel-size-litres")));

    static List<RequiredReadings> of(String side) {
        return side.equals("sealed") ? SEALED : OPEN;
    }

    boolean isOfVessel() {
        return title.equals(VESSEL);
    }

    /** The readings that are not there yet. */
    List<String> missing(Job job) {
        return needs.stream().filter(n -> !(job.answer(n).orElse(null) instanceof Answer.Reading)).toList();
    }
}
