package neutralpoint.consult;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.JobBuilder;
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
    private static final Job BEGUN = aJob().with("red-lines").with("complaint", "all-lukewarm").with("heating-filled-by", "loft-tank").with("hot-water-made-by", "cylinder").job();

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

    /** The system decides what may be done at all, and three words tell it. */
    @Test
    void whatFillsTheHeatingIsAskedBeforeAnythingOfTheBoilerBecauseNothingCanBeDoneOnAnUnknownSystem() {
        assertThat(ranked(aJob().with("red-lines").with("complaint", "kettling"))).startsWith("heating-filled-by");
    }

    @Test
    void theComplaintIsAskedBeforeEverythingElseBecauseAllElseHangsOnIt() {
        assertThat(ranked(aJob().with("red-lines").with("heating-filled-by", "loft-tank"))).startsWith("complaint");
    }

    /** Both tell of a plugged tee: one takes two minutes in the airing cupboard, the other ten and a climb into the loft. */
    @Test
    void theMagnetIsAskedBeforeTheDrainTestBecauseItTellsOfThePlugInAFifthOfTheTime() {
        assertThat(ranked(openVented("water-into-loft-tank"))).containsSubsequence("magnet-at-feed-tee", "tank-level-when-drained");
    }

    @Test
    void theSettingIsReadBeforeARadiatorIsBledBecauseADialTurnedDownCostsAMinuteToSee() {
        assertThat(ranked(openVented("all-lukewarm"))).containsSubsequence("flow-setting", "bleed-water");
    }

    /** Cold at the bottom middle is sludge, cold all along one side is flow: a hand tells them apart. */
    @Test
    void theShapeOfTheColdIsAskedBeforeTheWaterIsSeenBecauseAHandTellsSludgeFromWantOfFlow() {
        assertThat(ranked(openVented("radiators-cold-at-base"))).containsSubsequence("cold-base-shape", "cold-base-count", "bleed-water");
    }

    @Test
    void theVesselsAirValveIsPressedBeforeTheDischargeIsLookedAtOutsideBecauseTheVesselIsTheUsualReason() {
        assertThat(ranked(combination("pressure-falls"))).containsSubsequence("vessel-air-valve", "discharge-outside");
    }

    @Test
    void toppingUpIsAskedBeforeTheBoilerIsDrainedBecauseFreshWaterIsWhatScaleComesFrom() {
        assertThat(ranked(combination("kettling"))).containsSubsequence("top-ups", "boiler-drain-water");
    }

    @Test
    void theLicenceIsAskedLastBecauseItChangesWhoDoesTheWorkAndNotWhatIsWrong() {
        assertThat(ranked(combination("pressure-falls"))).endsWith("licences-held");
    }

    private List<String> ranked(JobBuilder job) {
        return lookahead.rank(Shared.ASSESSOR.assess(job.job()), Integer.MAX_VALUE).stream().map(q -> q.finding().id()).toList();
    }

    private static JobBuilder openVented(String complaint) {
        return aJob().with("red-lines").with("heating-filled-by", "loft-tank").with("loft-tanks", "two").with("small-tank-serves", "heating")
                .with("hot-water-made-by", "cylinder").with("cylinder-style", "indirect").with("heat-source", "gas-boiler")
                .with("feed-and-vent-join", "far-apart").with("complaint", complaint);
    }

    private static JobBuilder combination(String complaint) {
        return aJob().with("red-lines").with("heating-filled-by", "filling-loop").with("hot-water-made-by", "on-demand")
                .with("pump-and-vessel-place", "in-case").with("old-vent-left", "nothing-left").with("heat-source", "gas-boiler")
                .with("complaint", complaint);
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
        assertThat(lookahead.open(Shared.ASSESSOR.assess(aJob().with("heating-filled-by", "filling-loop").with("hot-water-made-by", "on-demand").with("loft-tanks", "no-tanks").job())))
                .extracting(f -> f.id()).doesNotContain("float-valve-by-hand", "overflow-when");
    }
}
