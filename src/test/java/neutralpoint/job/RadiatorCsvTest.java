package neutralpoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A survey as spreadsheets save it, and what is said of one that cannot be used. */
class RadiatorCsvTest {
    private static final String HEADINGS = "name,floor,top,base,flow tail,return tail\n";

    @Test
    void aPlainSurveyIsReadRowByRow() {
        List<Radiator> survey = read(HEADINGS + "lounge,ground,68,41,70,58\nbath,first,60,52,66,55\n");

        assertThat(survey).containsExactly(
                new Radiator("lounge", "ground").withTemperatures(Temperatures.of(68, 41, 70, 58)),
                new Radiator("bath", "first").withTemperatures(Temperatures.of(60, 52, 66, 55)));
    }

    @TestFactory
    Stream<DynamicTest> aHeadingMayGiveTheUnit() {
        // 154 °F are (154 - 32) x 5/9 = 67.78 °C, kept to three figures.
        return Stream.of("top °F", "Top (°F)", "TOP [F]", "top_fahrenheit", "top, degF").map(heading -> DynamicTest.dynamicTest(heading,
                () -> assertThat(read("name;" + heading + ";base;flow tail;return tail\nlounge;154;41;70;58\n").get(0).temperatures())
                        .isEqualTo(Temperatures.of(67.8, 41, 70, 58))));
    }

    @Test
    void aFigureMayGiveAUnitOfItsOwnWhateverTheHeadingSays() {
        Temperatures t = read("name,top °F,base,flow tail,return tail\nlounge,68 °C,105.8 °F,70,58\n").get(0).temperatures();

        assertThat(t).isEqualTo(Temperatures.of(68, 41, 70, 58));
    }

    @Test
    void lengthsAreBroughtToMetresAndMillimetres() {
        Radiator r = read("name,top,base,flow tail,return tail,run ft,type,height in,length cm\nlounge,68,41,70,58,30,Type 22,24,120\n").get(0);

        assertThat(r.runMetres().orElseThrow()).as("30 x 0.3048").isCloseTo(9.14, within(0.001));
        assertThat(r.body()).as("24 x 25.4 = 609.6").contains(new RadiatorSize("type-22", 610, 1200));
    }

    @Test
    void semicolonsWithCommaDecimalsAreReadAsASpreadsheetOfThatCountrySavesThem() {
        assertThat(read("name;top;base;flow tail;return tail\nlounge;68,5;41,2;70;58\n").get(0).temperatures())
                .isEqualTo(Temperatures.of(68.5, 41.2, 70, 58));
    }

    @Test
    void tabsAreReadAsASpreadsheetCopiesThem() {
        assertThat(read("name\ttop\tbase\tflow tail\treturn tail\nliving room, front\t68\t41\t70\t58\n").get(0).name())
                .isEqualTo("living room, front");
    }

    @Test
    void rowsOfBareSeparatorsAreNoRadiators() {
        assertThat(read(HEADINGS + "lounge,ground,68,41,70,58\n,,,,,\n\n")).hasSize(1);
    }

    @Test
    void aCellLeftBlankIsNotKnown() {
        Radiator r = read(HEADINGS + "lounge,,68,41,,\n").get(0);

        assertThat(r.floor()).isEqualTo("unknown");
        assertThat(r.temperatures().flowTailCelsius()).isEmpty();
    }

    @Test
    void aFileIsReadWithTheMarkThatSpreadsheetsPutFirst(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("survey.csv"), "\uFEFF" + HEADINGS + "lounge,ground,68,41,70,58\n");

        assertThat(RadiatorCsv.read(file)).hasSize(1);
    }

    @Test
    void aFileOfTheWrongEncodingIsRefused(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("survey.csv"), "name,top °F".getBytes(StandardCharsets.ISO_8859_1));

        assertThatThrownBy(() -> RadiatorCsv.read(file)).isInstanceOf(BadInput.class).hasMessageContaining("is not UTF-8 text");
    }

    @TestFactory
    Stream<DynamicTest> aSurveyThatCannotBeUsedGetsOneSentence() {
        record Bad(String what, String text, String says) {}
        return Stream.of(
                new Bad("unknown column", HEADINGS.replace("floor", "flor"),
                        "survey.csv, line 1: \"flor\" is not a column known here; did you mean \"floor\"?"),
                new Bad("unit that is none of the column's", HEADINGS.replace("top", "top bar"),
                        "survey.csv, line 1: \"top bar\" is not a column known here; did you mean \"top\"?"),
                new Bad("missing columns", "name,top,base\nlounge,68,41\n",
                        "survey.csv, line 1: the table has no column flow tail, return tail; a survey needs name, top, base, flow tail, return tail."),
                new Bad("one column twice", "name,top,base,flow tail,return tail,top °F\n",
                        "survey.csv, line 1: \"top °F\" is a second column of top; keep one of them."),
                new Bad("name twice", HEADINGS + "lounge,ground,68,41,70,58\nlounge,first,68,41,70,58\n",
                        "survey.csv, line 3: \"lounge\" is in the table twice; give each radiator a name of its own."),
                new Bad("no name", HEADINGS + ",ground,68,41,70,58\n",
                        "survey.csv, line 2: this radiator has no name; give the room it is in."),
                new Bad("word for a figure", HEADINGS + "lounge,ground,hot,41,70,58\n",
                        "survey.csv, line 2: \"top\" takes a number in celsius, not \"hot\"."),
                new Bad("comma decimals between commas", HEADINGS + "lounge,ground,68,5,41,2,70,58\n",
                        "survey.csv, line 2: this row has 8 cells and the heading row only 6; put a cell that holds a comma in quotes."),
                new Bad("base hotter than the flow tail", HEADINGS + "hall,ground,66,60,68,58\nlounge,ground,68,75,70,58",
                        "survey.csv, line 3: lounge: the base at 75 cannot be hotter than its tails at 70 celsius; read both again."))
                .map(bad -> DynamicTest.dynamicTest(bad.what(),
                        () -> assertThatThrownBy(() -> read(bad.text())).isInstanceOf(BadInput.class).hasMessage(bad.says())));
    }

    private static List<Radiator> read(String text) {
        return RadiatorCsv.read("survey.csv", text);
    }
}
