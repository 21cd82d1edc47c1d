package neutralpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Closure;
import neutralpoint.report.text.Wrap;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.WorkPlan;
import neutralpoint.workplan.figures.Figure;

/** Two plans of one house beside each other: time, water, what is shut, and why one or the other. */
public final class WorkPlanCompare {
    private static final int TITLE = 22;
    private static final int GAP = 2;

    private final int width;
    private final StringBuilder out = new StringBuilder();

    private WorkPlanCompare(int width) {
        this.width = width;
    }

    /**
     * @param names what each plan is called here
     * @param width columns, 60 or more
     */
    public static String of(List<String> names, WorkPlan one, WorkPlan other, Catalogue catalogue, int width) {
        WorkPlanCompare c = new WorkPlanCompare(width);
        c.row("", names.get(0), names.get(1));
        c.row("course", WorkPlanWords.course(one, catalogue), WorkPlanWords.course(other, catalogue));
        c.row("may be done", one.refusal().map(r -> "no: " + r.because()).orElse("yes"), other.refusal().map(r -> "no: " + r.because()).orElse("yes"));
        c.row("why", why(one), why(other));
        c.row("steps", String.valueOf(one.steps().size()), String.valueOf(other.steps().size()));
        c.row("finish", one.day().finish(), other.day().finish());
        for (String id : List.of("day-minutes", "without-heat-minutes", "water-litres", "dump-litres", "cleaner-litres", "energy-kilowatt-hours")) {
            c.figure(id, one, other);
        }
        c.row("shut for the work", shut(one), shut(other));
        c.row("first step", first(one), first(other));
        return c.out.toString().stripTrailing();
    }

    private void figure(String id, WorkPlan one, WorkPlan other) {
        Optional<Figure> a = figure(one, id);
        Optional<Figure> b = figure(other, id);
        a.or(() -> b).ifPresent(f -> row(f.title(), a.map(Figure::shown).orElse("none"), b.map(Figure::shown).orElse("none")));
    }

    private static Optional<Figure> figure(WorkPlan plan, String id) {
        return plan.figures().stream().filter(f -> f.id().equals(id)).findFirst();
    }

    private static String why(WorkPlan plan) {
        return plan.assessment().cleansing().filter(c -> plan.method().map(m -> m.equals(c.method().id())).orElse(false))
                .flatMap(c -> c.because().stream().findFirst())
                .orElseGet(() -> plan.assessment().verdict().because().stream().findFirst().orElse(""));
    }

    private static String shut(WorkPlan plan) {
        return String.join(", ", list(plan, s -> s.closes().map(Closure::title).orElse("")));
    }

    private static String first(WorkPlan plan) {
        return plan.steps().stream().findFirst().map(PlanStep::says).orElse("none");
    }

    private static List<String> list(WorkPlan plan, Function<PlanStep, String> of) {
        return plan.steps().stream().map(of).filter(s -> !s.isEmpty()).distinct().toList();
    }

    private void row(String title, String left, String right) {
        int column = (width - TITLE - 2 * GAP) / 2;
        List<List<String>> cells = new ArrayList<>();
        cells.add(lines(title, TITLE));
        cells.add(lines(left, column));
        cells.add(lines(right, column));
        int rows = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < rows; i++) {
            String text = padded(cells.get(0), i, TITLE + GAP) + padded(cells.get(1), i, column + GAP) + padded(cells.get(2), i, column);
            out.append(text.stripTrailing()).append('\n');
        }
    }

    private static List<String> lines(String words, int columns) {
        return Wrap.to(columns, "", "", words).lines().toList();
    }

    private static String padded(List<String> lines, int i, int columns) {
        String text = i < lines.size() ? lines.get(i) : "";
        return text + " ".repeat(Math.max(0, columns - text.length()));
    }
}
