package neutralpoint.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Job;

/** Everything that can be worked out from a job's readings, in a fixed order. A pure function of the job. */
public final class Workings {
    /** Findings that only the sums read, those of the work plan among them. */
    public static final Set<String> TAKES = Set.of(FindingId.PUMP_HEAD_M, FindingId.TEE_RESISTANCE_PERCENT, FindingId.VENT_TEE_BELOW_WATER_M,
            FindingId.TANK_ABOVE_BOILER_M, FindingId.FEED_TANK_ROOM_LITRES, FindingId.VESSEL_SIZE_LITRES, FindingId.SYSTEM_CONTENT_LITRES, FindingId.BOILER_OUTPUT_KW,
            FindingId.ROOM_CELSIUS, FindingId.VENT_RISE_MM, FindingId.LARGEST_PIPE, FindingId.FLUSHING_PUMP_LITRES_PER_MINUTE, FindingId.FLUSHING_HEATER_KILOWATTS,
            FindingId.CLEANER_DOSE_PERCENT, FindingId.NEUTRALISER_DOSE_PERCENT, FindingId.INHIBITOR_DOSE_PERCENT, FindingId.CONTAINER_SIZE_LITRES, FindingId.SYSTEM_WATER_CONDUCTIVITY,
            FindingId.MAINS_WATER_CONDUCTIVITY, FindingId.MAINS_WATER_PH, FindingId.ALKALINITY_MG_PER_LITRE);

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

    /**
     * The checks of an open-vented or a sealed side that wait for readings.
     *
     * @param sealed true for the sealed side
     */
    public static List<Check> waiting(Job job, boolean sealed) {
        List<Check> checks = sealed ? VesselWorkings.checksOfWhatIsThere(job) : VentWorkings.checks(job);
        return checks.stream().filter(c -> !c.missing().isEmpty()).toList();
    }
}
