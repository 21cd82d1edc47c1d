package neutralpoint.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorCsv;
import neutralpoint.report.text.DisplayOptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The strips of a house in words and in colour, on a narrow and a usual terminal. */
class HeatStripTest {
    private static final String COLOUR = "\u001b\\[\\d+m";

    /** A sludged lounge, a healthy bath, a radiator with gas in it and one whose tails were out of reach. */
    private static final Job HOUSE = house("""
            name,floor,top,base,flow tail,return tail
            bath,first,62,54,66,56
            lounge,ground,68,41,70,58
            landing,first,30,58,66,55
            back bedroom,,64.6,48,,
            """);

    @Test
    void inWordsAtSixtyColumns() {
        assertThat(HeatStrip.of(HOUSE, DisplayOptions.plain(59))).isEqualTo("""
                ground floor
                  lounge        top 68  base 41  tails 70/58  cold base
                first floor
                  bath          top 62  base 54  tails 66/56  healthy
                  landing       top 30  base 58  tails 66/55  cold top
                floor not known
                  back bedroom  top 65  base 48               cold base
                """);
    }

    @Test
    void inColourTheSameFiguresStandBesideTheStrips() {
        assertThat(bare(HeatStrip.of(HOUSE, new DisplayOptions(59, true)))).isEqualTo("""
                               top           base  flow   return
                ground floor
                  lounge        68 ███▓▓▓▓▓▒▒  41   70 ████▓  58  cold base
                first floor
                  bath          62 ███▓▓▓▓▓▓▓  54   66 ███▓▓  56  healthy
                  landing       30 ▒▒▒▒▒▓▓▓▓▓  58   66 ███▓▓  55  cold top
                floor not known
                  back bedroom  65 ███▓▓▓▓▓▓▓  48    -         -  cold base
                  ░ under 30  ▒ 30 to 44  ▓ 45 to 59  █ 60 or over
                """);
    }

    @Test
    void atEightyColumnsTheStripsAreLonger() {
        String narrow = line(HeatStrip.of(HOUSE, new DisplayOptions(59, true)), "lounge");
        String wide = line(HeatStrip.of(HOUSE, new DisplayOptions(79, true)), "lounge");

        assertThat(cells(wide)).isGreaterThan(cells(narrow));
        assertThat(bare(wide)).contains(" 68 ", " 41 ", " 70 ", " 58 ", "cold base");
    }

    @Test
    void aStripRunsFromTheTemperatureOfTheTopToThatOfTheBase() {
        String lounge = bare(line(HeatStrip.of(HOUSE, new DisplayOptions(79, true)), "lounge"));

        assertThat(lounge).as("68 is 60 or over and 41 is 30 to 44").matches(".* 68 █+▓+▒+ +41 .*");
    }

    @Test
    void eachShadeHasAColourOfItsOwn() {
        String landing = line(HeatStrip.of(HOUSE, new DisplayOptions(79, true)), "landing");

        assertThat(landing).as("30 to 58: no hot and no cool cell in the face").containsPattern("30 \u001b\\[36m▒+\u001b\\[0m\u001b\\[33m▓+\u001b\\[0m +58");
    }

    @Test
    void theLegendSaysWhatTheShadesMean() {
        assertThat(bare(HeatStrip.of(HOUSE, new DisplayOptions(79, true)))).contains("░ under 30  ▒ 30 to 44  ▓ 45 to 59  █ 60 or over");
    }

    @TestFactory
    Stream<DynamicTest> nothingIsWiderThanTheScreen() {
        Job long1 = house("name,floor,top,base,flow tail,return tail\nthe little room behind the kitchen with the old window,ground,68,41,70,58\n"
                + "hall,second,-5,-4.6,104,99.5\nporch,first,60,55,,58\n");
        return Stream.of(39, 40, 47, 55, 56, 59, 60, 79, 99).flatMap(width -> Stream.of(true, false).map(colour ->
                DynamicTest.dynamicTest(width + " columns" + (colour ? ", colour" : ", plain"), () -> {
                    for (Job job : List.of(HOUSE, long1)) {
                        String strips = HeatStrip.of(job, new DisplayOptions(width, colour));
                        assertThat(bare(strips).lines()).allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
                        assertThat(bare(strips).lines()).allSatisfy(line -> assertThat(line).isEqualTo(line.stripTrailing()));
                    }
                    String words = bare(HeatStrip.of(long1, new DisplayOptions(width, colour))).replaceAll("\\s+", " ");
                    assertThat(words).contains("the little room behind the kitchen with the old window", "68", "41", "70", "58", "cold base");
                })));
    }

    @Test
    void plainMeansPlainCharacters() {
        assertThat(HeatStrip.of(HOUSE, DisplayOptions.plain(59))).matches("[\\n\\x20-\\x7e]+");
    }

    @Test
    void aRadiatorOfWhichOneTailWasReadSaysWhichOne() {
        assertThat(HeatStrip.of(house("name,top,base,flow tail,return tail\nporch,60,55,,58\n"), DisplayOptions.plain(59)))
                .isEqualTo("floor not known\n  porch  top 60  base 55  return tail 58  healthy\n");
    }

    @Test
    void aHouseWithoutTemperaturesHasNoStrips() {
        assertThat(HeatStrip.of(Job.begin("x").withRadiators(List.of(new Radiator("lounge", "ground"))), DisplayOptions.plain(59))).isEmpty();
    }

    private static Job house(String csv) {
        return Job.begin("house").withRadiators(RadiatorCsv.read("survey", csv));
    }

    private static String line(String strips, String name) {
        return strips.lines().filter(l -> l.contains(name)).findFirst().orElseThrow();
    }

    private static long cells(String line) {
        return line.chars().filter(c -> "░▒▓█".indexOf(c) >= 0).count();
    }

    private static String bare(String coloured) {
        return coloured.replaceAll(COLOUR, "");
    }
}
