package neutralpoint.console;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Option;
import neutralpoint.consult.Lookahead;
import neutralpoint.consult.NextQuestion;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.report.AssessmentText;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/** One call-out at the keyboard, from the first question to the verdict; saved after every answer. */
public final class Callout {
    private static final List<String> COMMANDS = List.of("how", "why", "standing", "reasons", "back", "change",
            "unchecked", "suppose", "verdict", "save", "leave", "help");
    private static final int WORTH_ASKING = 3;

    private final Screen screen;
    private final Catalogue catalogue;
    private final Supplier<Engine> engine;
    private final AnswerWords words;
    private final Path file;
    private Job job;
    private boolean left;
    /** The question last shown in full; asking it again after a command needs only its first line. */
    private String shown = "";
    private List<String> announced = List.of();

    /** What judges and looks ahead; made on another thread while the first question is read. */
    public record Engine(Assessor assessor, Lookahead lookahead) {}

    public Callout(Screen screen, Catalogue catalogue, Supplier<Engine> engine, Job job, Path file) {
        this.screen = screen;
        this.catalogue = catalogue;
        this.engine = engine;
        this.words = new AnswerWords(new JobCheck(catalogue));
        this.job = job;
        this.file = file;
    }

    /** Holds the conversation; returns the job as it was left. */
    public Job run() {
        screen.say("Neutral Point. Type a number or words; \"help\" lists what else you can type.");
        screen.say("This job is kept in " + file + " after every answer.");
        while (!left) {
            Optional<Finding> next = next();
            if (next.isEmpty()) {
                verdict();
                screen.say((announced.isEmpty() ? "Nothing left on site would change this."
                        : "A stop stands, so no more is asked.")
                        + " Type \"change\" and a finding to look at one again, or \"leave\".");
                command(screen.ask("> ", COMMANDS), null);
            } else {
                ask(next.get());
            }
        }
        screen.say("Kept in " + file + ".");
        return job;
    }

    private Optional<Finding> next() {
        if (job.asking().isPresent()) {
            return job.asking().map(catalogue::finding);
        }
        for (String first : List.of(Catalogue.RED_LINES, Catalogue.COMPLAINT)) {
            if (!job.isAnswered(first)) {
                return Optional.of(catalogue.finding(first));
            }
        }
        Assessment now = assess(job);
        announceStops(now);
        return engine.get().lookahead().next(now).map(NextQuestion::finding);
    }

    /** Red lines are shown before anything else, each time they change. */
    private void announceStops(Assessment now) {
        List<String> ids = now.stops().stream().map(Assessment.StopFound::id).toList();
        List<String> before = announced;
        if (!ids.equals(before)) {
            announced = ids;
            now.stops().forEach(s -> {
                screen.heading("STOP: " + s.title());
                screen.say("Now: " + s.action());
                screen.say("Because: " + s.because());
            });
        }
        if (!ids.isEmpty() && !ids.equals(before)) {
            screen.say("Deal with this before anything else.");
        }
    }

    private void ask(Finding finding) {
        screen.heading(finding.ask());
        if (!shown.equals(finding.id() + job.answer(finding.id()))) {
            for (int i = 0; i < finding.options().size(); i++) {
                screen.say(String.format("%3d  %s", i + 1, finding.options().get(i).say()));
            }
            screen.say(hint(finding));
            shown = finding.id() + job.answer(finding.id());
        }
        List<String> completions = new ArrayList<>(finding.optionIds());
        completions.addAll(COMMANDS);
        String typed = screen.ask("> ", completions);
        command(typed, finding);
    }

    private String hint(Finding finding) {
        String now = job.answer(finding.id()).map(a -> " Now: " + shown(a) + ".").orElse("");
        return switch (finding.type()) {
            case SEVERAL_OF -> "Numbers with commas, or none." + now;
            case NUMBER -> "A number in " + finding.unit() + "." + now;
            case PER_RADIATOR -> "Each radiator as name=number, with commas." + now;
            default -> "One number or word, or \"unchecked\"." + now;
        };
    }

