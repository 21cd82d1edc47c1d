package neutralpoint;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.job.Answer;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;

/**
 * A call-out with nothing in it but what a test names:
 * {@code aJob().with("bleed-water", "black").reading("pump-head-m", 5).radiator("lounge", 68, 41, 70, 58).job()}.
 * Figures are in the unit of their finding, and are not checked: a test may give what a job file may not.
 */
public final class JobBuilder {
    private static final LocalDateTime FIRST_MORNING = LocalDateTime.of(2026, 11, 2, 8, 0);

    private Job job;

    private JobBuilder(Job job) {
        this.job = job;
    }

    public static JobBuilder aJob() {
        return more(Job.begin("test"));
    }

    /** Goes on from a call-out. */
    public static JobBuilder more(Job job) {
        return new JobBuilder(job);
    }

    public Job job() {
        return job;
    }

    /** The answer to a finding with options: one, or as many as may be chosen. */
    public JobBuilder with(String finding, String... options) {
        Finding asked = Shared.CATALOGUE.finding(finding);
        if (!asked.optionIds().containsAll(List.of(options))) {
            throw new IllegalArgumentException(finding + " has no option in " + List.of(options));
        }
        job = job.with(finding, asked.type() == AnswerType.SEVERAL_OF ? new Answer.Several(List.of(options)) : new Answer.One(options[0]));
        return this;
    }

    public JobBuilder reading(String finding, double value) {
        job = job.with(finding, new Answer.Reading(value, Shared.CATALOGUE.finding(finding).unit()));
        return this;
    }

    /** Findings and their figures by turns: {@code readings("pump-head-m", 5, "vent-rise-mm", 450)}. */
    public JobBuilder readings(Object... findingsAndFigures) {
        for (int i = 0; i < findingsAndFigures.length; i += 2) {
            reading((String) findingsAndFigures[i], ((Number) findingsAndFigures[i + 1]).doubleValue());
        }
        return this;
    }

    /** One radiator more, on the ground floor, read in all four places. */
    public JobBuilder radiator(String name, double top, double base, double flowTail, double returnTail) {
        return radiators(Radiators.read(name, top, base, flowTail, returnTail));
    }

    /** So many radiators more. */
    public JobBuilder radiators(Radiator... radiators) {
        List<Radiator> all = new ArrayList<>(job.radiators());
        all.addAll(List.of(radiators));
        job = job.withRadiators(all);
        return this;
    }

    /** So many radiators more of one size, in mm, not read. */
    public JobBuilder panels(int count, String type, int height, int length) {
        return radiators(IntStream.rangeClosed(1, count).mapToObj(i -> Radiators.sized("room " + i, type, height, length)).toArray(Radiator[]::new));
    }

    /** Readings of the gauge a day apart, all with the water at one temperature. */
    public JobBuilder daily(double waterCelsius, double... bar) {
        job = job.withGauge(IntStream.range(0, bar.length).mapToObj(day -> gauge(24 * day, bar[day], waterCelsius)).toList());
        return this;
    }

    /** A reading of the gauge so many hours after the first morning. */
    public static GaugeReading gauge(int hour, double bar, double waterCelsius) {
        return new GaugeReading(FIRST_MORNING.plusHours(hour), bar, waterCelsius);
    }
}
