package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/**
 * What one settled fault accounts for stops speaking for others; what it leads to is not the chief.
 * Holds {@link WeighedEvidence}.
 */
class ExplainingAwayTest {
    private static final String ORANGE = "\"heating-filled-by\": \"loft-tank\", \"loft-tanks\": \"two\", \"bleed-water\": \"orange\", "
            + "\"complaint\": [\"discoloured-water\"]";
    private static final String PLUGGED = ", \"tank-level-when-drained\": \"does-not-fall\"";

    @Test
    void orangeWaterStopsSpeakingForPlasticOnceThePluggedTeeIsSettled() {
        Assessment before = assess(ORANGE);
        Assessment after = assess(ORANGE + PLUGGED);
        assertThat(sum(before, "oxygen-through-pipe-wall")).isGreaterThan(sum(after, "oxygen-through-pipe-wall"));
        assertThat(after.cause("oxygen-through-pipe-wall").orElseThrow().evidence())
                .anyMatch(e -> e.explainedBy().equals(Optional.of("plugged-feed-and-vent-tee")) && e.decibans() == 0);
    }

    @Test
    void whatIsMerelyLikelyExplainsNothing() {
        assertThat(assess(ORANGE + ", \"magnet-at-feed-tee\": \"clings\"").causes())
                .allSatisfy(c -> assertThat(c.evidence()).allMatch(e -> e.explainedBy().isEmpty()));
    }

    @Test
    void theFaultBehindAnotherIsTheChief() {
        Assessment a = assess("""
                "complaint": ["pressure-falls"], "heating-filled-by": "filling-loop", "top-ups": "weekly",
                "bleed-water": "orange", "vessel-air-valve": "water\"""");
        assertThat(a.cause("oxygen-from-repeated-top-up").orElseThrow().decibans()).isGreaterThan(sum(a, "vessel-ruptured"));
        assertThat(a.verdict().chief().orElseThrow().id()).isEqualTo("vessel-ruptured");
        assertThat(a.causes().get(0).id()).isEqualTo("vessel-ruptured");
        assertThat(a.verdict().because()).contains("Water that has nowhere to expand leaves by the safety valve and is topped up cold.");
    }

    private static double sum(Assessment a, String cause) {
        return a.cause(cause).orElseThrow().decibans();
    }

    private static Assessment assess(String findings) {
        return Shared.ASSESSOR.assess(Shared.job("{\"findings\": {" + findings + "}}"));
    }
}
