package neutralpoint.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Finding;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a sum asks for is what it waits for: given that, it is made. */
class CheckTest {

    private static Job job(String findings) {
        return Shared.job("{'findings': {".replace('\'', '"') + findings.replace('\'', '"') + "}}");
    }

    private static List<String> missing(Job job, boolean sealed, String title) {
        return Workings.waiting(job, sealed).stream().filter(c -> c.title().equals(title)).flatMap(c -> c.missing().stream()).toList();
    }

    /** Where the pump draws on the vent it is the water over the vent's tee that keeps air out, not the height of its bend. */
    @Test
    void aVentThatIsDrawnDownAsksForTheWaterOverItsTee() {
        assertThat(missing(job("'pump-head-m': 5, 'tee-resistance-percent': 10"), false, "what the pump does at the vent")).containsExactly("vent-rise-mm");
        assertThat(missing(job("'pump-head-m': 5, 'tee-resistance-percent': -10"), false, "what the pump does at the vent"))
                .containsExactly("vent-tee-below-water-m");
    }

    @Test
    void roomInTheTankWaitsForTheContentWhereNothingTellsIt() {
        assertThat(missing(job("'feed-tank-room-litres': 5"), false, "room in the tank")).containsExactly("system-content-litres");
        assertThat(missing(job("'system-content-litres': 100"), false, "room in the tank")).containsExactly("feed-tank-room-litres");
    }

    @Test
    void nothingIsMeasuredAtAVesselThatIsNotThere() {
        assertThat(missing(job("'pressure-cold-bar': 1"), true, "vessel")).containsExactly("pressure-hot-bar", "vessel-size-litres", "system-content-litres");
        assertThat(missing(job("'pump-and-vessel-place': 'pump-no-vessel'"), true, "vessel")).isEmpty();
    }

    /** Sixty of whatever it is, or the most that is plausible. */
    private static Answer reading(Finding finding) {
        return new Answer.Reading(Math.min(60, finding.highest()), finding.unit());
    }

    @TestFactory
    Stream<DynamicTest> givenWhatItAskedForEachSumIsMade() {
        Job bare = job("");
        return Stream.concat(VentWorkings.checks(bare).stream(), VesselWorkings.checks(bare).stream()).map(check -> DynamicTest.dynamicTest(check.title(), () -> {
            assertThat(check.missing()).isNotEmpty();
            assertThat(check.made()).isEmpty();
            Job read = job("'pressure-hot-bar': 2, 'pressure-cold-bar': 1");
            for (String id : check.missing()) {
                read = id.startsWith("pressure") ? read : read.with(id, reading(Shared.CATALOGUE.finding(id)));
            }
            Job given = read;
            assertThat(Stream.concat(VentWorkings.checks(given).stream(), VesselWorkings.checks(given).stream())
                    .filter(c -> c.title().equals(check.title())).flatMap(c -> c.made().stream())).hasSize(1);
        }));
    }
}
