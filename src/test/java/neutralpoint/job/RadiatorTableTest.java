package neutralpoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Json;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The table of radiators of a job file: what a row may hold, what it may not, and that it comes back as it was written. */
class RadiatorTableTest {

    @Test
    void aRowIsWrittenAndReadBackTheSame() {
        Radiator full = new Radiator("lounge", "ground", "front", OptionalDouble.of(9.5), java.util.Optional.of(new RadiatorSize("type-22", 600, 1200)),
                "open", Temperatures.of(68, 41, 70, 58));
        Radiator bare = new Radiator("hall", "unknown");

        String written = Json.line(List.of(RadiatorTable.fields(full), RadiatorTable.fields(bare)));

        assertThat(read(written)).containsExactly(full, bare);
    }

    @Test
    void wordsMayBeWrittenWithCapitalsAndBlanks() {
        Radiator r = row("\"floor\":\"Ground\",\"type\":\"Type 22\",\"heightMillimetres\":600,\"lengthMillimetres\":800,\"valves\":\"Part shut\"");

        assertThat(r.floor()).isEqualTo("ground");
        assertThat(r.body()).contains(new RadiatorSize("type-22", 600, 800));
        assertThat(r.valves()).isEqualTo("part-shut");
    }

    @Test
    void aNameIsOneLineOfWords() {
        assertThat(read("[{\"name\":\"  bed\\n one \\u001b[31m\"}]").get(0).name()).isEqualTo("bed one [31m");
    }

    @Test
    void waterThatComesInByTheReturnMayMakeTheFaceHotterThanTheFlowTail() {
        assertThat(row("\"topCelsius\":66,\"baseCelsius\":60,\"flowTailCelsius\":55,\"returnTailCelsius\":68").temperatures())
                .isEqualTo(Temperatures.of(66, 60, 55, 68));
    }

    @Test
    void twoReadingsOfOneTemperatureMayDifferByThreeDegrees() {
        assertThat(row("\"topCelsius\":73,\"flowTailCelsius\":70").temperatures().topCelsius()).hasValue(73);
        assertThatThrownBy(() -> row("\"topCelsius\":73.1,\"flowTailCelsius\":70")).isInstanceOf(BadInput.class)
                .hasMessageContaining("the top at 73.1 cannot be hotter than its tails at 70 celsius");
    }

    @TestFactory
    Stream<DynamicTest> aRowThatCannotBeIsRefusedWithOneSentence() {
        record Bad(String what, String fields, String says) {}
        return Stream.of(
                new Bad("base hotter than flow tail", "\"baseCelsius\":75,\"flowTailCelsius\":70,\"returnTailCelsius\":58",
                        "lounge: the base at 75 cannot be hotter than its tails at 70 celsius; read both again."),
                new Bad("negative run", "\"runMetres\":-4", "\"run\" cannot be -4 m; a plausible figure lies between 0 and 200."),
                new Bad("unknown type", "\"type\":\"type-2\"", "\"type-2\" is not a known word for type; did you mean \"type-20\"?"),
                new Bad("unknown floor", "\"floor\":\"frist\"", "\"frist\" is not a known word for floor; did you mean \"first\"?"),
                new Bad("hotter than any heating", "\"topCelsius\":140", "\"top\" cannot be 140 celsius; a plausible figure lies between -5 and 110."),
                new Bad("wrong unit", "\"topCelsius\":\"68 bar\"", "\"top\" is read in celsius, not in bar, which measures a pressure; give it in °C, °F."),
                new Bad("type without its size", "\"type\":\"type-22\"",
                        "lounge: type, height and length are given together; height and length are missing."),
                new Bad("size without a length", "\"type\":\"type-22\",\"heightMillimetres\":600",
                        "lounge: type, height and length are given together; length is missing."),
                new Bad("unknown field", "\"colour\":\"white\"", "\"colour\" is not a field known here"))
                .map(bad -> DynamicTest.dynamicTest(bad.what(), () -> assertThatThrownBy(() -> row(bad.fields()))
                        .isInstanceOf(BadInput.class).hasMessageStartingWith("job.json, line 1: " + bad.says())));
    }

    @Test
    void aNameThatComesTwiceIsRefused() {
        assertThatThrownBy(() -> read("[{\"name\":\"lounge\"},\n{\"name\":\"lounge\"}]")).isInstanceOf(BadInput.class)
                .hasMessage("job.json, line 2: \"lounge\" is in the table twice; give each radiator a name of its own.");
    }

    @Test
    void aRowPutIntoATableTakesThePlaceOfTheRowOfItsName() {
        List<Radiator> table = List.of(new Radiator("lounge", "ground"), new Radiator("hall", "ground"));

        List<Radiator> together = RadiatorTable.together(table, List.of(new Radiator("bath", "first"),
                new Radiator("lounge", "ground").withTemperatures(Temperatures.of(68, 41, 70, 58))));

        assertThat(together).extracting(Radiator::name).containsExactly("lounge", "hall", "bath");
        assertThat(together.get(0).temperatures()).isEqualTo(Temperatures.of(68, 41, 70, 58));
    }

    @Test
    void whatARowDoesNotSayStaysAsTheTableHasIt() {
        Radiator sized = read("[{\"name\":\"lounge\",\"floor\":\"ground\",\"leg\":\"front\",\"runMetres\":9,\"type\":\"type-22\",\"heightMillimetres\":600,"
                + "\"lengthMillimetres\":1200,\"valves\":\"open\",\"topCelsius\":60,\"baseCelsius\":55}]").get(0);

        Radiator together = RadiatorTable.together(List.of(sized), List.of(new Radiator("lounge", "unknown")
                .withTemperatures(Temperatures.of(68, 41, 70, 58)))).get(0);

        assertThat(together).isEqualTo(sized.withTemperatures(Temperatures.of(68, 41, 70, 58)));
    }

    private static Radiator row(String fields) {
        return read("[{\"name\":\"lounge\"," + fields + "}]").get(0);
    }

    private static List<Radiator> read(String json) {
        return RadiatorTable.read(Documents.json("job.json", json, 1).asItems().items());
    }
}
