package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Option;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Consultations answered by a script. Every call-out begins with the same four questions: red
 * lines, the complaint, how the heating is filled and how the hot water is made.
 * Holds {@link AnswerWords}, {@link CalloutViews}, {@link HouseholdWords} and {@link JobSaver}.
 */
class CalloutTest {
    private static final String RED_LINES = ask("red-lines");
    private static final String COMPLAINT = ask("complaint");
    private static final String FILLED = ask("heating-filled-by");
    private static final String HOT_WATER = ask("hot-water-made-by");

    @TempDir
    private Path folder;
    private ScriptedScreen screen;

    @Test
    void aQuestionIsAnsweredByTheNumberOfAnAnswer() {
        Job job = consult("none", "7", "1");

        assertThat(job.answers()).containsEntry("red-lines", new Answer.Several(List.of()))
                .containsEntry("complaint", new Answer.Several(List.of("all-lukewarm")))
                .containsEntry("heating-filled-by", new Answer.One("loft-tank"));
        assertThat(screen.headings()).containsExactly(RED_LINES, COMPLAINT, FILLED, HOT_WATER);
    }

    @Test
    void severalNumbersAreGivenWithCommas() {
        Job job = consult("none", "1, 5,21");

        assertThat(job.answer("complaint")).contains(
                new Answer.Several(List.of("radiators-cold-at-base", "downstairs-cold", "discoloured-water")));
    }

    @Test
    void aQuestionIsAnsweredByAWordOfAnAnswer() {
        Job job = consult("none", "7", "Shared", "makes it on demand");

        assertThat(job.answers()).as("the beginning of its name, in capitals or not")
                .containsEntry("heating-filled-by", new Answer.One("shared-tank"));
        assertThat(job.answers()).as("words of what is shown")
                .containsEntry("hot-water-made-by", new Answer.One("on-demand"));
    }

    @Test
    void theComplaintMayBeGivenInTheHouseholdersWords() {
        Job job = consult("none", "overflow loft");

        assertThat(job.answer("complaint")).contains(new Answer.Several(List.of("feed-tank-overflow")));
        assertThat(screen.after("overflow loft")).first().asString()
                .as("says how it was understood").startsWith("Taken as: loft tank overflows");
    }

    @Test
    void aComplaintThatFitsSeveralIsOfferedToChooseFrom() {
        Job job = consult("none", "radiators are cold", "2");

        assertThat(String.join("\n", screen.after("radiators are cold"))).contains("Close to that:",
                "radiators cold along the bottom", "radiators cold at the top").doesNotContain("kettle");
        assertThat(job.answer("complaint")).contains(new Answer.Several(List.of("radiators-cold-at-top")));
    }

    @Test
    void aComplaintThatMeansNothingIsAskedForAgain() {
        Job job = consult("none", "purple giraffe");

        assertThat(screen.after("purple giraffe")).containsExactly(
                "No complaint is close to \"purple giraffe\"; type a number from the list.", COMPLAINT);
        assertThat(job.isAnswered("complaint")).isFalse();
    }

    @Test
    void aWrongAnswerIsChanged() {
        Job job = consult("none", "7", "filling-loop", "change complaint", "9");

        assertThat(screen.after("change complaint")).as("the question again, with the answer it has").contains(COMPLAINT)
                .last().asString().endsWith("Now: all-lukewarm.");
        assertThat(job.answer("complaint")).contains(new Answer.Several(List.of("no-heating")));
        assertThat(job.answers().keySet()).as("nothing else is lost, and the order stays")
                .containsExactly("red-lines", "complaint", "heating-filled-by");
        assertThat(screen.headings()).as("then on from where it was left").last().isEqualTo(HOT_WATER);
    }

    @Test
    void changeWithoutAKnownNameListsWhatWasAnswered() {
        consult("none", "7", "change complain");

        assertThat(screen.after("change complain")).contains("  red-lines: none", "  complaint: all-lukewarm")
                .anySatisfy(line -> assertThat(line).contains("\"complain\" has not been answered").contains("\"complaint\""));
    }

