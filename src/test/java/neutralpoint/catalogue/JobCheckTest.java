package neutralpoint.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Map;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.document.BadInput;
import neutralpoint.job.Answer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A reading is taken in the unit the engineer's instrument has, or refused with one sentence. */
class JobCheckTest {

    private static Answer read(String finding, String reading) {
        return Shared.job("{\n\"findings\":{\n\"" + finding + "\": " + reading + "}}").answers().get(finding);
    }

    private static String quoted(String reading) {
        return '"' + reading + '"';
    }

    @TestFactory
    Stream<DynamicTest> readingsComeToTheUnitOfTheirQuestion() {
        record Given(String finding, String reading, double value, String unit) {}
        return Stream.of(
                new Given("pressure-cold-bar", "1.2", 1.2, "bar"),
                new Given("pressure-cold-bar", "\"1,25 Bar\"", 1.25, "bar"),
                new Given("pressure-cold-bar", "\"14.5 psi\"", 1.0, "bar"),
                new Given("pressure-cold-bar", "\"300 mbar\"", 0.3, "bar"),
                new Given("pressure-cold-bar", "{\"value\": 120, \"unit\": \"kPa\"}", 1.2, "bar"),
                new Given("pressure-cold-bar", "{\"value\": 1.2}", 1.2, "bar"),
                new Given("pressure-cold-bar", "\"10 m head\"", 0.981, "bar"),
                new Given("boiler-flow-celsius", "\"150 °F\"", 65.6, "celsius"),
                new Given("boiler-flow-celsius", "\"82.25 °C\"", 82.25, "celsius"),
                new Given("boiler-flow-celsius", "\"82 degrees\"", 82, "celsius"),
                new Given("top-over-base-degrees", "\"27 °F\"", 15, "degrees"),
                new Given("top-over-base-degrees", "\"15 °C\"", 15, "degrees"),
                new Given("tail-drop-degrees", "\"-9 F\"", -5, "degrees"),
                new Given("boiler-flow-return-kelvin", "\"20 °F\"", 11.1, "kelvin"),
                new Given("highest-radiator-above-gauge-m", "\"9 ft\"", 2.74, "m"),
                new Given("vent-rise-mm", "\"18 in\"", 457, "mm"),
                new Given("vent-rise-mm", "\"1.2344 m\"", 1234, "mm"),
                new Given("cold-supply-litres-per-minute", "\"3 gal/min\"", 13.6, "litres-per-minute"),
                new Given("cold-supply-litres-per-minute", "\"2 litres in 9 s\"", 13.3, "litres-per-minute"),
                new Given("cold-supply-litres-per-minute", "\"2,5 l in 10 seconds\"", 15, "litres-per-minute"),
                new Given("cold-supply-litres-per-minute", "\"1 gallon in 18 secs\"", 15.2, "litres-per-minute"),
                new Given("cold-supply-litres-per-minute", "\"10 litres in 1 min\"", 10, "litres-per-minute"),
                new Given("cold-supply-litres-per-minute", "\"30 L in 2.5 Minutes\"", 12, "litres-per-minute"),
                new Given("hardness-mg-per-litre", "\"282 ppm\"", 282, "mg per litre"),
                new Given("tds-of-mains-percent", "\"1040 %\"", 1040, "percent"),
                new Given("system-age-years", "\"12 years\"", 12, "years"))
                .map(g -> DynamicTest.dynamicTest(g.finding() + " " + g.reading(), () ->
                        assertThat(read(g.finding(), g.reading())).isEqualTo(new Answer.Reading(g.value(), g.unit()))));
    }

