package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.job.Answer;
import neutralpoint.job.EmergencyTold;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * It goes wrong while somebody is at work: at any prompt, in one key, told at once and kept.
 * Holds {@link EmergencyScreen} and {@link neutralpoint.rulebase.Emergencies}.
 */
class EmergencyDialogueTest {
    private static final String ASKED = "What has happened?";

    @TempDir
    private Path folder;
    private ScriptedScreen screen;
    private Callout callout;

    @ParameterizedTest
    @ValueSource(strings = {"0", "emergency", "Emergency"})
    void theKeyOrTheWordAsksOneQuestionAndGoingBackAsksTheVeryQuestionAgain(String called) {
        Job job = consult("none", "7", called, "back", "1");

        assertThat(screen.after(called)).startsWith(ASKED, "  1  water is coming out", "  2  smell or fumes", "  3  an electric shock",
                "  4  steam or boiling", "  5  somebody is hurt");
        String filled = Shared.CATALOGUE.finding("heating-filled-by").ask();
        assertThat(screen.after("back")).first().isEqualTo(filled);
        assertThat(job.answer("heating-filled-by")).as("and takes the answer to it").contains(new Answer.One("loft-tank"));
        assertThat(job.emergencies()).as("nothing has happened").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, water-out", "burst pipe, water-out", "gas, smell-or-fumes", "shock, shock", "4, steam", "it boils, steam", "fell off the ladder, somebody-hurt"})
    void itIsToldByItsNumberOrByAWord(String typed, String what) {
        Job job = consult("none", "0", typed, "back");

        assertThat(job.emergencies()).extracting(EmergencyTold::what).containsExactly(what);
        assertThat(saved()).as("kept at once").isEqualTo(job);
    }

    @ParameterizedTest
    @ValueSource(strings = {"6", "giraffe", "gas and water"})
    void anythingElseIsAskedAgainWithOneSentence(String typed) {
        Job job = consult("none", "0", typed, "4", "back");

        assertThat(screen.after(typed)).startsWith("\"" + typed + "\" is none of these; type 1 to 5, a word of it, or \"back\".", ASKED);
        assertThat(job.emergenciesStanding()).containsExactly("steam");
    }

    @Test
    void theWordWithWhatHasHappenedNeedsNoQuestion() {
        consult("none", "emergency steam");

        assertThat(screen.headings()).contains("NOW: steam or boiling").doesNotContain(ASKED);
    }

    @Test
    void theDangerStandsInTheVerdictAndThePlanUntilItIsOver() {
        Job job = consult("none", "7", "1", "0", "4", "back", "1");
        assertThat(screen.headings()).as("the stop is announced").contains("STOP: Boiling or steam");
        assertThat(callout.stopStands()).isTrue();
        assertThat(Shared.ASSESSOR.assess(job).verdict().course().id()).isEqualTo("refer");

        Job after = consult(job, "emergency over", "verdict");
        assertThat(after.emergencies()).extracting(EmergencyTold::over).as("added to, never taken away").containsExactly(false, true);
        assertThat(Shared.ASSESSOR.assess(after).stops()).isEmpty();
        assertThat(saved()).isEqualTo(after);
    }

    @Test
    void onceItIsOverTheQuestionsGoOn() {
        Job stopped = consult("none", "7", "0", "4", "back", "verdict");

        consult(stopped, "emergency over");
        assertThat(screen.headings()).last().asString().as("a question, and no more a stop").endsWith("?");
    }

    @Test
    void anEmergencyAtTheFirstQuestionStandsEvenIfTheFirstQuestionIsAnsweredWithNone() {
        Job job = consult("0", "1", "back", "none");

        assertThat(screen.headings()).contains("STOP: Water running out fast");
        assertThat(Shared.ASSESSOR.assess(job).stops()).extracting(Assessment.StopFound::id).containsExactly("fast-leak");
    }

    @Test
    void whereSeveralStandTheOneThatIsOverIsNamed() {
        Job job = consult("none", "emergency water", "back", "emergency shock", "back", "emergency over", "emergency over water");

        assertThat(screen.after("emergency over")).first().asString().startsWith("Say which is over").contains("water-out, shock");
        assertThat(job.emergenciesStanding()).containsExactly("shock");
        assertThat(screen.after("emergency over water")).contains("What leaked is mended and dry under pressure.");
    }

    @Test
    void atTheTableOfRadiatorsAndAtTheGaugeItIsKeptWithTheRowsEnteredAfterIt() {
        Job job = consult("none", "radiators", "0", "4", "back", "lounge, ground, 68, 41", "done", "gauge", "emergency", "1", "back",
                "1.2, 15, 2026-01-02 08:00", "leave");

        assertThat(job.emergenciesStanding()).containsExactly("steam", "water-out");
        assertThat(job.radiators()).hasSize(1);
        assertThat(job.gauge()).hasSize(1);
        assertThat(saved()).isEqualTo(job);
    }

    @Test
    void atTheEndPromptToo() {
        Job job = consult("1", "0", "5", "back", "verdict");

        assertThat(job.emergenciesStanding()).containsExactly("somebody-hurt");
        assertThat(String.join("\n", screen.after("verdict"))).contains("Somebody hurt", "Smell of gas");
    }

    @Test
    void inTheTalkAboutTheArrangementItStandsInWhatComesOut() {
        ScriptedScreen talk = new ScriptedScreen("filling-loop", "0", "4", "back", "on-demand");
        Assessment a = new ArrangementInterview(talk, Shared.CATALOGUE, Shared.ASSESSOR,
                new ArrangementQuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE)).run();

        assertThat(a.stops()).extracting(Assessment.StopFound::id).containsExactly("boiling");
        assertThat(talk.after("back")).first().isEqualTo("How is the hot tap water made?");
    }

