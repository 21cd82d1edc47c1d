package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.Shared;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A machine finds every thin place: it is not put on radiators that are rusted thin or weep. Common practice, no source. */
class DoubtfulFabricTest {

    @TestFactory
    Stream<DynamicTest> noMachineFlushIsPlannedOnFabricThatIs() {
        return Stream.of("doubtful", "weeping").map(fabric -> DynamicTest.dynamicTest(fabric, () ->
                assertThat(Planner.plan(Shared.ASSESSOR, Shared.job("""
                        {"job": "a-house", "findings": {"red-lines": [], "complaint": ["radiators-cold-at-base"],
                         "heating-filled-by": "loft-tank", "hot-water-made-by": "cylinder", "cylinder-style": "indirect",
                         "feed-and-vent-join": "far-apart", "cold-base-count": "most", "fabric-condition": "%s"}}""".formatted(fabric)),
                        Optional.of("machine-flush")).refusal().orElseThrow().because()).contains("thin place")));
    }
}
