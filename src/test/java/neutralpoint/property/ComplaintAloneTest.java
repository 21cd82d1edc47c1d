package neutralpoint.property;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a householder says is where to begin looking; nobody flushes a house on it. Common practice, no source. */
class ComplaintAloneTest {
    private static final List<String> FILLED_BY = List.of("loft-tank", "filling-loop", "shared-tank", "both");
    private static final List<String> HOT_WATER = List.of("cylinder", "on-demand", "separately");

    @TestFactory
    Stream<DynamicTest> noComplaintAloneBringsACleanse() {
        return Shared.CATALOGUE.finding(FindingId.COMPLAINT).optionIds().stream().map(complaint -> DynamicTest.dynamicTest(complaint, () ->
                FILLED_BY.forEach(filled -> HOT_WATER.forEach(hotWater -> {
                    Assessment a = Shared.ASSESSOR.assess(house(complaint, filled, hotWater));
                    assertThat(a.verdict().course().cleanses()).as("%s, %s", filled, hotWater).isFalse();
                    assertThat(a.order()).as("%s, %s", filled, hotWater)
                            .noneMatch(step -> step.course().map(Course::cleanses).orElse(false));
                }))));
    }

    @Test
    void aRoutineVisitThatFindsNothingOpensNothing() {
        FILLED_BY.stream().filter(f -> !f.equals("shared-tank") && !f.equals("both")).forEach(filled -> HOT_WATER.forEach(hotWater ->
                assertThat(Shared.ASSESSOR.assess(house("routine", filled, hotWater)).verdict().course().id())
                        .as("%s, %s", filled, hotWater).isEqualTo("no-wet-side-work")));
    }

    @Test
    void aStoveInGoodOrderIsNotReferredOnARoutineVisit() {
        Job stove = aJob().with("red-lines").with("complaint", "routine").with("heating-filled-by", "loft-tank").with("heat-source", "solid-fuel").with("heat-leak-path", "always-open").with("tank-level-cold", "low").with("vent-end", "open-above-water").with("cold-pattern", "all-hot").job();
        assertThat(Shared.ASSESSOR.assess(stove).verdict().course().id()).isEqualTo("no-wet-side-work");
    }

    private static Job house(String complaint, String filled, String hotWater) {
        return Shared.job("{\"findings\": {\"red-lines\": [], \"complaint\": [\"" + complaint + "\"], \"heating-filled-by\": \"" + filled
                + "\", \"hot-water-made-by\": \"" + hotWater + "\"}}");
    }
}
