package neutralpoint.console;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Option;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.consult.NextQuestion;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Where;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.report.AssessmentText;
import neutralpoint.report.CautionView;
import neutralpoint.report.SumsText;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/** One call-out at the keyboard, from the first question to the verdict; saved after every answer. */
public final class Callout {
    private static final List<String> COMMANDS = List.of("how", "why", "standing", "reasons", "back", "change", "ask",
            "unchecked", "suppose", "challenge", "radiators", "gauge", "sums", "arrangement", "workplan", "cautions", "verdict", "save", "leave",
            "help", EmergencyDialogue.WORD);
    /** Commands that may be followed by more words. */
    private static final Set<String> WITH_WORDS = Set.of("change", "ask", "suppose", "challenge", "save");
    private static final int LONG_LIST = 8;
    private static final String ANSWER = "answer";
    private static final int WORTH_ASKING = 3;

    private final Screen screen;
    private final Catalogue catalogue;
    private final Supplier<Engine> engine;
    private final AnswerWords words;
    private final CalloutViews telling;
    private final JobSaver record;
    private Job job;
    private Job questionChosenFor;
    private Optional<Finding> question = Optional.empty();
    private Job verdictShownFor;
    private boolean left;
    /** The question last shown in full; asking it again after a command needs only its first line. */
    private String lastPrompt = "";
    private List<String> announced = List.of();

    /** What judges and looks ahead; made on another thread while the first question is read. */
    public record Engine(Assessor assessor, QuestionChooser lookahead) {}

    public Callout(Screen screen, Catalogue catalogue, Supplier<Engine> engine, Job job, Path file) {
        this.record = new JobSaver(screen, file, job);
        this.screen = new EmergencyScreen(screen, new EmergencyDialogue(screen, catalogue, record, LocalDateTime::now));
        this.catalogue = catalogue;
        this.engine = engine;
        this.words = new AnswerWords(new JobCheck(catalogue));
        this.telling = new CalloutViews(this.screen, catalogue);
        this.job = job;
    }

    /**
     * Holds the conversation; returns the job as it was left.
     *
     * @throws BadInput at the end, if the job could not be saved; its text has then been shown
     */
    public Job run() {
        screen.say("Neutral Point. Type a number or words; \"help\" lists what else you can type.");
        screen.say("\"0\" or \"emergency\" at any time if something goes wrong.");
        screen.say("This job is kept in " + record.file() + " after every answer.");
        while (!left) {
            if (job != questionChosenFor) {
                // Looking ahead takes a moment, and what was merely read has changed nothing.
                question = next();
                questionChosenFor = job;
            }
            if (question.isEmpty()) {
                end();
            } else {
                ask(question.get());
            }
        }
        record.close(job);
        return job;
    }

    /** True when the last answers left a red line standing. */
    public boolean stopStands() {
        return !announced.isEmpty() || !job.emergenciesStanding().isEmpty();
    }

    /** Nothing more to ask: the verdict, once for each set of answers, and an open prompt. */
    private void end() {
        if (!job.equals(verdictShownFor)) {
            verdict();
            verdictShownFor = job;
            screen.say((announced.isEmpty() ? "Nothing left on site would change this."
                    : "A stop stands, so no more is asked.")
                    + " \"workplan\" plans the work; \"change\" and a finding looks at one again; or \"leave\".");
        }
        command(screen.ask("> ", COMMANDS), null);
    }

    private Optional<Finding> next() {
        if (job.asking().isPresent()) {
            return job.asking().map(catalogue::finding);
        }
        if (!job.isAnswered(Catalogue.RED_LINES)) {
            return Optional.of(catalogue.finding(Catalogue.RED_LINES));
        }
        // With no red line in sight the complaint can be asked while the rules are still loading.
        if (job.chosen(Catalogue.RED_LINES).isEmpty() && job.emergenciesStanding().isEmpty() && !job.isAnswered(Catalogue.COMPLAINT)) {
            return Optional.of(catalogue.finding(Catalogue.COMPLAINT));
        }
        Assessment now = assess(job);
        record.weighed(now.arrangement().traits());
        announceStops(now);
        return engine.get().lookahead().next(now).map(NextQuestion::finding);
    }

    /** Red lines are shown before anything else, each time they change. */
    private void announceStops(Assessment now) {
        List<String> ids = now.stops().stream().map(Assessment.StopFound::id).toList();
        if (ids.equals(announced)) {
            return;
        }
        announced = ids;
        telling.stops(now);
    }

    private void ask(Finding finding) {
        screen.heading(finding.ask());
        if (!lastPrompt.equals(finding.id() + job.answer(finding.id()))) {
            for (int i = 0; i < finding.options().size(); i++) {
                screen.say(String.format("%3d  %s", i + 1, finding.options().get(i).say()));
            }
            // A long list scrolls its own question off a small screen, so it is asked again below.
            screen.say((finding.options().size() > LONG_LIST ? finding.ask() + " " : "") + CalloutViews.hint(finding, job));
            lastPrompt = finding.id() + job.answer(finding.id());
        }
        List<String> completions = new ArrayList<>(finding.optionIds());
        completions.addAll(COMMANDS);
        String typed = screen.ask("> ", completions);
        command(typed, finding);
    }

