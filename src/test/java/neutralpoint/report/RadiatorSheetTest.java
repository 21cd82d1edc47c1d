package neutralpoint.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import neutralpoint.job.Job;
import neutralpoint.job.RadiatorCsv;
import org.junit.jupiter.api.Test;

/** The table of radiators as it is shown while it is entered. */
class RadiatorSheetTest {
    private static final Job HOUSE = Job.begin("house").withRadiators(RadiatorCsv.read("survey", """
            name,floor,top,base,flow tail,return tail
            lounge,ground,68.4,41,70,58
            the room over the old coach house,first,62,54,66,56
            porch,,,,,
            """));

    @Test
    void atSixtyColumnsALongNameHasALineOfItsOwn() {
        assertThat(RadiatorSheet.of(HOUSE, 59)).isEqualTo("""
                name            floor     top  base  flow return  state
                lounge          ground   68.4    41    70     58  cold base
                the room over the old coach house
                                first      62    54    66     56  healthy
                porch           -           -     -     -      -
                """);
    }

    @Test
    void onTheNarrowestScreenTheFiguresStandUnderTheName() {
        assertThat(RadiatorSheet.of(HOUSE, 39)).isEqualTo("""
                name, floor
                   top  base  flow return  state
                lounge, ground
                  68.4    41    70     58  cold base
                the room over the old coach house,
                first
                    62    54    66     56  healthy
                porch, -
                     -     -     -      -
                """);
    }

    @Test
    void noLineIsWiderThanTheScreen() {
        IntStream.rangeClosed(39, 99).forEach(width -> assertThat(RadiatorSheet.of(HOUSE, width).lines()).as("%s columns", width)
                .allMatch(line -> line.length() <= width));
    }
}
