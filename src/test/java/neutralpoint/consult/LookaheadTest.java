package neutralpoint.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.Shared;
import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** What the choice of the next question promises, whatever it chooses. */
class LookaheadTest {
    private static final Job BEGUN = Shared.job("""
            {"findings": {"red-lines": [], "complaint": ["all-lukewarm"], "heating-filled-by": "loft-tank",
             "hot-water-made-by": "cylinder"}}""");

    private final Lookahead lookahead = new Lookahead(Shared.ASSESSOR, Shared.CATALOGUE);

    @Test
    void theSameCalloutIsAskedTheSameQuestionsNext() {
        List<NextQuestion> first = lookahead.rank(Shared.ASSESSOR.assess(BEGUN), 5);
        assertThat(first).isNotEmpty();
        assertThat(lookahead.rank(Shared.ASSESSOR.assess(BEGUN), 5)).isEqualTo(first);
    }

    @Test
    void noQuestionIsAskedThatMakesNoSenseOnThisSystem() {
        assertThat(lookahead.open(Shared.ASSESSOR.assess(Shared.job("""
                {"findings": {"heating-filled-by": "filling-loop", "hot-water-made-by": "on-demand", "loft-tanks": "no-tanks"}}"""))))
                .extracting(f -> f.id()).doesNotContain("float-valve-by-hand", "overflow-when");
    }
}
