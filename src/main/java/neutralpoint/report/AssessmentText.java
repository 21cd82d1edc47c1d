package neutralpoint.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import neutralpoint.consult.NextQuestion;
import neutralpoint.report.chart.HeatStrip;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Certainty;
import neutralpoint.rulebase.WeighedEvidence;

/** An assessment as plain text. Says first what to do now. */
public final class AssessmentText {
    private static final int REASONS = 3;

    private final DisplayOptions look;
    private final CautionView cautions;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    private AssessmentText(DisplayOptions look, CautionView cautions) {
        this.look = look;
        this.cautions = cautions;
        this.width = look.width();
    }

    /**
     * @param cautions how many of the cautions are shown; those of a stop always are
     */
    public static String of(Assessment a, DisplayOptions look, CautionView cautions) {
        AssessmentText text = new AssessmentText(look, cautions);
        text.write(a);
        return text.out.toString();
    }

    /** The same with the questions to ask next. */
    public static String of(Assessment a, List<NextQuestion> next, DisplayOptions look, CautionView cautions) {
        AssessmentText text = new AssessmentText(look, cautions);
        text.write(a);
        text.questions(a, next);
        return text.out.toString();
    }

    private void write(Assessment a) {
        a.stops().forEach(s -> StopLines.of(s).forEach(l -> out.append(Wrap.keepingIndent(width, l)).append('\n')));
        a.stopCautions().forEach(c -> line("Caution: " + CautionView.whole(c), "  "));
        line("Job: " + a.job().id(), "");
        line("System: " + a.arrangement().inWords(), "");
        a.arrangement().contradictions().forEach(c -> line("- look again: " + c, "  "));
        unexplained(a);
        heading("Course: " + a.verdict().course().title() + " (" + a.verdict().certainty().word() + ")");
        boolean undecided = a.verdict().certainty() == Certainty.UNDECIDED && !a.isReferredByStop();
        forWhat(a).ifPresent(f -> line((undecided ? "Between: " : "For: ") + f, ""));
        if (undecided) {
            line("Meanwhile: " + a.verdict().course().means(), "");
        }
        a.verdict().because().stream().limit(REASONS).forEach(b -> line("- " + b, "  "));
        a.verdict().chief().filter(c -> !a.isReferredByStop()).ifPresent(this::evidence);
        readings(a);
        if (!a.worthShowing(0.1).isEmpty()) {
            heading("What stands first");
        }
        a.worthShowing(0.1).stream().limit(6).forEach(c -> line(String.format("%3d %%  %s (%s)",
                c.inHundred(), c.cause().title(), c.status()), "       "));
        if (!a.order().isEmpty()) {
            heading("Order of work");
            int n = 1;
            for (Assessment.WorkStep s : a.order()) {
                line(n++ + ". " + s.course().map(c -> c.title() + ": ").orElse("") + s.action(), "   ");
                s.because().forEach(b -> out.append(Wrap.to(width, "   ", "   ", b)).append('\n'));
            }
        }
        a.cleansing().ifPresent(this::cleansing);
        String toMind = cautions.of(a, width);
        if (!toMind.isEmpty()) {
            heading("Cautions");
            out.append(toMind).append('\n');
        }
    }

    /** Strong signs of something else are said before the course: both may be so. */
    private void unexplained(Assessment a) {
        if (!a.unexplained().isEmpty() && !a.isReferredByStop()) {
            heading("Look for this as well: the course below does not explain it");
            a.unexplained().forEach(u -> line("- " + u.rule().says(), "  "));
        }
    }

    /** What the course answers: the danger that has it referred, or else the chief cause. */
    private static Optional<String> forWhat(Assessment a) {
        return a.isReferredByStop()
                ? Optional.of(a.stops().stream().filter(Assessment.StopFound::isReferral).map(Assessment.StopFound::title)
                        .collect(Collectors.joining("; ")))
                : a.verdict().certainty() == Certainty.UNDECIDED
                ? Optional.of(a.rivals().stream().map(AssessmentText::chance).collect(Collectors.joining(", or "))).filter(r -> !r.isEmpty())
                : a.verdict().chief().map(AssessmentText::chance);
    }

    private static String chance(Assessment.CauseStanding c) {
        return c.cause().title() + " (" + c.inWords() + ")";
    }

    private void questions(Assessment a, List<NextQuestion> next) {
        heading("Not checked, and could still matter");
        if (a.isReferredByStop()) {
            line("No answer changes this until it has been made safe.", "");
        } else if (next.isEmpty()) {
            line("Nothing left to ask would change this.", "");
        } else {
            if (a.verdict().certainty() == Certainty.UNDECIDED) {
                next.stream().filter(q -> q.changesCourse() > 0).limit(1).forEach(this::whatEachAnswerLeadsTo);
            }
            next.forEach(q -> line("- " + q.finding().ask() + " (" + q.finding().minutes() + " min; "
                    + (q.changesCourse() > 0 ? "could change the course" : "would not change the course") + ")", "  "));
        }
    }

    /** The look that parts the rivals, with what each outcome would lead to. */
    private void whatEachAnswerLeadsTo(NextQuestion q) {
        line("Look next: " + q.finding().ask(), "");
        q.outcomes().stream().collect(Collectors.groupingBy(o -> o.course().title(), LinkedHashMap::new,
                Collectors.mapping(o -> o.answer().say(), Collectors.joining(", or "))))
                .forEach((course, answers) -> line("- " + answers + ": " + lowerFirst(course), "  "));
    }

    private void readings(Assessment a) {
        if (!a.workedOut().isEmpty()) {
            heading("From the readings");
            a.workedOut().forEach(w -> line(String.format("%-4s  %s", w.grade().word(), w.says()), "      "));
            a.disagreements().forEach(w -> line("- look again: your answer to " + w.finding().orElseThrow().id()
                    + " differs from this: " + w.says(), "  "));
        }
        String strips = HeatStrip.of(a.job(), look);
        if (!strips.isEmpty()) {
            out.append(a.workedOut().isEmpty() ? "\nFrom the readings\n" : "").append(strips);
        }
    }

    private void cleansing(Assessment.Cleansing c) {
        heading("How to cleanse: " + c.method().title());
        line(c.method().means(), "");
        c.because().stream().limit(REASONS).forEach(b -> line("- " + b, "  "));
        c.avoid().forEach(v -> line("- Not here: " + lowerFirst(v.handling().title()) + ". " + v.because(), "  "));
        c.ruledOut().forEach(r -> line("- Not here: " + lowerFirst(r.method().title()) + ". " + r.because(), "  "));
    }

    private static String lowerFirst(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private void evidence(Assessment.CauseStanding chief) {
        chief.evidence().stream().filter(WeighedEvidence::isFor).limit(REASONS).forEach(e -> line(weighed(e), "       "));
        chief.evidence().stream().filter(e -> !e.isFor()).findFirst().ifPresentOrElse(e -> line(weighed(e), "       "),
                () -> line("Nothing found speaks against it.", ""));
    }

    private static String weighed(WeighedEvidence e) {
        return String.format("%+5.0f  %s", e.decibans(), e.rule().says());
    }

    private void heading(String words) {
        out.append('\n');
        line(words, "");
    }

    private void line(String words, String indent) {
        out.append(Wrap.to(width, "", indent, words)).append('\n');
    }
}
