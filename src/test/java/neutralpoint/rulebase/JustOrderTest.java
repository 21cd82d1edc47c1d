package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** What comes before what, in small houses. Trade facts: common practice, no source. */
class JustOrderTest {
    private static Assessment house(String filledBy, String findings) {
        return Shared.ASSESSOR.assess(Shared.job("""
                {"job": "a-house", "findings": {"red-lines": [], "heating-filled-by": "%s", %s}}""".formatted(filledBy, findings)));
    }

    private static List<String> ranked(Assessment a) {
        return a.causes().stream().map(Assessment.CauseStanding::id).toList();
    }

    @Test
    void blackSludgeRinsedOutOfOneRadiatorOfThirteenIsNoReasonToFlushTheHouse() {
        Assessment a = house("loft-tank", """
                "hot-water-made-by": "cylinder", "feed-and-vent-join": "far-apart", "complaint": ["some-radiators-cold"],
                "cold-base-count": "one", "rinsed-out": "thick-black", "cold-pattern": "base-cold\"""");

        assertThat(a.verdict().course().id()).isEqualTo("partial-cleanse");
        assertThat(a.verdict().certainty()).isEqualTo(Certainty.SETTLED);
        assertThat(ranked(a)).startsWith("sludge-in-one-or-few-radiators");
    }

    @Test
    void theLeakComesBeforeTheOxygenThatToppingUpForItBringsIn() {
        Assessment a = house("filling-loop", """
                "hot-water-made-by": "on-demand", "complaint": ["pressure-falls", "bleeding-often"], "top-ups": "weekly",
                "leak-place": ["joint"], "leak-rate": "drip\"""");

        assertThat(a.verdict().course().id()).isEqualTo("pipework-correction");
        assertThat(ranked(a).indexOf("visible-leak-at-joint")).isLessThan(ranked(a).indexOf("oxygen-from-repeated-top-up"));
    }

    @Test
    void theLoopThatLetsByComesBeforeThePressureItRaises() {
        Assessment a = house("filling-loop", """
                "hot-water-made-by": "on-demand", "complaint": ["pressure-rises"], "pressure-cold-bar": 2.4, "pressure-behaviour": "climbs-cold\"""");

        assertThat(ranked(a)).startsWith("filling-loop-letting-by");
        assertThat(a.verdict().course().id()).isEqualTo("valve-repair");
    }

    @Test
    void aRoutineVisitThatFindsNothingWrongLeadsToNoWorkOnTheWaterSide() {
        Assessment a = house("filling-loop", """
                "hot-water-made-by": "on-demand", "complaint": ["routine"], "cold-pattern": "all-hot", "bleed-water": "clear",
                "pressure-behaviour": "steady\"""");

        assertThat(a.verdict().course().id()).isEqualTo("no-wet-side-work");
    }

    @Test
    void weakInhibitorAloneIsNoReasonToCleanse() {
        Assessment a = house("filling-loop", """
                "hot-water-made-by": "on-demand", "complaint": ["routine"], "inhibitor-test": "weak", "bleed-water": "clear", "cold-pattern": "all-hot\"""");

        assertThat(a.verdict().course().cleanses()).isFalse();
    }
}
