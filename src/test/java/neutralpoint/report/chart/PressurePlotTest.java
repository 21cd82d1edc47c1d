package neutralpoint.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.workings.PressureLine;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A vessel that has lost its charge: the gauge runs up to the valve where a sound vessel would show little more than cold. */
class PressurePlotTest {
    private static final PressureLine LOST = new PressureLine(15, 1, 65, 2.8, 3, t -> OptionalDouble.of(1 + (t - 15) * 0.01));

    @Test
    void plain() {
        assertThat(PressurePlot.of(LOST, DisplayOptions.plain(59))).isEqualTo("""
                bar, by the gauge
                4.0 |
                    |
                    |------------------------------------------------------
                    |                                                 @
                    |
                2.0 |
                    |                                        ..........
                    |    o...................................
                    |    .
                    |
                0.0 |
                    +------------------------------------------------------
                     10                        40               70 C water
                     o cold  @ hot  . expected  - safety valve
                Cold 1 bar at 15 C; hot 2.8 bar at 65 C, expected 1.5.
                Safety valve 3 bar, 0.2 bar over the hot reading.
                """);
    }

    @Test
    void inColourItIsSignForSignTheSameDrawing() {
        String rich = bare(PressurePlot.of(LOST, new DisplayOptions(59, true)));

        assertThat(rich.replace('○', 'o').replace('●', '@').replace('·', '.').replace('─', '-').replace('│', '|').replace('└', '+')
                .replace("°", "")).isEqualTo(PressurePlot.of(LOST, DisplayOptions.plain(59)));
        assertThat(PressurePlot.of(LOST, new DisplayOptions(59, true))).contains("\u001b[31m●\u001b[0m", "\u001b[34m○\u001b[0m", "\u001b[32m·\u001b[0m");
    }

    @TestFactory
    Stream<DynamicTest> itFitsTheScreenAndNeverGrowsBeyondSixtyColumnsAndSixteenLines() {
        return Stream.of(39, 50, 59, 60, 79, 99).flatMap(width -> Stream.of(true, false).map(colour ->
                DynamicTest.dynamicTest(width + " columns" + (colour ? ", colour" : ", plain"), () -> {
                    String plot = bare(PressurePlot.of(LOST, new DisplayOptions(width, colour)));
                    assertThat(plot.lines()).allSatisfy(l -> assertThat(l.length()).as(l).isLessThanOrEqualTo(Math.min(width, 60)));
                    assertThat(plot.lines().takeWhile(l -> !l.startsWith("Cold"))).hasSizeLessThanOrEqualTo(16);
                    assertThat(plot).contains("bar, by the gauge", "C water", "safety valve");
                })));
    }

    @Test
    void aHigherReadingStandsHigher() {
        PressureLine half = new PressureLine(15, 1, 65, 2, 3, LOST.expectedBar());

        assertThat(rowOf(PressurePlot.of(LOST, DisplayOptions.plain(59)), '@')).isLessThan(rowOf(PressurePlot.of(half, DisplayOptions.plain(59)), '@'));
    }

    @Test
    void beyondTheGaugeNothingIsDrawnAndTheSentenceSaysWhy() {
        PressureLine full = new PressureLine(15, 1, 65, 2.8, 3, t -> t < 40 ? OptionalDouble.of(1) : OptionalDouble.empty());

        String plot = PressurePlot.of(full, DisplayOptions.plain(59));
        assertThat(plot).contains("hot 2.8 bar at 65 C; no air left.");
        assertThat(plot.lines().filter(l -> l.matches(".*\\|.*\\..*"))).hasSize(1);
    }

    @Test
    void aReadingOverTheValveSaysHowFar() {
        assertThat(PressurePlot.of(new PressureLine(15, 1, 65, 3.4, 3, LOST.expectedBar()), DisplayOptions.plain(59)))
                .contains("Safety valve 3 bar, 0.4 bar under the hot reading.");
    }

    @Test
    void readingsAtTheEndsOfTheirRangesStayOnTheSheet() {
        for (double bar : new double[] {0, 3, 6}) {
            for (double hot : new double[] {15, 20, 110}) {
                String plot = PressurePlot.of(new PressureLine(15, 0, hot, bar, 3, t -> OptionalDouble.of(20)), DisplayOptions.plain(59));
                assertThat(plot).as("%s bar at %s C", bar, hot).contains("@");
            }
        }
    }

    private static int rowOf(String plot, char sign) {
        return plot.lines().takeWhile(l -> !l.contains("expected")).filter(l -> l.indexOf(sign) >= 0)
                .map(l -> plot.lines().toList().indexOf(l)).findFirst().orElseThrow();
    }

    private static String bare(String coloured) {
        return coloured.replaceAll("\u001b\\[\\d+m", "");
    }
}
