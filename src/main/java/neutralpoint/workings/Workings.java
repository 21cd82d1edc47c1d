package neutralpoint.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import neutralpoint.job.Job;

/** Everything that can be worked out from a job's readings, in a fixed order. A pure function of the job. */
public final class Workings {
    /** Findings that only the sums read, those of the work plan among them. */
    public static final Set<String> TAKES = Set.of("pump-head-m", "tee-resistance-percent", "vent-tee-below-water-m",
            "tank-above-boiler-m", "feed-tank-room-litres", "vessel-size-litres", "system-content-litres", "boiler-output-kw",
            "room-celsius", "vent-rise-mm", "largest-pipe", "flushing-pump-litres-per-minute", "flushing-heater-kilowatts",
            "cleaner-dose-percent", "neutraliser-dose-percent", "inhibitor-dose-percent", "container-size-litres", "system-water-conductivity",
            "mains-water-conductivity", "mains-water-ph", "alkalinity-mg-per-litre");

    private Workings() {}

    /**
     * @param survey the job's surveyed radiators, as {@link SurveyedRadiator#of} gives them
     */
    public static List<Calculation> of(Job job, List<SurveyedRadiator> survey) {
        List<Calculation> out = new ArrayList<>(ExtremeReadings.of(job));
        out.addAll(SurveyWorkings.of(survey));
        BalanceWorkings.of(job, survey).ifPresent(out::add);
        TankWorkings.of(job).ifPresent(out::add);
        GaugeWorkings.of(job).ifPresent(out::add);
        out.addAll(VentWorkings.of(job));
        out.addAll(VesselWorkings.of(job));
        out.addAll(FlowWorkings.of(job));
        out.addAll(WaterSampleWorkings.of(job));
        return List.copyOf(out);
    }
}