    @Test
    void aNoughtIsReadAsAReadingWithItsUnit() {
        Job job = consult(Job.begin("test").asking("pressure-cold-bar"), "0", "back", "0 bar");

        assertThat(screen.after("0")).first().isEqualTo(ASKED);
        assertThat(screen.after("back")).last().asString().contains("\"0 bar\" for nothing");
        assertThat(job.answer("pressure-cold-bar")).contains(new Answer.Reading(0, "bar"));
    }

    @Test
    void theEndOfInputLeavesFromEveryPlaceOfIt() {
        assertThat(consult("none", "0").emergencies()).isEmpty();
        assertThat(consult("none", "0", "4").emergenciesStanding()).containsExactly("steam");
    }

    /** Nobody waits for the rules to load, or for a look ahead, while water runs. */
    @Test
    void itAnswersWithinAFifthOfASecondWithoutTheRules() {
        Supplier<Callout.Engine> neverReady = () -> {
            throw new AssertionError("the rules were waited for");
        };
        for (String what : Shared.CATALOGUE.emergencies().keySet()) {
            long[] told = new long[2];
            ScriptedScreen timed = new ScriptedScreen("emergency " + what, "back", "leave") {
                @Override
                public Optional<String> ask(String prompt, List<String> words) {
                    told[1] = told[0];
                    told[0] = System.nanoTime();
                    if (prompt.startsWith("Enter")) {
                        assertThat(Duration.ofNanos(told[0] - told[1])).as(what).isLessThan(Duration.ofMillis(200));
                    }
                    return super.ask(prompt, words);
                }
            };
            new Callout(timed, Shared.CATALOGUE, neverReady, Job.begin("test"), file()).run();
            assertThat(timed.headings()).contains("NOW: " + Shared.CATALOGUE.emergency(what).say());
        }
    }

    private Job consult(String... typed) {
        return consult(Job.begin("test"), typed);
    }

    private Job consult(Job job, String... typed) {
        screen = new ScriptedScreen(typed);
        Callout.Engine engine = new Callout.Engine(Shared.ASSESSOR, new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE));
        callout = new Callout(screen, Shared.CATALOGUE, () -> engine, job, file());
        return callout.run();
    }

    private Job saved() {
        return new JobCheck(Shared.CATALOGUE).read(file());
    }

    private Path file() {
        return folder.resolve("test.json");
    }
}
