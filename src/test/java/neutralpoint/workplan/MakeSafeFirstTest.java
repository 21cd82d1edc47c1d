package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** What has to be done before any other work stands before it in the plan. Common practice, no source. */
class MakeSafeFirstTest {

    @Test
    void peopleOutThenElectricsThenWaterThenTheTankAndOnlyThenWorkInTheLoft() {
        List<String> steps = steps("'red-lines': ['ceiling-bulging'], 'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', "
                + "'loft-tanks': 'two', 'complaint': ['feed-tank-overflow'], 'tank-level-cold': 'at-overflow', "
                + "'float-valve-by-hand': 'will-not-stop', 'heat-source': ['gas-boiler']");
        assertThat(steps).startsWith("ceiling-bulging-1", "ceiling-bulging-2", "ceiling-bulging-3", "ceiling-bulging-4", "ceiling-bulging-over-1",
                "ceiling-bulging-over-2");
        assertThat(steps).hasSizeGreaterThan(5);
    }

    @Test
    void aHeatPumpIsMeasuredOrDrainedOutsideBeforeItIsLockedOffInAFrost() {
        List<String> steps = steps("'red-lines': [], 'heat-source': ['heat-pump'], 'frost-expected': 'yes', 'heating-filled-by': 'filling-loop', "
                + "'hot-water-made-by': 'cylinder', 'complaint': ['no-heating'], 'pump-felt-and-heard': 'hot-and-humming', 'pump-spindle': 'will-not-turn'");
        assertThat(steps).contains("boiler-dead");
        assertThat(steps.indexOf("heat-pump-frost-over-1")).isNotNegative().isLessThan(steps.indexOf("boiler-dead"));
    }

    private static List<String> steps(String findings) {
        return WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE,
                Shared.job("{\"findings\": {" + findings.replace('\'', '"') + "}}"), Optional.empty()).steps().stream().map(PlanStep::id).toList();
    }
}
