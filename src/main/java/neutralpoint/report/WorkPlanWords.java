package neutralpoint.report;

import java.util.Locale;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.hydronics.Range;
import neutralpoint.workplan.Stage;
import neutralpoint.workplan.WorkPlan;

/** Words that every form of a work plan shares. */
final class WorkPlanWords {
    private WorkPlanWords() {}

    static String title(Stage stage) {
        String words = stage.word().replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The course with its method; one that is refused is not named as if it were planned. */
    static String course(WorkPlan plan, Catalogue catalogue) {
        return catalogue.course(plan.course()).title() + (plan.isNothingPlanned() ? " (not planned)"
                : plan.method().map(m -> ", by " + method(catalogue, m)).orElse(""));
    }

    static String method(Catalogue catalogue, String method) {
        return catalogue.method(method).title().toLowerCase(Locale.ROOT);
    }

    static String minutes(Range minutes) {
        return Math.round(minutes.likely()) + " min";
    }
}
