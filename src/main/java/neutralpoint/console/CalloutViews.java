package neutralpoint.console;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Option;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.consult.Challenge;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.report.ArrangementSheet;
import neutralpoint.report.CautionView;
import neutralpoint.report.ChallengeText;
import neutralpoint.report.StopLines;
import neutralpoint.report.WorkPlanText;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.workplan.WorkPlan;

/** What is told at a prompt without anything being answered: how, why, where things stand. */
final class CalloutViews {
    private static final int OFFERED = 6;

    private final Screen screen;
    private final Catalogue catalogue;

    CalloutViews(Screen screen, Catalogue catalogue) {
        this.screen = screen;
        this.catalogue = catalogue;
    }

    /** What must be made safe first. */
    void stops(Assessment a) {
        a.stops().forEach(s -> {
            screen.heading(StopLines.title(s));
            StopLines.of(s).stream().skip(1).forEach(screen::say);
        });
        a.stopCautions().forEach(c -> screen.say("Caution: " + c.text()));
        if (!a.stops().isEmpty()) {
            screen.say("Deal with this before anything else.");
        }
    }

    /** Questions to ask instead, if there are any. */
    void offer(List<Finding> close) {
        if (!close.isEmpty()) {
            screen.say("Questions close to that:");
            close.stream().limit(OFFERED).forEach(f -> screen.say("  ask " + f.id() + ": " + f.ask()));
        }
    }

    /** Everything answered so far. */
    void answered(Job job) {
        screen.say("Answered so far:");
        job.answers().forEach((finding, answer) -> screen.say("  " + finding + ": " + shown(answer)));
    }

    /** How to check a finding, what it takes and what to mind. */
    void how(Finding finding) {
        screen.say(finding.how());
        screen.say("About " + finding.minutes() + " min, " + finding.intrusive().replace('-', ' ')
                + (finding.tools().isEmpty() ? "." : ". Needs: " + String.join(", ", finding.tools()) + "."));
        catalogue.cautions(finding.cautions()).forEach(c -> screen.say("Caution: " + c.text()));
    }

    /** What each answer would do to the verdict. */
    void why(Finding finding, Function<Answer, Assessment> suppose) {
        if (finding.options().isEmpty()) {
            screen.say("Nothing can be said of this question's answers one by one.");
            return;
        }
        screen.say("What each answer would do:");
        for (Option option : finding.options()) {
            screen.say("  " + option.say() + ": " + lead(suppose.apply(finding.answering(option))));
        }
    }

    /** Where things would stand if an answer were given. */
    void supposed(Assessment then) {
        screen.say("If so: " + lead(then) + " Nothing has been recorded.");
        standing(then);
    }

    private static String lead(Assessment a) {
        return a.verdict().course().title() + a.verdict().chief().map(c -> ", for " + c.cause().title()
                + " (" + c.inHundred() + " in 100).").orElse(".");
    }

    /** The causes worth showing, ranked, each with a bar. */
    void standing(Assessment a) {
        screen.say("System: " + a.arrangement().inWords() + ".");
        for (Assessment.CauseStanding c : a.worthShowing(0.05).stream().limit(8).toList()) {
            String bar = "#".repeat((int) Math.round(c.probability() * 10));
            screen.say(String.format("%3d in 100 %-10s %s (%s)", c.inHundred(), bar,
                    c.cause().title(), c.status()));
        }
        screen.say("Course so far: " + a.verdict().course().title() + ".");
    }

    /** How the first three causes came to stand where they do. */
    void reasons(Assessment a) {
        a.worthShowing(0.05).stream().limit(3).forEach(c -> {
            screen.say(c.cause().title() + " (" + c.status() + "):");
            c.evidence().stream().limit(6).forEach(e ->
                    screen.say(String.format("  %+.0f  %s %s", e.decibans(), e.rule().says(), e.explainedBy()
                            .map(by -> "Already explained by: " + catalogue.cause(by).title() + ".").orElse(e.rule().because()))));
        });
    }

    void help() {
        List.of("0 or emergency: it went wrong; what to do now", "emergency over: it is over", "how: how to check this", "why: what each answer would do", "standing: what is likely so far",
                "reasons: how it got there", "back: the question before", "change NAME: an earlier answer",
                "ask WORDS: another question than this",
                "unchecked: leave this open", "suppose ANSWER: see what an answer would do, without giving it",
                "challenge CAUSE: hold your own opinion against what was found",
                "radiators: enter or import what was read on each radiator", "gauge: enter the pressure gauge over time",
                "sums: the arithmetic behind what was worked out", "arrangement: the system drawn, and how its feed, vent or sealed side is handled",
                "workplan: the work for this house, step by step", "cautions: all that must be minded, by when", "verdict: the verdict as it stands", "save NAME.json: keep the job now, under another name if you give one", "leave: keep the job and stop")
                .forEach(l -> screen.say("  " + l));
    }

    /** The system drawn, its checks, and how an open and a sealed side are handled. */
    void arrangement(Assessment a, ArrangementQuestionChooser question) {
        screen.line(ArrangementSheet.of(a, catalogue, question.best(a), screen.width() - 1, !screen.colour()));
    }

    /** What is to be said to somebody who is sure of a cause, a system or a course. */
    void challenge(Assessment a, String typed, Assessor assessor) {
        if (typed.isBlank()) {
            screen.say("Type \"challenge\" and what you say it is: a cause, a kind of system or a course.");
        } else {
            screen.line(ChallengeText.of(a, Challenge.of(a, Challenge.named(typed, catalogue), assessor, catalogue), screen.width() - 1).stripTrailing());
        }
    }

    /** All that must be minded, by when. */
    void cautions(Assessment a) {
        String all = CautionView.ALL.of(a, screen.width() - 1);
        screen.line(all.isEmpty() ? "No caution goes with this yet." : all);
    }

    /** The work for this house, step by step. */
    void workPlan(Assessor assessor, Job job) {
        screen.line("");
        screen.line(WorkPlanText.of(WorkPlan.of(assessor, catalogue, job, Optional.empty()), catalogue, screen.width() - 1, false));
    }

    /** How to answer a question, and the answer it has. */
    static String hint(Finding finding, Job job) {
        String now = job.answer(finding.id()).map(a -> " Now: " + shown(a) + ".").orElse("");
        return switch (finding.type()) {
            case SEVERAL_OF -> "Numbers with commas, or none." + now;
            case NUMBER -> "A number in " + finding.unit() + (finding.lowest() <= 0 ? "; \"0 " + finding.unit() + "\" for nothing." : ".") + now;
            case PER_RADIATOR -> "Each radiator as name=number, with commas." + now;
            default -> "One number or word, or \"unchecked\"." + now;
        };
    }

    /** An answer in words. */
    static String shown(Answer answer) {
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