    @Test
    void backAsksTheQuestionBeforeAgain() {
        Job job = consult("none", "7", "back", "9");

        assertThat(screen.headings()).containsExactly(RED_LINES, COMPLAINT, FILLED, COMPLAINT, FILLED);
        assertThat(job.answer("complaint")).contains(new Answer.Several(List.of("no-heating")));
    }

    @Test
    void backCanBeTypedUntilTheFirstQuestion() {
        consult("none", "7", "back", "back", "back");

        assertThat(screen.headings()).containsExactly(RED_LINES, COMPLAINT, FILLED, COMPLAINT, RED_LINES, RED_LINES);
    }

    @Test
    void supposingLeavesNoTrace() throws IOException {
        Job without = consult("none", "7");
        String saved = Files.readString(file());

        Job with = consult(without, "suppose filling-loop");

        assertThat(String.join("\n", screen.after("suppose filling-loop")))
                .contains("If so: ", "Nothing has been recorded.", "Course so far: ");
        assertThat(screen.headings()).as("the same question stays open").containsExactly(FILLED, FILLED);
        assertThat(with).isEqualTo(without);
        assertThat(Files.readString(file())).isEqualTo(saved);
    }

    @Test
    void uncheckedLeavesAQuestionOpenAndGoesOn() {
        Job job = consult("none", "7", "unchecked");

        assertThat(job.answer("heating-filled-by")).contains(Answer.NOT_CHECKED);
        assertThat(saved().answer("heating-filled-by")).contains(Answer.NOT_CHECKED);
        assertThat(screen.headings()).as("it is not asked again").containsExactly(RED_LINES, COMPLAINT, FILLED, HOT_WATER);
    }

    @Test
    void aWordThatFitsSeveralAnswersIsNotGuessedAt() {
        Job job = consult("none", "7", "loop");

        assertThat(screen.after("loop")).containsExactly(
                "\"loop\" fits 2 answers; type the number of the one you mean.", FILLED);
        assertThat(job.isAnswered("heating-filled-by")).isFalse();
    }

    @Test
    void aNumberThatIsNotOnTheListIsRefused() {
        Job job = consult("none", "7", "5", "00");

        assertThat(screen.after("5")).containsExactly("There is no answer 5 here; choose 1 to 4.", FILLED);
        assertThat(screen.after("00")).containsExactly("There is no answer 00 here; choose 1 to 4.", FILLED);
        assertThat(job.isAnswered("heating-filled-by")).isFalse();
    }

    @Test
    void aReadingThatCannotBeIsRefused() {
        Job begun = Job.begin("test").with("system-age-years", new Answer.Reading(12, "years"));

        Job job = consult(begun, "change system-age-years", "none", "7", "change system-age-years", "200", "20");

        assertThat(screen.after("200")).first().asString().contains("cannot be 200 years").contains("between 0 and 80 years");
        assertThat(job.answer("system-age-years")).contains(new Answer.Reading(20, "years"));
    }

    @Test
    void theEndOfInputLeavesAFileThatResumesAtTheSameQuestion() {
        Job left = consult("none", "7", "filling-loop", "cylinder");
        String open = screen.headings().get(screen.headings().size() - 1);
        assertThat(open).isNotIn(RED_LINES, COMPLAINT, FILLED, HOT_WATER);

        Job resumed = consult(saved());

        assertThat(screen.headings()).containsExactly(open);
        assertThat(resumed.answers()).isEqualTo(left.answers());
    }

    @Test
    void aStopIsShownBeforeAnythingElse() {
        consult("none", "7", "change red-lines", "gas-smell");

        List<String> shown = screen.after("gas-smell");
        assertThat(shown.get(0)).isEqualTo("STOP: Smell of gas");
        assertThat(shown.get(1)).isEqualTo("Now:");
        assertThat(shown.get(2)).isEqualTo("  1  Touch no switch, light nothing and use no telephone indoors.");
        assertThat(shown).anyMatch(l -> l.contains("Ring the gas emergency line from outside")).anyMatch(l -> l.startsWith("Never: "))
                .anyMatch(l -> l.startsWith("Who must come: ")).anyMatch(l -> l.startsWith("Because: "));
        assertThat(screen.headings()).as("and nothing more is asked").last().isEqualTo("STOP: Smell of gas");
        assertThat(shown).last().asString().contains("A stop stands");
    }

