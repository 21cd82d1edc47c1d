package neutralpoint.workings;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.job.Answer;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import neutralpoint.job.Temperatures;

/** Jobs with nothing in them but what a sum reads. */
final class Given {
    private Given() {}

    /** Findings and their figures by turns: {@code figures("pump-head-m", 5, "vent-rise-mm", 450)}. */
    static Job figures(Object... findingsAndFigures) {
        return with(Job.begin("test"), findingsAndFigures);
    }

    static Job with(Job job, Object... findingsAndFigures) {
        Job more = job;
        for (int i = 0; i < findingsAndFigures.length; i += 2) {
            String finding = (String) findingsAndFigures[i];
            more = more.with(finding, new Answer.Reading(((Number) findingsAndFigures[i + 1]).doubleValue(),
                    Shared.CATALOGUE.finding(finding).unit()));
        }
        return more;
    }

    static Radiator radiator(String name, double top, double base, double flowTail, double returnTail) {
        return new Radiator(name, "ground").withTemperatures(Temperatures.of(top, base, flowTail, returnTail));
    }

    /** Tails boxed in. */
    static Radiator face(String name, double top, double base) {
        return new Radiator(name, "ground").withTemperatures(new Temperatures(OptionalDouble.of(top), OptionalDouble.of(base),
                OptionalDouble.empty(), OptionalDouble.empty()));
    }

    static Radiator atRun(Radiator r, double metres) {
        return new Radiator(r.name(), r.floor(), r.leg(), OptionalDouble.of(metres), r.body(), r.valves(), r.temperatures());
    }

    static Radiator sized(Radiator r, String type, int height, int length) {
        return new Radiator(r.name(), r.floor(), r.leg(), r.runMetres(), Optional.of(new RadiatorSize(type, height, length)), r.valves(),
                r.temperatures());
    }

    static Radiator withValves(Radiator r, String valves) {
        return new Radiator(r.name(), r.floor(), r.leg(), r.runMetres(), r.body(), valves, r.temperatures());
    }

    static Job house(Radiator... radiators) {
        return Job.begin("test").withRadiators(List.of(radiators));
    }

    /** So many radiators of one size, not read. */
    static Job panels(int count, String type, int height, int length) {
        return Job.begin("test").withRadiators(IntStream.range(0, count)
                .mapToObj(i -> sized(new Radiator("room " + i, "ground"), type, height, length)).toList());
    }

    /** Readings of the gauge a day apart, all with the water at one temperature. */
    static Job daily(Job job, double waterCelsius, double... bar) {
        List<GaugeReading> log = new ArrayList<>();
        for (int day = 0; day < bar.length; day++) {
            log.add(reading(24 * day, bar[day], waterCelsius));
        }
        return job.withGauge(log);
    }

    static GaugeReading reading(int hour, double bar, double waterCelsius) {
        return new GaugeReading(LocalDateTime.of(2026, 11, 2, 8, 0).plusHours(hour), bar, waterCelsius);
    }

    static List<Calculation> workings(Job job) {
        return Workings.of(job, SurveyedRadiator.of(job));
    }

    /** What is worked out for this finding. */
    static Optional<Calculation> of(Job job, String finding) {
        return workings(job).stream().filter(w -> w.finding().map(f -> f.id().equals(finding)).orElse(false)).findFirst();
    }

    /** The one option worked out for this finding; empty when nothing is. */
    static String choice(Job job, String finding) {
        return of(job, finding).map(w -> ((Answer.One) w.finding().orElseThrow().answer()).choice()).orElse("");
    }

    /** The outcome whose sentence begins so. */
    static Calculation saying(Job job, String beginning) {
        List<Calculation> all = workings(job);
        return all.stream().filter(w -> w.says().startsWith(beginning)).findFirst()
                .orElseThrow(() -> new AssertionError("nothing begins \"" + beginning + "\" in " + all));
    }
}
