package neutralpoint.report.chart;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import neutralpoint.job.Radiator;

/** Radiators by floor, from the ground up; those whose floor is not known come last. */
final class Floors {
    private static final List<String> UPWARDS = List.of("ground", "first", "second", "unknown");

    private Floors() {}

    /** Only floors that have a radiator, each under its heading, in the order of the table. */
    static Map<String, List<Radiator>> of(List<Radiator> radiators) {
        Map<String, List<Radiator>> floors = new LinkedHashMap<>();
        for (String floor : UPWARDS) {
            List<Radiator> there = radiators.stream().filter(r -> r.floor().equals(floor)).toList();
            if (!there.isEmpty()) {
                floors.put(floor.equals("unknown") ? "floor not known" : floor + " floor", there);
            }
        }
        return floors;
    }
}
