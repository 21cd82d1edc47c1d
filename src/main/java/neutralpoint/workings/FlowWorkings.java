package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.expansion.LeakRate;
import neutralpoint.hydronics.expansion.TimedPressure;
import neutralpoint.hydronics.expansion.Vessel;
import neutralpoint.hydronics.water.HeatCarried;
import neutralpoint.hydronics.water.Water;
import neutralpoint.job.Job;

/** Flow through the boiler, the water the system holds, and the water it loses. */
final class FlowWorkings {
    /** A loss beyond this empties a house in days. Common practice, no source. */
    private static final double FAST_BAR_PER_DAY = 0.3;
    /** Beyond this drop a boiler is short of flow. Common practice, no source. */
    private static final double WIDEST_DROP_KELVIN = 25;
    /** Below this drop the water is hardly cooled: more goes round than the heat in it needs. Common practice, no source. */
    private static final double NARROWEST_DROP_KELVIN = 5;
    private static final int FEWEST_GAUGE_READINGS = 3;
    private static final double MINUTES_PER_DAY = 1440;
    /** A gauge is read no closer than this at either end. */
    private static final double GAUGE_BAR = 0.05;
    /** A fall beyond this is no misreading, however the readings scatter. */
    private static final double SURE_FALL_BAR = 0.3;
    /** Pressure holds if no more than this can have been lost unseen. Common practice, no source. */
    private static final double HOLDS_BAR_PER_DAY = 0.1;
    private static final String TELLS_NOTHING = "The gauge over time tells nothing yet: ";

    private FlowWorkings() {}

    static List<Calculation> of(Job job) {
        List<Calculation> out = new ArrayList<>();
        flow(job).ifPresent(out::add);
        SystemLitres.of(job).ifPresent(c -> {
            out.add(content(c));
            leak(job, c).ifPresent(out::add);
        });
        return out;
    }

    private static Optional<Calculation> flow(Job job) {
        if (!Readings.has(job, FindingId.BOILER_OUTPUT_KW, FindingId.BOILER_FLOW_RETURN_KELVIN) || Readings.get(job, FindingId.BOILER_FLOW_RETURN_KELVIN) < 1) {
            return Optional.empty();
        }
        double output = Readings.get(job, FindingId.BOILER_OUTPUT_KW);
        double drop = Readings.get(job, FindingId.BOILER_FLOW_RETURN_KELVIN);
        double flow = HeatCarried.systemFlowLitresPerMinute(output, drop);
        String judged = drop > WIDEST_DROP_KELVIN ? ": starved flow" : drop < NARROWEST_DROP_KELVIN ? ": more than the load needs" : "";
        return Optional.of(Calculation.figure(judged.isEmpty() ? PASS : WARN,
                Decimals.sum("About %s litres a minute go through the boiler%s.", flow, judged),
                Decimals.sum("%s kW at a drop of %s degrees; 20 degrees would be %s litres a minute", output, drop,
                        HeatCarried.systemFlowLitresPerMinute(output, 20))));
    }

    private static Calculation content(SystemLitres c) {
        boolean doubtful = c.check().map(check -> !check.agrees()).orElse(false);
        List<String> sums = new ArrayList<>(c.sums());
        c.check().ifPresent(check -> sums.add(check.inWords()));
        return new Calculation(Optional.empty(), doubtful ? WARN : NOTE, "The heating holds about " + SystemLitres.shown(c.litres()) + "."
                + (doubtful ? " The boiler's size suggests otherwise." : ""), sums);
    }

    private static Optional<Calculation> leak(Job job, SystemLitres content) {
        if (job.gauge().size() < FEWEST_GAUGE_READINGS || !Readings.has(job, FindingId.VESSEL_SIZE_LITRES)) {
            return Optional.empty();
        }
        LocalDateTime first = job.gauge().get(0).at();
        double days = Duration.between(first, job.gauge().get(job.gauge().size() - 1).at()).toMinutes() / MINUTES_PER_DAY;
        double lowest = job.gauge().stream().mapToDouble(neutralpoint.job.GaugeReading::bar).min().orElseThrow();
        OptionalDouble measured = Readings.of(job, FindingId.VESSEL_CHARGE_BAR);
        double charge = measured.orElse(lowest / 2);
        if (lowest < charge) {
            return Optional.of(Calculation.figure(NOTE, TELLS_NOTHING + Decimals.sum(
                    "%s bar is below the vessel's charge of %s bar.", lowest, charge)));
        }
        try {
            List<TimedPressure> readings = job.gauge().stream().map(g -> new TimedPressure(
                    Duration.between(first, g.at()).toMinutes() / 60.0, g.bar(), g.waterCelsius())).toList();
            LeakRate rate = LeakRate.of(new Vessel(Readings.get(job, FindingId.VESSEL_SIZE_LITRES), charge), content.litres().likely(),
                    readings, Water::expansionFraction);
            return Optional.of(leak(rate, days, Decimals.sum("%s readings carried to %s degrees through a vessel charged to %s bar (%s);"
                    + " slope %s bar a day, give or take %s", readings.size(), rate.referenceCelsius(), charge,
                    measured.isPresent() ? "measured" : "taken as half the lowest reading", -rate.lossBarPerDay(),
                    rate.marginBarPerDay().orElse(0))));
        } catch (IllegalArgumentException e) {
            // The readings do not carry the sum: why is said beneath, and nothing is concluded.
            return Optional.of(Calculation.figure(NOTE, TELLS_NOTHING + "these readings do not carry the sum.", Objects.requireNonNullElse(e.getMessage(), "")));
        }
    }

    private static Calculation leak(LeakRate rate, double days, String sum) {
        double loss = rate.lossBarPerDay();
        double margin = rate.marginBarPerDay().orElse(Double.MAX_VALUE);
        if (loss * days >= SURE_FALL_BAR || rate.isLosing() && loss * days >= 2 * GAUGE_BAR) {
            return Calculation.finding(FindingId.LEAK_WORKED_OUT, loss >= FAST_BAR_PER_DAY ? "fast-loss" : "slow-loss", WARN, Decimals.sum(
                    "Brought to one temperature, the pressure loses %s bar a day, about %s litres.", loss, rate.lossLitresPerDay()), sum);
        }
        if (rate.isGaining() && -loss * days >= 2 * GAUGE_BAR) {
            return Calculation.finding(FindingId.LEAK_WORKED_OUT, "gains", WARN, Decimals.sum(
                    "Brought to one temperature, the pressure gains %s bar a day.", -loss), sum);
        }
        // Scatter, or too short a time, hides a loss: only what could not have gone unseen is said to hold.
        return Math.abs(loss) + Math.max(margin, GAUGE_BAR / days) <= HOLDS_BAR_PER_DAY
                ? Calculation.finding(FindingId.LEAK_WORKED_OUT, "holds", PASS, "Brought to one temperature, the pressure holds.", sum)
                : Calculation.figure(NOTE, TELLS_NOTHING + "read it again over more days.", sum);
    }
}
