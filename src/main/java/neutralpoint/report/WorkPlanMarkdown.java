package neutralpoint.report;

import java.util.List;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Moment;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.Stage;
import neutralpoint.workplan.WorkPlan;

/** A work plan as Markdown, to print or to send. */
public final class WorkPlanMarkdown {
    private final CautionOnce once = new CautionOnce();
    private final StringBuilder out = new StringBuilder();

    private WorkPlanMarkdown() {}

    public static String of(WorkPlan plan, Catalogue catalogue) {
        WorkPlanMarkdown text = new WorkPlanMarkdown();
        text.write(plan, catalogue);
        return text.out.toString();
    }

    private void write(WorkPlan plan, Catalogue catalogue) {
        line("# Work plan: " + escaped(plan.assessment().job().id()));
        plan.assessment().stops().forEach(s -> line("\n**" + escaped(StopLines.title(s)) + "**"));
        // What a danger asks comes before anything else on the page.
        steps(plan, catalogue, true);
        plan.assessment().stops().forEach(s -> StopLines.rest(s).forEach(l -> line("\n" + escaped(l))));
        plan.assessment().stopCautions().stream().filter(c -> !once.isSaid(c)).forEach(c -> line("\nCaution: " + escaped(once.say(c))));
        line("\n- System: " + escaped(plan.assessment().arrangement().inWords()));
        line("- Course: " + escaped(WorkPlanWords.course(plan, catalogue)));
        plan.refusal().ifPresent(r -> {
            line("\n## No " + r.what() + " is planned here\n\n" + escaped(r.because()) + "\n");
            r.first().forEach(f -> line("- First: " + escaped(f)));
            line("- " + (r.what().equals("work") ? "Work" : "A cleanse") + " may be planned when: " + escaped(r.then()));
        });
        list("Bring", plan.lists().bring());
        list("Tell and agree beforehand", plan.lists().agree());
        list("Record before starting", plan.lists().recordFirst());
        cautions("Cautions", WorkPlanWords.cautionsOfNoStep(plan, false));
        steps(plan, catalogue, false);
        if (!plan.figures().isEmpty()) {
            line("\n## Figures\n\n| figure | value |\n| --- | --- |");
            plan.figures().forEach(f -> line("| " + cell(f.title()) + " | " + cell(f.shown()) + " |"));
            plan.quantities().dumps().forEach(d -> line("| " + cell("Dump of " + d.radiator()) + " | " + cell(d.litres().shown()
                    + d.minutes().map(m -> ", " + m.shown()).orElse("")) + " |"));
        }
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
                line("\n## " + WorkPlanWords.title(stage) + "\n");
            }
            String number = n++ + ". ";
            // What belongs to a numbered item stands under its first word.
            String under = " ".repeat(number.length()) + "- ";
            line(number + escaped(s.says()) + " (" + WorkPlanWords.minutes(plan.minutes(s)) + ")");
            line(under + "Done when: " + escaped(s.proves()));
            s.caution().ifPresent(c -> line(under + "Caution: " + escaped(once.say(catalogue.caution(c)))));
            if (!ofDanger) {
                line(under + escaped(s.because()));
            }
        }
    }

    private void list(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            line("\n## " + title + "\n");
            lines.forEach(l -> line("- " + escaped(l)));
        }
    }

    private void cautions(String title, List<Caution> cautions) {
        list(title, cautions.stream().filter(c -> !once.isSaid(c)).map(once::say).toList());
    }

    private static String cell(String words) {
        return escaped(words).replace("|", "\\|");
    }

    /** Words of the house may hold anything; none of it is to be read as formatting. */
    private static String escaped(String words) {
        return words.replaceAll("([\\\\`*_<>#\\[\\]])", "\\\\$1");
    }

    private void line(String words) {
        out.append(words).append('\n');
    }
}