    @Test
    void aStopIsShownBeforeTheComplaintIsAskedFor() {
        consult("gas-smell");

        assertThat(screen.after("gas-smell")).first().isEqualTo("STOP: Smell of gas");
    }

    @Test
    void aStopThatWasAMistakeIsTakenBackByChange() {
        Job job = consult("none", "7", "change red-lines", "gas-smell", "change red-lines", "none");

        assertThat(Shared.ASSESSOR.assess(job).stops()).isEmpty();
        assertThat(screen.headings()).as("the consultation goes on").last().isEqualTo(FILLED);
    }

    @Test
    void aStopIsShownWithItsOwnCautions() {
        consult("boiling-or-steam");

        assertThat(screen.after("boiling-or-steam")).contains("Caution: " + Shared.CATALOGUE.caution("scald").text());
    }

    @Test
    void cautionsListsAllThatTheVerdictOnlyCounts() {
        Job job = new JobCheck(Shared.CATALOGUE).read(Path.of("cases/hawthorn-row.json"));

        consult(job, "verdict", "cautions");

        assertThat(String.join("\n", screen.after("verdict"))).contains("more: type \"cautions\" to read all.");
        assertThat(String.join("\n", screen.after("cautions"))).contains("Before you touch anything", "While you work", "Before you leave",
                "Take every cap, bung and temporary lever");
    }

    @Test
    void helpNamesEveryWordThatCanBeTyped() {
        consult("help");

        assertThat(commands()).contains("how", "leave").filteredOn(command -> !command.equals("help"))
                .allSatisfy(command -> assertThat(screen.after("help"))
                        .anySatisfy(line -> assertThat(line.strip()).matches(command + "\\b.*: .+")));
    }

    @Test
    void howSaysHowToCheckAndHowLongItTakes() {
        consult("none", "7", "how");

        assertThat(screen.after("how")).containsExactly(Shared.CATALOGUE.finding("heating-filled-by").how(),
                "About 3 min, hands off.", FILLED);
    }

    @Test
    void whySaysWhatEachAnswerWouldDo() {
        consult("none", "feed-tank-overflow", "why");

        List<String> courses = Shared.CATALOGUE.courses().values().stream().map(c -> c.title()).toList();
        for (Option option : Shared.CATALOGUE.finding("heating-filled-by").options()) {
            assertThat(screen.after("why")).filteredOn(line -> line.contains(option.say())).as(option.id()).singleElement()
                    .asString().containsAnyOf(courses.toArray(String[]::new));
        }
    }

    @Test
    void standingAndReasonsTellWhatIsLikelyAndWhatSpeaksForIt() {
        Job job = new JobCheck(Shared.CATALOGUE).read(Path.of("cases/hawthorn-row.json"));
        Assessment.CauseStanding chief = Shared.ASSESSOR.assess(job).verdict().chief().orElseThrow();

        consult(job, "standing", "reasons");

        assertThat(screen.after("standing")).first().asString().startsWith("System: ");
        assertThat(screen.after("standing")).anySatisfy(line -> assertThat(line).contains(" in 100 ", chief.cause().title()));
        assertThat(screen.after("standing")).contains("Course so far: Full flush.");
        assertThat(String.join("\n", screen.after("reasons"))).contains(chief.cause().title(),
                chief.evidence().get(0).rule().says(), chief.evidence().get(0).rule().because());
    }

    @Test
    void aHotPressureUnderTheColdOneIsRefused() {
        Job job = consult("none", "7", "ask pressure-cold-bar", "1.2", "ask pressure-hot-bar", "0.8");

        assertThat(screen.after("0.8")).first().isEqualTo("your answer: \"pressure-hot-bar\" at 0.8 bar cannot lie below "
                + "\"pressure-cold-bar\" at 1.2 bar; read both again.");
        assertThat(job.answer("pressure-cold-bar")).as("what was answered is kept").contains(new Answer.Reading(1.2, "bar"));
        assertThat(job.isAnswered("pressure-hot-bar")).isFalse();
        assertThat(screen.headings()).as("and the question is asked again").last().isEqualTo(ask("pressure-hot-bar"));
    }

