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
import neutralpoint.catalogue.Ids.FindingId;
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
    private Optional<Job> questionChosenFor = Optional.empty();
    private Optional<Finding> question = Optional.empty();
    private Optional<Job> verdictShownFor = Optional.empty();
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
            if (!questionChosenFor.equals(Optional.of(job))) {
                // Looking ahead takes a moment, and what was merely read has changed nothing.
                question = next();
                questionChosenFor = Optional.of(job);
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
        if (!verdictShownFor.equals(Optional.of(job))) {
            verdict();
            verdictShownFor = Optional.of(job);
            screen.say((announced.isEmpty() ? "Nothing left on site would change this."
                    : "A stop stands, so no more is asked.")
                    + " \"workplan\" plans the work; \"change\" and a finding looks at one again; or \"leave\".");
        }
        take(screen.ask("> ", COMMANDS));
    }

    private Optional<Finding> next() {
        if (job.asking().isPresent()) {
            return job.asking().map(catalogue::finding);
        }
        if (!job.isAnswered(FindingId.RED_LINES)) {
            return Optional.of(catalogue.finding(FindingId.RED_LINES));
        }
        // With no red line in sight the complaint can be asked while the rules are still loading.
        if (job.chosen(FindingId.RED_LINES).isEmpty() && job.emergenciesStanding().isEmpty() && !job.isAnswered(FindingId.COMPLAINT)) {
            return Optional.of(catalogue.finding(FindingId.COMPLAINT));
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
        take(screen.ask("> ", completions));
    }

    /** Deals with what was typed; nothing typed is leaving. */
    private void take(Optional<String> line) {
        job = record.withEmergencies(job);
        line.ifPresentOrElse(this::command, () -> left = true);
    }

    private void command(String typed) {
        String first = typed.split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
        String rest = typed.contains(" ") ? typed.split("\\s+", 2)[1] : "";
        if (!rest.isEmpty() && !WITH_WORDS.contains(first) || isOption(first)) {
            // "back boiler bangs" is something a householder says, not the command "back"; and where it gurgles may be "radiators".
            first = ANSWER;
        }
        try {
            switch (first) {
                case "" -> screen.say("Type a number or a word, or \"help\".");
                case "help" -> telling.help();
                case EmergencyDialogue.WORD -> questionChosenFor = Optional.empty();
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
                case "back" -> back();
                case "change" -> change(rest);
                case "ask" -> pick(rest);
                case "how" -> question.ifPresentOrElse(telling::how, this::noQuestion);
                case "why" -> question.ifPresentOrElse(
                        asked -> telling.why(asked, answer -> assess(job.with(asked.id(), answer))), this::noQuestion);
                case "suppose" -> suppose(rest);
                case "challenge" -> telling.challenge(assess(job), rest, engine.get().assessor());
                case "unchecked" -> question.ifPresentOrElse(asked -> answer(asked, Answer.NOT_CHECKED), this::noQuestion);
                default -> question.ifPresentOrElse(asked -> answer(asked, typed),
                        () -> screen.say("\"" + typed + "\" is not understood here; \"help\" lists what is."));
            }
        } catch (BadInput e) {
            screen.say(e.getMessage());
        }
    }

    private boolean isOption(String word) {
        return question.flatMap(asked -> asked.option(word)).isPresent();
    }

    private void noQuestion() {
        screen.say("There is no question open.");
    }

    private void answer(Finding finding, String typed) {
        if (finding.id().equals(FindingId.COMPLAINT) && typed.matches("[^\\d,]*[a-zA-Z][^\\d,]*") && !typed.equalsIgnoreCase("none")) {
            complaintInWords(finding, typed);
        } else {
            answer(finding, words.read(finding, typed));
        }
    }

    private void answer(Finding finding, Answer answer) {
        job = new JobCheck(catalogue).together(job.with(finding.id(), answer), new Where("your answer", 0)).askingNothing();
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

    private void back() {
        List<String> answered = new ArrayList<>(job.answers().keySet());
        int at = question.map(asked -> answered.indexOf(asked.id())).filter(place -> place >= 0).orElse(answered.size());
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

    private void suppose(String typed) {
        if (question.isEmpty() || typed.isBlank()) {
            screen.say("Type \"suppose\" and an answer, to see what it would do without giving it.");
        } else {
            telling.supposed(assess(job.with(question.get().id(), words.read(question.get(), typed))));
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
