package neutralpoint.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;

/** What the choice of the next question promises, whatever it chooses. */
class QuestionChooserTest {
    private static final String COMPETENT = "competent-to-prove-dead";
    private static final Job BEGUN = Shared.job("""
            {"findings": {"red-lines": [], "complaint": ["all-lukewarm"], "heating-filled-by": "loft-tank",
             "hot-water-made-by": "cylinder"}}""");

    private final QuestionChooser lookahead = new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE);

    @Test
    void theSameCalloutIsAskedTheSameQuestionsNext() {
        List<NextQuestion> first = lookahead.rank(Shared.ASSESSOR.assess(BEGUN), 5);
        assertThat(first).isNotEmpty();
        assertThat(lookahead.rank(Shared.ASSESSOR.assess(BEGUN), 5)).isEqualTo(first);
    }

    @Test
    void competenceIsAskedOnceWhereTheWorkNeedsItAndTheAnswerTakesItAway() {
        Job head = read("cases/by-cause/marigold-road.json").without("licences-held");
        assertThat(askedToTheEnd(head).stream().filter(COMPETENT::equals)).hasSize(1);
        Assessment now = Shared.ASSESSOR.assess(head);
        assertThat(lookahead.rank(now, 3)).as("what could still matter").anyMatch(q -> q.finding().id().equals(COMPETENT) && q.changesCourse() > 0);
        assertThat(Shared.ASSESSOR.assess(head.with(COMPETENT, new Answer.One("no"))).verdict().course()).isNotEqualTo(now.verdict().course());
        assertThat(Shared.ASSESSOR.assess(head.with(COMPETENT, new Answer.One("yes"))).verdict().course()).isEqualTo(now.verdict().course());
    }

    @Test
    void competenceIsNotAskedOfAnElectricianNorWhereNoWireIsTouchedNorWhereItIsReferredAnyway() {
        assertThat(askedToTheEnd(read("cases/by-cause/marigold-road.json"))).as("registered for electrical work").doesNotContain(COMPETENT);
        assertThat(askedToTheEnd(read("cases/by-cause/eyebright-terrace.json"))).as("a coil has no wires").doesNotContain(COMPETENT);
        assertThat(askedToTheEnd(read("cases/by-cause/ironstone-cottage.json"))).as("an immersion heater is an electrician's").doesNotContain(COMPETENT);
        assertThat(lookahead.open(Shared.ASSESSOR.assess(BEGUN))).extracting(f -> f.id()).as("nothing needs it yet").doesNotContain(COMPETENT);
    }

    @Test
    void theLicenceIsAskedBeforeSomebodyIsSentIntoABoilerCase() {
        Job diverter = read("cases/uncommon/amber-mews.json").without("licences-held");
        assertThat(askedToTheEnd(diverter).stream().filter("licences-held"::equals)).hasSize(1);
    }

    /** What is asked until nothing is left, when every question is left open. */
    private List<String> askedToTheEnd(Job job) {
        List<String> asked = new ArrayList<>();
        Job now = job;
        for (Optional<NextQuestion> q = lookahead.next(Shared.ASSESSOR.assess(now)); q.isPresent(); q = lookahead.next(Shared.ASSESSOR.assess(now))) {
            asked.add(q.get().finding().id());
            now = now.with(q.get().finding().id(), Answer.NOT_CHECKED);
        }
        return asked;
    }

    private static Job read(String file) {
        return CaseStudy.read(Path.of(file), new JobCheck(Shared.CATALOGUE)).job();
    }

    @Test
    void noQuestionIsAskedThatMakesNoSenseOnThisSystem() {
        assertThat(lookahead.open(Shared.ASSESSOR.assess(Shared.job("""
                {"findings": {"heating-filled-by": "filling-loop", "hot-water-made-by": "on-demand", "loft-tanks": "no-tanks"}}"""))))
                .extracting(f -> f.id()).doesNotContain("float-valve-by-hand", "overflow-when");
    }
}
