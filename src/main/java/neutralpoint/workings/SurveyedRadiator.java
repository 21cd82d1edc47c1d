package neutralpoint.workings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.hydronics.emitter.RadiatorReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;

/**
 * A radiator whose top and base were read, with what the readings say.
 *
 * @param reach near, middle or far among the known pipe runs, otherwise unknown
 */
public record SurveyedRadiator(Radiator radiator, RadiatorReading reading, RadiatorReading.RadiatorState state, String reach) {
    /** With fewer known runs than this there is no near and far. */
    private static final int FEWEST_RUNS = 3;

    /**
     * The radiators of the job that were surveyed, in the order of the job. One that is cold because its valves are shut
     * says nothing of the system and is passed over.
     */
    public static List<SurveyedRadiator> of(Job job) {
        double room = Readings.of(job, FindingId.ROOM_CELSIUS).orElse(UsualTemperatures.ROOM_CELSIUS);
        List<Radiator> read = job.radiators().stream()
                .filter(r -> r.temperatures().topCelsius().isPresent() && r.temperatures().baseCelsius().isPresent()).toList();
        Map<String, String> reaches = reaches(read);
        List<SurveyedRadiator> surveyed = new ArrayList<>();
        for (Radiator r : read) {
            Temperatures t = r.temperatures();
            RadiatorReading reading = new RadiatorReading(t.topCelsius().getAsDouble(), t.baseCelsius().getAsDouble(),
                    t.flowTailCelsius(), t.returnTailCelsius(), room);
            if (!r.valves().equals("shut") || reading.state() != RadiatorReading.RadiatorState.COLD) {
                surveyed.add(new SurveyedRadiator(r, reading, reading.state(), reaches.getOrDefault(r.name(), "unknown")));
            }
        }
        return List.copyOf(surveyed);
    }

    /** Runs as short as the shortest third are near, as long as the longest third far; equal runs reach equally far. */
    private static Map<String, String> reaches(List<Radiator> radiators) {
        double[] runs = radiators.stream().flatMapToDouble(r -> r.runMetres().stream()).sorted().toArray();
        Map<String, String> reaches = new HashMap<>();
        if (runs.length >= FEWEST_RUNS) {
            double near = runs[runs.length / 3 - 1];
            double far = runs[runs.length - runs.length / 3];
            radiators.forEach(r -> r.runMetres().ifPresent(run -> reaches.put(r.name(),
                    run <= near && run < far ? "near" : run >= far && run > near ? "far" : "middle")));
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

    /** True when it was read hotter than any radiator system is run, whatever its pattern. */
    boolean isTooHot() {
        return Math.max(Math.max(reading.topCelsius(), reading.baseCelsius()), Math.max(reading.flowTailCelsius().orElse(0),
                reading.returnTailCelsius().orElse(0))) >= ExtremeReadings.TOO_HOT_CELSIUS;
    }

    /** The state in a word or two, as a table shows it. */
    public String stateShown() {
        return isTooHot() ? "too hot" : switch (state) {
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
        return state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