    private void command(String typed, Finding finding) {
        job = record.withEmergencies(job);
        if (typed == null) {
            left = true;
            return;
        }
        String first = typed.split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
        String rest = typed.contains(" ") ? typed.split("\\s+", 2)[1] : "";
        if (!rest.isEmpty() && !WITH_WORDS.contains(first) || finding != null && finding.option(first).isPresent()) {
            // "back boiler bangs" is something a householder says, not the command "back"; and where it gurgles may be "radiators".
            first = ANSWER;
        }
        try {
            switch (first) {
                case "" -> screen.say("Type a number or a word, or \"help\".");
                case "help" -> telling.help();
                case EmergencyDialogue.WORD -> questionChosenFor = null;
                case "leave" -> left = true;
                case "save" -> record.keepAs(rest, job);
                case "standing" -> telling.standing(assess(job));
                case "verdict" -> verdict();
                case "radiators" -> radiators();
                case "gauge" -> gauge();
                case "sums" -> screen.line(SumsText.of(assess(job), screen.look()).stripTrailing());
                case "arrangement" -> telling.arrangement(assess(job), new ArrangementQuestionChooser(engine.get().assessor(), catalogue));
                case "workplan" -> telling.workPlan(engine.get().assessor(), job);
                case "cautions" -> telling.cautions(assess(job));
                case "reasons" -> telling.reasons(assess(job));
                case "back" -> back(finding);
                case "change" -> change(rest);
                case "ask" -> pick(rest);
                case "how" -> telling.how(finding);
                case "why" -> telling.why(finding, answer -> assess(job.with(finding.id(), answer)));
                case "suppose" -> suppose(finding, rest);
                case "challenge" -> telling.challenge(assess(job), rest, engine.get().assessor());
                case "unchecked" -> answer(finding, Answer.NOT_CHECKED);
                default -> answer(finding, typed);
            }
        } catch (BadInput e) {
            screen.say(e.getMessage());
        }
    }

    private void answer(Finding finding, String typed) {
        if (finding == null) {
            screen.say("\"" + typed + "\" is not understood here; \"help\" lists what is.");
        } else if (finding.id().equals(Catalogue.COMPLAINT) && typed.matches("[^\\d,]*[a-zA-Z][^\\d,]*") && !typed.equalsIgnoreCase("none")) {
            complaintInWords(finding, typed);
        } else {
            answer(finding, words.read(finding, typed));
        }
    }

    private void answer(Finding finding, Answer answer) {
        if (finding == null) {
            screen.say("There is no question open.");
            return;
        }
        job = new JobCheck(catalogue).together(job.with(finding.id(), answer), new Where("your answer", 0)).asking(null);
        save();
    }

    /** Words of the householder: an answer if they fit one complaint, otherwise the nearest are offered. */
    private void complaintInWords(Finding finding, String typed) {
        List<Option> close = HouseholdWords.options(finding, typed);
        if (close.size() == 1) {
            screen.say("Taken as: " + close.get(0).say() + ".");
            answer(finding, new Answer.Several(List.of(close.get(0).id())));
        } else if (close.isEmpty()) {
            List<Finding> questions = HouseholdWords.findings(catalogue.findings().values(), typed);
            screen.say("No complaint is close to \"" + typed + "\"; type a number from the list.");
            telling.offer(questions);
        } else {
            screen.say("Close to that:");
            close.forEach(o -> screen.say("  " + (finding.options().indexOf(o) + 1) + "  " + o.say()));
            screen.say("Type the number, or several with commas.");
        }
    }

    /** Another question than the one chosen: by its name, or by words of it. */
    private void pick(String typed) {
        List<Finding> close = catalogue.findFinding(typed).map(List::of)
                .orElseGet(() -> HouseholdWords.findings(catalogue.findings().values(), typed));
        if (close.size() == 1) {
            job = job.asking(close.get(0).id());
            save();
        } else if (close.isEmpty()) {
            screen.say("No question is close to that. Type \"ask\" and a word, such as \"ask magnet\".");
        } else {
            telling.offer(close);
        }
    }

    private void save() {
        record.keep(job);
    }

    private void back(Finding finding) {
        List<String> answered = new ArrayList<>(job.answers().keySet());
        int at = finding == null || !answered.contains(finding.id()) ? answered.size() : answered.indexOf(finding.id());
        if (at == 0) {
            screen.say("This is the first question.");
        } else {
            job = job.asking(answered.get(at - 1));
            save();
        }
    }

    private void change(String id) {
        if (!job.isAnswered(id)) {
            telling.answered(job);
            screen.say((id.isEmpty() ? "Type \"change\" and one of these names."
                    : "\"" + id + "\" has not been answered" + Nearest.hint(id, job.answers().keySet())));
        } else {
            job = job.asking(id);
            save();
        }
    }

    private void suppose(Finding finding, String typed) {
        if (finding == null || typed.isBlank()) {
            screen.say("Type \"suppose\" and an answer, to see what it would do without giving it.");
        } else {
            telling.supposed(assess(job.with(finding.id(), words.read(finding, typed))));
        }
    }

    private void radiators() {
        RadiatorEditor desk = new RadiatorEditor(screen, record, job);
        job = desk.run();
        left = desk.isLeft();
    }

    private void gauge() {
        GaugeLogEditor desk = new GaugeLogEditor(screen, record, job, LocalDateTime::now);
        job = desk.run();
        left = desk.isLeft();
    }

    private void verdict() {
        Assessment a = assess(job);
        screen.line("");
        screen.line(AssessmentText.of(a, engine.get().lookahead().rank(a, WORTH_ASKING), screen.look(), CautionView.AT_A_PROMPT));
    }

    private Assessment assess(Job j) {
        return engine.get().assessor().assess(j);
    }
}
