package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.job.Answer;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;

/** The hottest temperature and the highest pressure among all readings, where they are high enough to matter. */
final class ExtremeReadings {
    /** Hotter than any radiator system is run. Common practice, no source. */
    static final double TOO_HOT_CELSIUS = 90;
    /** From here on a boiler is no longer under control. Common practice, no source. */
    private static final double OUT_OF_CONTROL_CELSIUS = 95;
    private static final double OVER_THE_VALVE_BAR = 3.5;

    /** A temperature and where it was read. */
    private record Read(String where, double celsius) {}

    private ExtremeReadings() {}

    static List<Calculation> of(Job job) {
        List<Calculation> out = new ArrayList<>();
        hottest(job).filter(r -> r.celsius() >= TOO_HOT_CELSIUS).ifPresent(r -> out.add(Calculation.finding(FindingId.HOTTEST_READING_CELSIUS,
                new Answer.Reading(r.celsius(), "°C"), r.celsius() >= OUT_OF_CONTROL_CELSIUS ? FAIL : WARN,
                Decimals.sum("The hottest reading is %s °C, at %s.", r.celsius(), r.where()), Decimals.sum(
                "%s is the highest of all temperatures read; a boiler is meant to stop well under %s", r.celsius(), OUT_OF_CONTROL_CELSIUS))));
        job.gauge().stream().max(Comparator.comparingDouble(GaugeReading::bar)).filter(g -> g.bar() >= HotGauge.SAFETY_VALVE_BAR)
                .ifPresent(g -> out.add(Calculation.finding(FindingId.HIGHEST_LOGGED_BAR, new Answer.Reading(g.bar(), "bar"),
                        g.bar() >= OVER_THE_VALVE_BAR ? FAIL : WARN, Decimals.sum("The highest logged pressure is %s bar; the safety valve is set to %s.",
                                g.bar(), HotGauge.SAFETY_VALVE_BAR),
                        Decimals.sum("%s - %s = %s bar over it", g.bar(), HotGauge.SAFETY_VALVE_BAR, g.bar() - HotGauge.SAFETY_VALVE_BAR))));
        return out;
    }

    private static Optional<Read> hottest(Job job) {
        Stream<Read> radiators = job.radiators().stream().flatMap(r -> hottest(r).stream());
        Stream<Read> logged = job.gauge().stream().map(g -> new Read("the gauge log", g.waterCelsius()));
        return Stream.concat(radiators, logged).max(Comparator.comparingDouble(Read::celsius));
    }

    private static Optional<Read> hottest(Radiator r) {
        Temperatures t = r.temperatures();
        DoubleStream read = Stream.of(t.topCelsius(), t.baseCelsius(), t.flowTailCelsius(), t.returnTailCelsius())
                .filter(c -> c.isPresent()).mapToDouble(c -> c.getAsDouble());
        return read.boxed().max(Comparator.naturalOrder()).map(c -> new Read(SurveyWorkings.shortened(r.name()), c));
    }
}