    @TestFactory
    Stream<DynamicTest> whatCannotBeReadIsRefusedInOneSentence() {
        record Bad(String finding, String reading, String says) {}
        String pressures = "give it in bar, mbar, psi, kPa, Pa, m head, ft head.";
        return Stream.of(
                new Bad("cold-supply-litres-per-minute", "2 buckets in 9 s", "timed with a jug takes a measure of water such as \"2 litres "
                        + "in 9 s\", and buckets is none; give it in l, m3, gal."),
                new Bad("cold-supply-litres-per-minute", "2 litres in 0 s", "was timed over no time at all; give the seconds the jug took to fill."),
                new Bad("cold-supply-litres-per-minute", "20 litres in 9 s",
                        "cannot be 2.222 l/s, which is 133 litres-per-minute; a plausible reading lies between 0 and 60 litres-per-minute."),
                new Bad("pressure-cold-bar", "2 litres in 9 s", "is read in bar, not in l/s, which measures a flow; " + pressures),
                new Bad("pressure-cold-bar", "12 furlongs",
                        "is read in bar, and \"furlongs\" is not a unit known here; " + pressures),
                new Bad("pressure-cold-bar", "12 psu",
                        "is read in bar, and \"psu\" is not a unit known here; did you mean \"psi\"? Otherwise " + pressures),
                new Bad("pressure-cold-bar", "3 m", "is read in bar, not in m, which measures a length; " + pressures),
                new Bad("boiler-flow-celsius", "60 K",
                        "is read in celsius, not in K, which measures a difference of temperature; give it in °C, °F."),
                new Bad("system-water-ph", "8 bar",
                        "is read in pH, not in bar, which measures a pressure; give it in pH."),
                new Bad("system-age-years", "8 months",
                        "is read in years, and \"months\" is not a unit known here; give it in years."),
                new Bad("pressure-cold-bar", "100 psi",
                        "cannot be 100 psi, which is 6.89 bar; a plausible reading lies between 0 and 6 bar."),
                new Bad("pressure-cold-bar", "7", "cannot be 7 bar; a plausible reading lies between 0 and 6 bar."))
                .map(b -> DynamicTest.dynamicTest(b.finding() + " " + b.reading(), () ->
                        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> read(b.finding(), quoted(b.reading())))
                                .withMessage("test, line 3: \"" + b.finding() + "\" " + b.says())));
    }

    @Test
    void aFigureTooLongToBeOneIsOutOfRange() {
        assertThatExceptionOfType(BadInput.class)
                .isThrownBy(() -> read("pressure-cold-bar", "\"" + "9".repeat(400) + " psi\""))
                .withMessageContaining("a plausible reading lies between 0 and 6 bar");
    }

    @Test
    void twoReadingsThatCannotBothBeRightAreRefused() {
        String says = "test, line 2: \"pressure-hot-bar\" at 0.8 bar cannot lie below \"pressure-cold-bar\" at 1.2 bar; read both again.";
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Shared.job(
                "{\n\"findings\": {\"pressure-cold-bar\": 1.2, \"pressure-hot-bar\": 0.8}}")).withMessage(says);
        assertThatExceptionOfType(BadInput.class).as("whichever was read first").isThrownBy(() -> Shared.job(
                "{\n\"findings\": {\"pressure-hot-bar\": 0.8, \"pressure-cold-bar\": 1.2}}")).withMessage(says);
        assertThat(Shared.job("{\"findings\": {\"pressure-cold-bar\": 1.2, \"pressure-hot-bar\": 1.2}}").answers()).hasSize(2);
        assertThat(Shared.job("{\"findings\": {\"pressure-cold-bar\": \"not-checked\", \"pressure-hot-bar\": 0.8}}").answers()).hasSize(2);
    }

    @TestFactory
    Stream<DynamicTest> aLogOfEmergenciesThatCannotBeReadIsRefusedInOneSentence() {
        String at = "\"at\": \"2026-11-02T08:00\", ";
        return Map.of("{" + at + "\"what\": \"steem\"}", "\"steem\" is not a known emergency; did you mean \"steam\"?",
                "{" + at + "\"over\": \"steam\"}", "\"steam\" is said to be over, but no line before says that it happened.",
                "{\"at\": \"2026-11-02T08:00\"}", "a line of \"emergencies\" says either \"what\" has happened or what is \"over\".",
                "{\"at\": \"yesterday\", \"what\": \"steam\"}", "\"yesterday\" is not a date and time such as 2026-11-02T08:00.")
                .entrySet().stream().map(e -> DynamicTest.dynamicTest(e.getKey(), () -> assertThatExceptionOfType(BadInput.class)
                        .isThrownBy(() -> Shared.job("{\"findings\": {}, \"emergencies\": [" + e.getKey() + "]}"))
                        .withMessageContaining(e.getValue())));
    }
}
