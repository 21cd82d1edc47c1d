package neutralpoint.workings;

import static neutralpoint.workings.WorkedOut.Grade.NOTE;
import static neutralpoint.workings.WorkedOut.Grade.PASS;
import static neutralpoint.workings.WorkedOut.Grade.WARN;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.hydronics.GaugeReading;
import neutralpoint.hydronics.HeatCarried;
import neutralpoint.hydronics.LeakRate;
import neutralpoint.hydronics.Vessel;
import neutralpoint.hydronics.Water;
import neutralpoint.job.Job;

/** Flow through the boiler, the water the system holds, and the water it loses. */
final class FlowWorkings {
    /** A loss beyond this empties a house in days. Common practice, no source. */
    private static final double FAST_BAR_PER_DAY = 0.3;
    /** Beyond this drop a boiler is short of flow. Common practice, no source. */
    private static final double WIDEST_DROP_KELVIN = 25;
    private static final int FEWEST_GAUGE_READINGS = 3;

    private FlowWorkings() {}

    static List<WorkedOut> of(Job job) {
        List<WorkedOut> out = new ArrayList<>();
        flow(job).ifPresent(out::add);
        SystemLitres.of(job).ifPresent(c -> out.add(content(c)));
        leak(job).ifPresent(out::add);
        return out;
    }

    private static Optional<WorkedOut> flow(Job job) {
        if (!Figures.has(job, "boiler-output-kw", "boiler-flow-return-kelvin") || Figures.get(job, "boiler-flow-return-kelvin") < 1) {
            return Optional.empty();
        }
        double output = Figures.get(job, "boiler-output-kw");
        double drop = Figures.get(job, "boiler-flow-return-kelvin");
        double flow = HeatCarried.systemFlowLitresPerMinute(output, drop);
        return Optional.of(WorkedOut.figure(drop > WIDEST_DROP_KELVIN ? WARN : PASS, Figures.sum(
                "About %s litres a minute go through the boiler%s.", flow, drop > WIDEST_DROP_KELVIN ? ": starved flow" : ""),
                Figures.sum("%s kW at a drop of %s degrees; 20 degrees would be %s litres a minute", output, drop,
                        HeatCarried.systemFlowLitresPerMinute(output, 20))));
    }

    private static WorkedOut content(SystemLitres c) {
        boolean doubtful = c.check().map(check -> !check.agrees()).orElse(false);
        List<String> sums = new ArrayList<>(c.sums());
        c.check().ifPresent(check -> sums.add(check.inWords()));
        return new WorkedOut(Optional.empty(), doubtful ? WARN : NOTE, "The heating holds about " + SystemLitres.shown(c.litres()) + "."
                + (doubtful ? " The boiler's size suggests otherwise." : ""), sums);
    }

    private static Optional<WorkedOut> leak(Job job) {
        Optional<SystemLitres> content = SystemLitres.of(job);
        if (job.gauge().size() < FEWEST_GAUGE_READINGS || content.isEmpty() || !Figures.has(job, "vessel-size-litres")) {
            return Optional.empty();
        }
        var first = job.gauge().get(0).at();
        double lowest = job.gauge().stream().mapToDouble(neutralpoint.job.GaugeReading::bar).min().orElseThrow();
        double charge = Figures.of(job, "vessel-charge-bar").orElse(lowest / 2);
        List<GaugeReading> readings = job.gauge().stream().map(g -> new GaugeReading(
                Duration.between(first, g.at()).toMinutes() / 60.0, g.bar(), g.waterCelsius())).toList();
        try {
            LeakRate rate = LeakRate.of(new Vessel(Figures.get(job, "vessel-size-litres"), charge), content.get().litres().likely(),
                    readings, Water::expansionFraction);
            return Optional.of(leak(rate, charge, readings.size()));
        } catch (IllegalArgumentException e) {
            // The readings do not carry the sum: the sentence says why, and nothing is concluded.
            return Optional.of(WorkedOut.figure(NOTE, "The gauge over time tells nothing: " + e.getMessage()));
        }
    }

    private static WorkedOut leak(LeakRate rate, double chargeBar, int readings) {
        String choice = rate.isGaining() ? "gains" : !rate.isLosing() ? "holds"
                : rate.lossBarPerDay() >= FAST_BAR_PER_DAY ? "fast-loss" : "slow-loss";
        String says = switch (choice) {
            case "holds" -> "Brought to one temperature, the pressure holds.";
            case "gains" -> Figures.sum("Brought to one temperature, the pressure gains %s bar a day.", -rate.lossBarPerDay());
            default -> Figures.sum("Brought to one temperature, the pressure loses %s bar a day, about %s litres.", rate.lossBarPerDay(),
                    rate.lossLitresPerDay());
        };
        return WorkedOut.finding("leak-worked-out", choice, choice.equals("holds") ? PASS : WARN, says, Figures.sum(
                "%s readings carried to %s degrees through a vessel charged to %s bar; slope %s bar a day, give or take %s",
                readings, rate.referenceCelsius(), chargeBar, -rate.lossBarPerDay(), rate.marginBarPerDay().orElse(0)));
    }
}
