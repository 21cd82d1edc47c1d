package neutralpoint.workplan;

import java.util.List;
import neutralpoint.hydronics.PipeLoss;
import neutralpoint.hydronics.Range;
import neutralpoint.hydronics.Tube;
import neutralpoint.hydronics.VelocityVerdict;
import neutralpoint.workings.Figures;

/** How often the flushing pump turns the water over, and how fast it runs in the largest pipe. */
final class Circulation {
    private static final double MINUTES_PER_HOUR = 60;
    /** What a flushing pump drives through a house of 22 mm pipe, far below its label. Common practice, no source. */
    private static final Range USUAL_LITRES_PER_MINUTE = new Range(20, 30, 45);

    private static final String VELOCITY_SOURCE = "velocity = flow / area; bores of copper EN 1057, of plastic from memory; "
            + "limits: copper trade association, publication 150";

    private Circulation() {}

    /** Velocity alone needs no content. */
    static Part velocity(House house, Scope scope) {
        if (!scope.way().does(Way.Does.PUMPED_ROUND)) {
            return Part.NOTHING;
        }
        Given flow = flow(house);
        Tube pipe = house.largestPipe();
        Range velocity = new Range(velocity(flow.value().low(), pipe), velocity(flow.value().likely(), pipe),
                velocity(flow.value().high(), pipe));
        List<String> sums = List.of("flow " + flow.shown(),
                Figures.sum("pipe %s mm outside, %s mm bore%s", pipe.outsideMillimetres(), pipe.boreMillimetres(),
                        house.pipeIsKnown() ? "" : ", taken as usual: common practice, no source"),
                Figures.sum("%s litres a minute / 60 / %s litres in a metre of it = %s", flow.value().likely(), pipe.litresPerMetre(),
                        Said.range(velocity, "m/s")), verdict(velocity));
        Part part = Part.of(new Figure("pipe-velocity-metres-per-second", "Speed of the water in the largest pipe", velocity, "m/s",
                sums, VELOCITY_SOURCE));
        Part pipeToSee = house.pipeIsKnown() ? Part.NOTHING
                : Part.missing("Put a rule across the largest heating pipe: its size sets the speed of the water and the fittings to "
                        + "bring.");
        Part flowToSee = flow.isRead() ? Part.NOTHING
                : Part.missing("Time a bucket at the flushing pump's hose, or read its meter, with the pump connected to this house.");
        return part.and(pipeToSee).and(flowToSee);
    }

    static Part turnovers(House house, Scope scope, Range systemLitres) {
        if (!scope.way().does(Way.Does.PUMPED_ROUND)) {
            return Part.NOTHING;
        }
        Given flow = flow(house);
        Range content = systemLitres.times(scope.cleansedShare());
        Range turnovers = flow.value().times(MINUTES_PER_HOUR).over(content);
        return Part.of(new Figure("turnovers-per-hour", "Times an hour that the water goes round", turnovers, "an hour", List.of(
                "flow " + flow.shown(),
                Figures.sum("%s litres a minute x 60 / %s = %s", flow.value().likely(), Said.range(content, "litres"),
                        Said.range(turnovers, "an hour"))), "flow / content"));
    }

    private static Given flow(House house) {
        return Given.of(house.job(), "flushing-pump-litres-per-minute", "litres a minute", USUAL_LITRES_PER_MINUTE);
    }

    private static double velocity(double litresPerMinute, Tube pipe) {
        return PipeLoss.velocityMetresPerSecond(litresPerMinute, pipe.boreMillimetres());
    }

    private static String verdict(Range velocity) {
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
