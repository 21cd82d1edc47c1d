package neutralpoint.workplan.figures;

import java.util.List;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.pipework.PipeLoss;
import neutralpoint.hydronics.pipework.Tube;
import neutralpoint.hydronics.pipework.VelocityVerdict;
import neutralpoint.workings.EstimateFormat;

/** How often the flushing pump turns the water over, and how fast it runs in the largest pipe. */
final class Circulation {
    private static final double MINUTES_PER_HOUR = 60;
    /** What a flushing pump drives through a house of 22 mm pipe, far below its label. Common practice, no source. */
    private static final Estimate USUAL_LITRES_PER_MINUTE = new Estimate(20, 30, 45);

    private static final String VELOCITY_SOURCE = "velocity = flow / area; bores of copper EN 1057, of plastic from memory; "
            + "limits: copper trade association, publication 150";

    private Circulation() {}

    /** Velocity alone needs no content. */
    static FigureSet velocity(House house, JobScope scope) {
        if (!scope.does(WaterWork.PUMPED_ROUND)) {
            return FigureSet.NOTHING;
        }
        MeasuredOrUsual flow = flow(house);
        Tube pipe = house.largestPipe();
        Estimate velocity = new Estimate(velocity(flow.value().low(), pipe), velocity(flow.value().likely(), pipe),
                velocity(flow.value().high(), pipe));
        List<String> sums = List.of("flow " + flow.shown(),
                Decimals.sum("pipe %s mm outside, %s mm bore%s", pipe.outsideMillimetres(), pipe.boreMillimetres(),
                        house.pipeIsKnown() ? "" : ", taken as usual: common practice, no source"),
                Decimals.sum("%s litres a minute / 60 / %s litres in a metre of it = %s", flow.value().likely(), pipe.litresPerMetre(),
                        EstimateFormat.range(velocity, "m/s")), verdict(velocity));
        FigureSet part = FigureSet.of(new Figure("pipe-velocity-metres-per-second", "Speed of the water in the largest pipe", velocity, "m/s",
                sums, VELOCITY_SOURCE));
        FigureSet pipeToSee = house.pipeIsKnown() ? FigureSet.NOTHING
                : FigureSet.missing("Put a rule across the largest heating pipe: its size sets the speed of the water and the fittings to "
                        + "bring.");
        FigureSet flowToSee = flow.isRead() ? FigureSet.NOTHING
                : FigureSet.missing("Time a bucket at the flushing pump's hose, or read its meter, with the pump connected to this house.");
        return part.and(pipeToSee).and(flowToSee);
    }

    static FigureSet turnovers(House house, JobScope scope, Estimate systemLitres) {
        if (!scope.does(WaterWork.PUMPED_ROUND)) {
            return FigureSet.NOTHING;
        }
        MeasuredOrUsual flow = flow(house);
        Estimate content = systemLitres.times(scope.cleansedShare());
        Estimate turnovers = flow.value().times(MINUTES_PER_HOUR).over(content);
        return FigureSet.of(new Figure("turnovers-per-hour", "Times an hour that the water goes round", turnovers, "an hour", List.of(
                "flow " + flow.shown(),
                Decimals.sum("%s litres a minute x 60 / %s = %s", flow.value().likely(), EstimateFormat.range(content, "litres"),
                        EstimateFormat.range(turnovers, "an hour"))), "flow / content"));
    }

    private static MeasuredOrUsual flow(House house) {
        return MeasuredOrUsual.of(house.job(), FindingId.FLUSHING_PUMP_LITRES_PER_MINUTE, "litres a minute", USUAL_LITRES_PER_MINUTE);
    }

    private static double velocity(double litresPerMinute, Tube pipe) {
        return PipeLoss.velocityMetresPerSecond(litresPerMinute, pipe.boreMillimetres());
    }

    private static String verdict(Estimate velocity) {
        String likely = words(VelocityVerdict.of(velocity.likely()));
        String low = words(VelocityVerdict.of(velocity.low()));
        String high = words(VelocityVerdict.of(velocity.high()));
        return likely + (low.equals(likely) ? "" : "; at the least " + low) + (high.equals(likely) ? "" : "; at the most " + high);
    }

    private static String words(VelocityVerdict verdict) {
        return switch (verdict) {
            case SLUGGISH -> "too slow to carry sludge: clean leg by leg";
            case WITHIN_DESIGN -> "fast enough to keep sludge moving, not to lift all of it";
            case BRISK -> "fast enough to carry sludge";
            case NOISY -> "fast and heard, as a flush should be for a short time";
            case EROSIVE -> "faster than copper bears for long: throttle the pump";
        };
    }
}