    private void command(String typed, Finding finding) {
        if (typed == null) {
            left = true;
            return;
        }
        String first = typed.split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
        String rest = typed.contains(" ") ? typed.split("\\s+", 2)[1] : "";
        try {
            switch (first) {
                case "" -> screen.say("Type a number or a word, or \"help\".");
                case "help" -> help();
                case "leave" -> left = true;
                case "save" -> save();
                case "standing" -> standing(assess(job));
                case "verdict" -> verdict();
                case "reasons" -> reasons();
                case "back" -> back(finding);
                case "change" -> change(rest);
                case "how" -> how(finding);
                case "why" -> why(finding);
                case "suppose" -> suppose(finding, rest);
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
        } else if (finding.id().equals(Catalogue.COMPLAINT) && typed.matches(".*[a-zA-Z].*") && !typed.equals("none")) {
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
        job = job.with(finding.id(), answer).asking(null);
        save();
    }

    /** Words of the householder: an answer if they fit one complaint, otherwise the nearest are offered. */
    private void complaintInWords(Finding finding, String typed) {
        List<Option> close = ComplaintWords.match(finding, typed);
        if (close.size() == 1) {
            screen.say("Taken as: " + close.get(0).say() + ".");
            answer(finding, new Answer.Several(List.of(close.get(0).id())));
        } else if (close.isEmpty()) {
            screen.say("No complaint is close to \"" + typed + "\"; type a number from the list.");
        } else {
            screen.say("Close to that:");
            close.forEach(o -> screen.say("  " + (finding.options().indexOf(o) + 1) + "  " + o.say()));
            screen.say("Type the number, or several with commas.");
        }
    }

    private void save() {
        JobFile.write(file, job);
    }

    private void back(Finding finding) {
        List<String> answered = new ArrayList<>(job.answers().keySet());
        int at = finding == null || !answered.contains(finding.id()) ? answered.size() : answered.indexOf(finding.id());
        if (at == 0) {
            screen.say("This is the first question.");
        } else {
            job = job.asking(answered.get(at - 1));
        }
    }

    private void change(String id) {
        if (!job.isAnswered(id)) {
            screen.say("Answered so far:");
            job.answers().forEach((finding, answer) -> screen.say("  " + finding + ": " + shown(answer)));
            screen.say((id.isEmpty() ? "Type \"change\" and one of these names."
                    : "\"" + id + "\" has not been answered" + Nearest.hint(id, job.answers().keySet())));
        } else {
            job = job.asking(id);
        }
    }

    private void how(Finding finding) {
        if (finding == null) {
            screen.say("There is no question open.");
            return;
        }
        screen.say(finding.how());
        screen.say("About " + finding.minutes() + " min, " + finding.intrusive().replace('-', ' ')
                + (finding.tools().isEmpty() ? "." : ". Needs: " + String.join(", ", finding.tools()) + "."));
        finding.caution().map(catalogue::caution).ifPresent(c -> screen.say("Caution: " + c.text()));
    }

    private void why(Finding finding) {
        if (finding == null || finding.options().isEmpty()) {
            screen.say("Nothing can be said of this question's answers one by one.");
            return;
        }
        screen.say("What each answer would do:");
        for (Option option : finding.options()) {
            Answer answer = finding.type() == AnswerType.SEVERAL_OF ? new Answer.Several(List.of(option.id()))
                    : new Answer.One(option.id());
            Assessment then = assess(job.with(finding.id(), answer));
            screen.say("  " + option.say() + ": " + lead(then));
        }
    }

    private void suppose(Finding finding, String typed) {
        if (finding == null || typed.isBlank()) {
            screen.say("Type \"suppose\" and an answer, to see what it would do without giving it.");
            return;
        }
        Assessment then = assess(job.with(finding.id(), words.read(finding, typed)));
        screen.say("If so: " + lead(then) + " Nothing has been recorded.");
        standing(then);
    }

    private static String lead(Assessment a) {
        return a.verdict().course().title() + a.verdict().chief().map(c -> ", for " + c.cause().title()
                + " (" + Math.round(c.probability() * 100) + " in 100).").orElse(".");
    }

    private void standing(Assessment a) {
        screen.say("System: " + a.arrangement().title() + " (" + a.arrangement().status() + ").");
        for (Assessment.CauseStanding c : a.worthShowing(0.05).stream().limit(8).toList()) {
            String bar = "#".repeat((int) Math.round(c.probability() * 10));
            screen.say(String.format("%3d in 100 %-10s %s (%s)", Math.round(c.probability() * 100), bar,
                    c.cause().title(), c.status()));
        }
        screen.say("Course so far: " + a.verdict().course().title() + ".");
    }

    private void reasons() {
        assess(job).causes().stream().limit(3).forEach(c -> {
            screen.say(c.cause().title() + " (" + c.status() + "):");
            c.evidence().stream().limit(6).forEach(e ->
                    screen.say(String.format("  %+.0f  %s %s", e.decibans(), e.rule().says(), e.rule().because())));
        });
    }

    private void verdict() {
        Assessment a = assess(job);
        screen.line("");
        screen.line(AssessmentText.of(a, engine.get().lookahead().rank(a, WORTH_ASKING), screen.width() - 1));
    }

    private void help() {
        List.of("how: how to check this", "why: what each answer would do", "standing: what is likely so far",
                "reasons: how it got there", "back: the question before", "change NAME: an earlier answer",
                "unchecked: leave this open", "suppose ANSWER: see what an answer would do, without giving it",
                "verdict: the verdict as it stands", "save: keep the job now", "leave: keep the job and stop")
                .forEach(l -> screen.say("  " + l));
    }

    private Assessment assess(Job j) {
        return engine.get().assessor().assess(j);
    }

    private static String shown(Answer answer) {
        if (answer instanceof Answer.One one) {
            return one.choice();
        }
        if (answer instanceof Answer.Several several) {
            return several.choices().isEmpty() ? "none" : String.join(", ", several.choices());
        }
        if (answer instanceof Answer.Reading reading) {
            return reading.value() + " " + reading.unit();
        }
        return answer instanceof Answer.ByRadiator by ? by.choices().toString() : "not checked";
    }
}
