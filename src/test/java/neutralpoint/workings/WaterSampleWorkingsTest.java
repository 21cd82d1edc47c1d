package neutralpoint.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** A jar of the system's water and a glass of the main's, by the figures. */
class WaterSampleWorkingsTest {

    /** 2440 over 610 is four times the mains: 400 per cent, and after a rinse that is no rinse (limit 20 % over, TDS practice of 2006). */
    @Test
    void theSystemIsHeldAgainstTheMains() {
        Job job = job(Map.of("system-water-conductivity", 2440.0, "mains-water-conductivity", 610.0));
        Calculation over = finding(job, "tds-of-mains-percent").orElseThrow();
        assertThat(((Answer.Reading) over.finding().orElseThrow().answer()).value()).isCloseTo(400, within(1e-9));
        assertThat(over.says()).contains("400 %").contains("would not do");
        assertThat(over.sums()).anyMatch(s -> s.contains("1220 to 1708 mg/l"));
    }

    /** VDI 2035 as its summaries have it: pH 8.2 to 10, with aluminium 8.2 to 8.5. */
    @Test
    void aluminiumNarrowsTheWindow() {
        Job nine = job(Map.of("system-water-ph", 9.0));
        assertThat(answer(nine.with("aluminium-in-boiler", new Answer.One("yes")), "water-ph-worked-out")).hasValue("too-alkaline");
        assertThat(answer(nine.with("aluminium-in-boiler", new Answer.One("no")), "water-ph-worked-out")).hasValue("within");
        assertThat(answer(nine.with("exchanger-kind", new Answer.One("aluminium")), "water-ph-worked-out")).hasValue("too-alkaline");
        assertThat(answer(nine, "water-ph-worked-out")).as("nobody has looked at the metal").isEmpty();
        assertThat(answer(job(Map.of("system-water-ph", 7.0)), "water-ph-worked-out")).as("too acid for any metal").hasValue("too-acid");
    }

    @Test
    void anInhibitorAtStrengthIsNeitherPassedNorFailed() {
        Job job = job(Map.of("system-water-ph", 7.0, "system-water-conductivity", 2500.0, "mains-water-conductivity", 400.0, "mains-water-ph", 7.5,
                "hardness-mg-per-litre", 250.0, "alkalinity-mg-per-litre", 200.0)).with("inhibitor-test", new Answer.One("at-strength"));
        assertThat(WaterSampleWorkings.of(job)).hasSizeGreaterThan(3).allMatch(c -> c.grade() == Calculation.Grade.NOTE);
    }

    /** VDI 2035 of 2021, from memory: to 50 kW and 20 l/kW, a heater of low content, 3 mmol/l, which is 300 mg/l as calcium carbonate. */
    @Test
    void theFillIsHeldAgainstTheBoilerAndTheWater() {
        Map<String, Double> readings = Map.of("boiler-output-kw", 24.0, "system-content-litres", 120.0);
        Job house = job(readings).with("heat-source", new Answer.Several(List.of("gas-boiler")));
        assertThat(answer(with(house, "hardness-mg-per-litre", 310), "fill-hardness-worked-out")).hasValue("over-limit");
        assertThat(answer(with(house, "hardness-mg-per-litre", 290), "fill-hardness-worked-out")).hasValue("within-limit");
    }

    /** Textbook water (pH 7.5, 320 mg/l solids, calcium 150, alkalinity 34 mg/l) near 82 degrees: index about 0.3, so near balance. */
    @Test
    void theIndexOfScaleExplainsAndAnswersNothing() {
        Job job = job(Map.of("mains-water-ph", 7.5, "mains-water-conductivity", 640.0, "hardness-mg-per-litre", 150.0, "alkalinity-mg-per-litre", 34.0,
                "boiler-flow-celsius", 82.0));
        assertThat(WaterSampleWorkings.of(job)).singleElement().satisfies(c -> {
            assertThat(c.finding()).isEmpty();
            assertThat(c.grade()).isEqualTo(Calculation.Grade.NOTE);
            assertThat(c.says()).contains("near balance").contains("judges no water with inhibitor");
        });
    }

    private static Job job(Map<String, Double> readings) {
        Job job = Job.begin("sample");
        for (Map.Entry<String, Double> r : readings.entrySet()) {
            job = with(job, r.getKey(), r.getValue());
        }
        return job;
    }

    private static Job with(Job job, String finding, double value) {
        return job.with(finding, new Answer.Reading(value, ""));
    }

    private static Optional<Calculation> finding(Job job, String id) {
        return WaterSampleWorkings.of(job).stream().filter(c -> c.finding().map(f -> f.id().equals(id)).orElse(false)).findFirst();
    }

    private static Optional<String> answer(Job job, String id) {
        return finding(job, id).map(c -> ((Answer.One) c.finding().orElseThrow().answer()).choice());
    }
}
