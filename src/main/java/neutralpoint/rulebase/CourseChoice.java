package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.rulebase.fact.Bars;
import neutralpoint.rulebase.fact.Remedy;
import neutralpoint.rulebase.fact.Stop;

/** From causes, remedies, bars and stops to one recommended course and the order of work. */
final class CourseChoice {
    private static final String REFER = "refer";
    private static final String NONE = "no-wet-side-work";

    private final Catalogue catalogue;
    private final List<Derived<Remedy>> remedies;
    private final List<Derived<Bars>> bars;

    CourseChoice(Catalogue catalogue, List<Derived<Remedy>> remedies, List<Derived<Bars>> bars) {
        this.catalogue = catalogue;
        this.remedies = remedies;
        this.bars = bars;
    }

    /** A course and, where a rule changed it from the usual one, that rule's reason. */
    private record Chosen(String course, List<String> because) {}

    private Chosen courseFor(Assessment.CauseStanding standing) {
        String course = standing.cause().course();
        List<String> because = new ArrayList<>();
        for (Derived<Remedy> r : remedies) {
            if (r.fact().standing().cause().equals(standing.id())) {
                course = r.fact().course();
                because.add(r.rule().because());
                break;
            }
        }
        String wanted = course;
        // A course put in place of a barred one may itself be barred, so this is asked again; refer never is.
        for (int asked = 0; asked < catalogue.courses().size(); asked++) {
            String now = course;
            List<Derived<Bars>> against = bars.stream().filter(b -> b.fact().course().equals(now)).toList();
            if (against.isEmpty()) {
                return new Chosen(course, because);
            }
            Derived<Bars> bar = against.stream().filter(b -> b.fact().instead().equals(REFER)).findFirst().orElse(against.get(0));
            because.add(bar.rule().because());
            course = bar.fact().instead();
        }
        return new Chosen(course.equals(wanted) ? course : REFER, because);
    }

    Assessment.Verdict verdict(List<Derived<Stop>> stops, Optional<Assessment.CauseStanding> chief,
            List<String> disputes) {
        List<String> because = new ArrayList<>();
        stops.stream().sorted(Comparator.comparing(s -> !s.fact().isReferral()))
                .map(s -> s.rule().because()).forEach(because::add);
        because.addAll(disputes);
        String course = NONE;
        if (chief.isPresent()) {
            Chosen chosen = courseFor(chief.get());
            course = chosen.course();
            because.addAll(chosen.because());
            chief.get().evidence().stream().filter(WeighedEvidence::isFor).limit(3)
                    .map(e -> e.rule().because()).forEach(because::add);
        } else if (stops.isEmpty()) {
            because.add("Nothing found so far points to a fault strongly enough to open the system.");
        }
        if (stops.stream().anyMatch(s -> s.fact().isReferral())) {
            course = REFER;
        } else if (!stops.isEmpty() && (course.endsWith("flush") || course.equals("partial-cleanse") || course.equals(NONE))) {
            // No cleansing while a red line stands: what clears the line comes first.
            course = stops.get(0).fact().course();
        }
        return new Assessment.Verdict(catalogue.course(course), chief, because.stream().distinct().toList());
    }

    List<Assessment.Step> order(List<Assessment.CauseStanding> causes, Optional<Assessment.CauseStanding> chief) {
        return causes.stream()
                .filter(c -> c.isActive() || chief.map(ch -> ch.id().equals(c.id())).orElse(false))
                .sorted(Comparator.comparing((Assessment.CauseStanding c) -> c.cause().phase())
                        .thenComparing(c -> -c.probability()).thenComparing(Assessment.CauseStanding::id))
                .map(c -> new Assessment.Step(catalogue.course(courseFor(c).course()), c.cause(), c.cause().work()))
                .toList();
    }
}
