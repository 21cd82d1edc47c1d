package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** Two deciding tests that disagree are reported, never averaged. */
class DisputeTest {
    @Test
    void testsThatDisagreeAreNamedAndNeitherDecides() {
        Assessment a = Shared.ASSESSOR.assess(Shared.job("""
                {"findings": {"complaint": ["feed-tank-overflow"], "heating-filled-by": "loft-tank",
                 "tank-level-supply-shut": "stays", "tank-level-cold": "at-overflow",
                 "overflow-when": "cold-all-the-time", "float-valve-by-hand": "stuck-shut"}}"""));
        Assessment.CauseStanding disputed = a.cause("feed-tank-float-letting-by").orElseThrow();
        assertThat(disputed.isDisputed()).isTrue();
        assertThat(disputed.status()).isNotIn("settled", "excluded");
        assertThat(a.verdict().because()).anyMatch(b -> b.startsWith("Two deciding tests disagree about"));
    }
}
