package neutralpoint.rulebase;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** Two deciding tests that disagree are reported, never averaged. */
class DisputeTest {
    @Test
    void testsThatDisagreeAreNamedAndNeitherDecides() {
        Assessment a = Shared.ASSESSOR.assess(aJob().with("complaint", "feed-tank-overflow").with("heating-filled-by", "loft-tank").with("tank-level-supply-shut", "stays").with("tank-level-cold", "at-overflow").with("overflow-when", "cold-all-the-time").with("float-valve-by-hand", "stuck-shut").job());
        Assessment.CauseStanding disputed = a.cause("feed-tank-float-letting-by").orElseThrow();
        assertThat(disputed.isDisputed()).isTrue();
        assertThat(disputed.status()).isNotIn("settled", "excluded");
        assertThat(a.verdict().because()).anyMatch(b -> b.startsWith("Two deciding tests disagree about"));
    }
}
