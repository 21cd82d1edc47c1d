package neutralpoint.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import neutralpoint.hydronics.RadiatorReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;

/**
 * A radiator whose top and base were read, with what the readings say.
 *
 * @param reach near, middle or far among the known pipe runs, otherwise unknown
 */
public record SurveyedRadiator(Radiator radiator, RadiatorReading reading, RadiatorReading.State state, String reach) {
    private static final double USUAL_ROOM_CELSIUS = 20;
    /** With fewer known runs than this there is no near and far. */
    private static final int FEWEST_RUNS = 3;

    /** The radiators of the job that were surveyed, in the order of the job. */
    public static List<SurveyedRadiator> of(Job job) {
        double room = Figures.of(job, "room-celsius").orElse(USUAL_ROOM_CELSIUS);
        List<Radiator> read = job.radiators().stream()
                .filter(r -> r.temperatures().topCelsius().isPresent() && r.temperatures().baseCelsius().isPresent()).toList();
        Map<String, String> reaches = reaches(read);
        List<SurveyedRadiator> surveyed = new ArrayList<>();
        for (Radiator r : read) {
            Temperatures t = r.temperatures();
            RadiatorReading reading = new RadiatorReading(t.topCelsius().getAsDouble(), t.baseCelsius().getAsDouble(),
                    t.flowTailCelsius(), t.returnTailCelsius(), room);
            surveyed.add(new SurveyedRadiator(r, reading, reading.state(), reaches.getOrDefault(r.name(), "unknown")));
        }
        return List.copyOf(surveyed);
    }

    /** The third of the known runs that is shortest is near, the third that is longest far. */
    private static Map<String, String> reaches(List<Radiator> radiators) {
        List<Radiator> known = radiators.stream().filter(r -> r.runMetres().isPresent())
                .sorted(Comparator.comparingDouble((Radiator r) -> r.runMetres().getAsDouble()).thenComparing(Radiator::name)).toList();
        Map<String, String> reaches = new HashMap<>();
        if (known.size() >= FEWEST_RUNS) {
            int third = Math.max(1, known.size() / 3);
            for (int i = 0; i < known.size(); i++) {
                reaches.put(known.get(i).name(), i < third ? "near" : i >= known.size() - third ? "far" : "middle");
            }
        }
        return reaches;
    }

    public String name() {
        return radiator.name();
    }

    public OptionalDouble dropKelvin() {
        return reading.tailDropKelvin();
    }

    /** True for plain pressings and columns, the radiators of before finned panels. */
    public boolean isOld() {
        return radiator.body().map(b -> b.type().startsWith("old-") || b.type().startsWith("column-")).orElse(false);
    }

    /** The state in a word or two, as a table shows it. */
    public String stateShown() {
        return switch (state) {
            case COLD -> "cold";
            case REVERSED -> "reversed";
            case GAS_AT_TOP -> "cold top";
            case STARVED -> "starved";
            case BASE_RESTRICTED -> "cold base";
            case LUKEWARM -> "lukewarm";
            case OVER_FED -> "over-fed";
            case HEALTHY -> "healthy";
        };
    }

    /** The state in the words rules read. */
    public String stateWord() {
        return state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