    @Test
    void aColdPressureOverTheHotOneIsRefusedAndTheEarlierOneKept() {
        Job job = consult("none", "7", "ask pressure-cold-bar", "1.2", "ask pressure-hot-bar", "1.8", "change pressure-cold-bar", "2.4");

        assertThat(screen.after("2.4")).first().asString().endsWith("read both again.");
        assertThat(job.answer("pressure-cold-bar")).contains(new Answer.Reading(1.2, "bar"));
        assertThat(saved().answer("pressure-cold-bar")).contains(new Answer.Reading(1.2, "bar"));
    }

    @Test
    void supposingWithReadingsLeavesNoTrace() {
        Job read = Job.begin("test").withRadiators(Stream.of("hall", "lounge", "study", "bath").map(name ->
                new Radiator(name, "ground").withTemperatures(Temperatures.of(66, 47, 70, 44))).toList());
        Job job = consult(read, "none", "7", "filling-loop", "suppose cylinder", "leave");

        assertThat(screen.after("suppose cylinder")).first().asString().endsWith("Nothing has been recorded.");
        assertThat(job.answers().keySet()).containsExactly("red-lines", "complaint", "heating-filled-by");
        assertThat(saved()).isEqualTo(job);
        assertThat(job.radiators()).isEqualTo(read.radiators());
    }

    @Test
    void noAnswerIsMistakenForACommand() {
        consult();
        List<String> commands = commands();
        assertThat(commands).contains("back", "help", "leave");

        for (Finding finding : Shared.CATALOGUE.findings().values()) {
            Map<String, Long> words = finding.options().stream().map(CalloutTest::firstWord)
                    .collect(Collectors.groupingBy(word -> word, Collectors.counting()));
            // A word that several answers begin with, as "radiators" does, answers nothing by itself; a name always answers.
            assertThat(words.keySet().stream().filter(word -> words.get(word) == 1 && finding.option(word).isEmpty()))
                    .as(finding.id()).doesNotContainAnyElementsOf(commands);
        }
    }

    @Test
    void theNameOfAnAnswerIsAnAnswerEvenIfItIsACommandElsewhere() {
        Job job = consult(Job.begin("test").asking("gurgle-place"), "radiators");

        assertThat(job.answer("gurgle-place")).contains(new Answer.One("radiators"));
    }

    /** The first word of what is shown of an answer. */
    private static String firstWord(Option option) {
        return option.say().split("\\W+", 2)[0].toLowerCase(Locale.ROOT);
    }

    /** Words offered at the first question that are no answers to it. */
    private List<String> commands() {
        List<String> commands = new ArrayList<>(screen.offered());
        commands.removeAll(Shared.CATALOGUE.finding("red-lines").optionIds());
        return commands;
    }

    private Job consult(String... typed) {
        return consult(Job.begin("test"), typed);
    }

    private Job consult(Job job, String... typed) {
        screen = new ScriptedScreen(typed);
        Callout.Engine engine = new Callout.Engine(Shared.ASSESSOR, new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE));
        return new Callout(screen, Shared.CATALOGUE, () -> engine, job, file()).run();
    }

    private Path file() {
        return folder.resolve("test.json");
    }

    private Job saved() {
        return new JobCheck(Shared.CATALOGUE).read(file());
    }

    private static String ask(String finding) {
        return Shared.CATALOGUE.finding(finding).ask();
    }

    /** Drawn and planned at any question, and the question then still waits. */
    @Test
    void theSystemIsDrawnAndTheWorkPlannedAtAnyQuestion() {
        consult("none", "radiators-cold-at-base", "loft-tank", "cylinder", "arrangement", "workplan", "leave");

        assertThat(String.join("\n", screen.after("arrangement"))).contains("NEUTRAL POINT", "IF OPEN-VENTED");
        assertThat(String.join("\n", screen.after("workplan"))).contains("No cleanse is planned here", "A cleanse may be planned when");
    }
}
