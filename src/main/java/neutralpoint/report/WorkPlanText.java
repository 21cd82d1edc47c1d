package neutralpoint.report;

import java.util.List;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Moment;
import neutralpoint.report.text.Wrap;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.Stage;
import neutralpoint.workplan.WorkPlan;
import neutralpoint.workplan.figures.Figure;

/** A work plan as plain text: what forbids it first, then what to bring and agree, the steps, and the figures. */
public final class WorkPlanText {
    private final int width;
    private final boolean sums;
    private final CautionOnce once = new CautionOnce();
    private final StringBuilder out = new StringBuilder();

    private WorkPlanText(int width, boolean sums) {
        this.width = width;
        this.sums = sums;
    }

    /**
     * @param sums true to print the arithmetic of each figure
     */
    public static String of(WorkPlan plan, Catalogue catalogue, int width, boolean sums) {
        WorkPlanText text = new WorkPlanText(width, sums);
        text.write(plan, catalogue);
        return text.out.toString().stripTrailing();
    }

    private void write(WorkPlan plan, Catalogue catalogue) {
        plan.assessment().stops().forEach(s -> line(StopLines.title(s), ""));
        // What a danger asks comes before anything else on the page.
        steps(plan, catalogue, true);
        plan.assessment().stops().forEach(s -> StopLines.rest(s).forEach(l -> line(l, "  ")));
        plan.assessment().stopCautions().stream().filter(c -> !once.isSaid(c)).forEach(c -> line("Caution: " + once.say(c), "  "));
        line("Job: " + plan.assessment().job().id(), "");
        line("System: " + plan.assessment().arrangement().inWords(), "");
        line("Course: " + WorkPlanWords.course(plan, catalogue), "");
        plan.refusal().ifPresent(r -> {
            heading("No " + r.what() + " is planned here");
            line(r.because(), "");
            r.first().forEach(f -> line("- First: " + f, "  "));
            line("- " + (r.what().equals("work") ? "Work" : "A cleanse") + " may be planned when: " + r.then(), "  ");
        });
        list("Bring", plan.lists().bring());
        list("Tell and agree beforehand", plan.lists().agree());
        list("Record before starting", plan.lists().recordFirst());
        cautions("Cautions", WorkPlanWords.cautionsOfNoStep(plan, false));
        steps(plan, catalogue, false);
        figures(plan);
        list("Restore", plan.lists().restore());
        cautions(CautionView.title(Moment.LEAVING), WorkPlanWords.cautionsOfNoStep(plan, true));
        list("Measure, to know more", plan.quantities().toMeasure());
    }

    private void steps(WorkPlan plan, Catalogue catalogue, boolean ofDanger) {
        Stage stage = null;
        int n = 1;
        for (PlanStep s : plan.steps()) {
            if (ofDanger != (s.stage() == Stage.MAKE_SAFE)) {
                n++;
                continue;
            }
            if (s.stage() != stage) {
                stage = s.stage();
                heading(WorkPlanWords.title(stage));
            }
            String number = n++ + ". ";
            String indent = " ".repeat(number.length());
            line(number + s.says() + " (" + WorkPlanWords.minutes(plan.minutes(s)) + ")", indent);
            line(indent + "Done when: " + s.proves(), indent + "  ");
            s.caution().ifPresent(c -> line(indent + "Caution: " + once.say(catalogue.caution(c)), indent + "  "));
            if (!ofDanger) {
                line(indent + s.because(), indent);
            }
        }
    }

    private void figures(WorkPlan plan) {
        if (plan.figures().isEmpty()) {
            return;
        }
        heading("Figures");
        for (Figure f : plan.figures()) {
            line("- " + f.title() + ": " + f.shown(), "  ");
            if (sums) {
                f.sums().forEach(s -> line("    " + s, "      "));
                line("    (" + f.source() + ")", "      ");
            }
        }
        plan.quantities().dumps().forEach(d -> line("- " + d.radiator() + ": " + d.litres().shown()
                + d.minutes().map(m -> ", " + m.shown()).orElse(""), "  "));
    }

    private void list(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            heading(title);
            lines.forEach(l -> line("- " + l, "  "));
        }
    }

    private void cautions(String title, List<Caution> cautions) {
        list(title, cautions.stream().filter(c -> !once.isSaid(c)).map(once::say).toList());
    }

    private void heading(String words) {
        out.append('\n');
        line(words, "");
    }

    private void line(String words, String indent) {
        String first = words.substring(0, words.length() - words.stripLeading().length());
        out.append(Wrap.to(width, first, indent.isEmpty() ? first : indent, words.strip())).append('\n');
    }
}
