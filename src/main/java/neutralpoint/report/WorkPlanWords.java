package neutralpoint.report;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Moment;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workplan.Stage;
import neutralpoint.workplan.WorkPlan;

/** Words that every form of a work plan shares. */
final class WorkPlanWords {
    private WorkPlanWords() {}

    static String title(Stage stage) {
        String words = stage.word().replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /**
     * The course with its method; one that is refused is not named as if it were planned, and the repair that waits for a
     * look is named after it.
     */
    static String course(WorkPlan plan, Catalogue catalogue) {
        Course recommended = plan.assessment().verdict().course();
        boolean waits = recommended.repairs() && !plan.course().equals(recommended.id()) && !catalogue.course(plan.course()).cleanses();
        String later = waits
                ? ", then " + recommended.title().toLowerCase(Locale.ROOT) : "";
        return catalogue.course(plan.course()).title() + (plan.isNothingPlanned() ? " (not planned)"
                : plan.method().map(m -> ", by " + method(catalogue, m)).orElse("")) + later;
    }

    static String method(Catalogue catalogue, String method) {
        return catalogue.method(method).title().toLowerCase(Locale.ROOT);
    }

    /** Cautions that no step of the plan carries: those to mind before and during the work, or those before the house is left. */
    static List<Caution> cautionsOfNoStep(WorkPlan plan, boolean leaving) {
        Set<String> carried = plan.steps().stream().flatMap(s -> s.caution().stream()).collect(Collectors.toSet());
        return plan.cautions().stream().filter(c -> !carried.contains(c.id()) && (c.moment() == Moment.LEAVING) == leaving).toList();
    }

    static String minutes(Estimate minutes) {
        return Math.round(minutes.likely()) + " min";
    }
}
