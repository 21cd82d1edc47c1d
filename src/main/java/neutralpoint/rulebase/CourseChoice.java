package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.rulebase.fact.BarsCourse;
import neutralpoint.rulebase.fact.Remedy;

/** From causes, remedies, bars, stops and whose hands they need to one recommended course. */
final class CourseChoice {
    private static final String NOTHING_SEEN = "Nothing but the complaint points to it, and nothing is touched on that alone.";
    private static final String RIVALS = "Several causes are as likely as this one, and they want different courses.";
    /** Below this chance of the cause and this share of its course among all chances, another look comes before any course. */
    private static final double TOO_SMALL_A_CHANCE = 0.15;
    private static final double TOO_SMALL_A_SHARE = 0.3;
    private static final double NOT_A_RIVAL = 0.02;
    private static final String LOOK_FIRST = "What is closed, and where a cleanse is connected, hangs on the kind of system, and that is not clear.";

    private final Catalogue catalogue;
    private final Assessment.RecognisedSystem system;
    private final WaterPaths paths;
    private final MethodChoice methods;
    private final List<Derived<Remedy>> remedies;
    private final List<Derived<BarsCourse>> bars;
    private final CompetenceCheck hands;

    /**
     * @param system what is known of the system; nothing is cleansed while that is not clear
     * @param paths  where relief paths and waters meet; a doubt about one is told whatever the course
     */
    CourseChoice(Catalogue catalogue, Assessment.RecognisedSystem system, WaterPaths paths, MethodChoice methods, List<Derived<Remedy>> remedies,
            List<Derived<BarsCourse>> bars, CompetenceCheck hands) {
        this.catalogue = catalogue;
        this.system = system;
        this.paths = paths;
        this.methods = methods;
        this.remedies = remedies;
        this.bars = bars;
        this.hands = hands;
    }

    /** A course and, where a rule changed it from the usual one, that rule's reason. */
    record Chosen(Course course, List<String> because) {

        /** True when nothing is to be done for it before more has been seen. */
        boolean isOnlyALook() {
            return course.id().equals(CourseId.LOOK_FURTHER);
        }
    }

    /**
     * The course that answers this cause on this system: nothing on the wet side on the complaint alone, and no cleanse on a
     * system that is not known.
     */
    Chosen choose(Assessment.CauseStanding standing) {
        Chosen chosen = permitted(standing);
        if (!chosen.course().wet() || isSeen(standing) && (system.isKnown() || !chosen.course().cleanses())) {
            return chosen;
        }
        return lookingFirst(isSeen(standing) ? LOOK_FIRST : NOTHING_SEEN, chosen);
    }

    private Chosen lookingFirst(String reason, Chosen later) {
        List<String> because = new ArrayList<>(system.contradictions());
        because.add(reason);
        because.add("Once that is known, " + later.course().title().toLowerCase(Locale.ROOT) + " may be what comes of it.");
        return new Chosen(catalogue.course(CourseId.LOOK_FURTHER), because);
    }

    /** True when something else than the complaint speaks for it. */
    private static boolean isSeen(Assessment.CauseStanding standing) {
        return standing.evidence().stream().anyMatch(e -> e.isFor() && !e.finding().equals(FindingId.COMPLAINT));
    }

    private Chosen permitted(Assessment.CauseStanding standing) {
        List<String> because = new ArrayList<>();
        String usual = remedies.stream().filter(r -> r.fact().standing().cause().equals(standing.id())).findFirst()
                .map(r -> {
                    because.add(r.rule().because());
                    return r.fact().course();
                }).orElseGet(() -> usual(standing.cause()));
        List<Assessment.Need> lacking = hands.lacking(standing.id());
        if (!lacking.isEmpty()) {
            return new Chosen(catalogue.course(CourseId.REFER), Stream.concat(lacking.stream().map(Assessment.Need::inWords),
                    lacking.stream().map(Assessment.Need::because)).toList());
        }
        Chosen chosen = permitted(usual);
        return new Chosen(chosen.course(), Stream.concat(because.stream(), chosen.because().stream()).toList());
    }

    private Chosen permitted(String usual) {
        List<String> because = new ArrayList<>();
        Course course = catalogue.course(usual);
        // A course put in place of a barred one may itself be barred, so this is asked again; refer never is.
        for (int asked = 0; asked < catalogue.courses().size(); asked++) {
            Optional<Chosen> instead = instead(course);
            if (instead.isEmpty()) {
                return new Chosen(course, because);
            }
            because.addAll(instead.get().because());
            course = instead.get().course();
        }
        return new Chosen(course.id().equals(usual) ? course : catalogue.course(CourseId.REFER), because);
    }

    /** What is usually referred is the work of somebody who has shown all that it needs. */
    private String usual(Cause cause) {
        return cause.ownWork().filter(own -> hands.areShownRight(cause.id())).orElse(cause.course());
    }

    /** What takes the place of a course that is barred, or that no permitted method can carry out. */
    private Optional<Chosen> instead(Course course) {
        List<Derived<BarsCourse>> against = bars.stream().filter(b -> b.fact().course().equals(course.id())).toList();
        if (!against.isEmpty()) {
            Derived<BarsCourse> bar = instead(against, CourseId.REFER).or(() -> instead(against, CourseId.LOOK_FURTHER)).orElse(against.get(0));
            return Optional.of(new Chosen(catalogue.course(bar.fact().instead()), List.of(bar.rule().because())));
        }
        if (!course.cleanses() || methods.of(course).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new Chosen(catalogue.course(course.id().equals(CourseId.PARTIAL_CLEANSE) ? CourseId.REFER : CourseId.PARTIAL_CLEANSE),
                methods.ruledOut(course).stream().map(Assessment.RuledOut::because).toList()));
    }

    private static Optional<Derived<BarsCourse>> instead(List<Derived<BarsCourse>> bars, String course) {
        return bars.stream().filter(b -> b.fact().instead().equals(course)).findFirst();
    }

    /**
     * @param causes all causes with their chances
     */
    Assessment.Verdict verdict(List<Assessment.StopFound> stops, LeadingCause chief, List<Assessment.CauseStanding> causes, List<String> disputes) {
        List<String> because = new ArrayList<>();
        stops.stream().sorted(Comparator.comparing(s -> !s.isReferral())).map(Assessment.StopFound::because).forEach(because::add);
        because.addAll(disputes);
        Course course = permitted(CourseId.NO_WET_SIDE_WORK).course();
        Optional<Assessment.CauseStanding> standing = chief.standing();
        if (standing.isPresent()) {
            Chosen chosen = chief.because().isEmpty() && isUndecided(standing.get(), causes) ? lookingFirst(RIVALS, choose(standing.get())) : choose(standing.get());
            course = chosen.course();
            because.addAll(chosen.because());
            because.addAll(course.id().equals(CourseId.LOOK_FURTHER) ? paths.reasons() : List.of());
            because.addAll(chief.because());
            standing.get().evidence().stream().filter(WeighedEvidence::isFor).limit(3)
                    .map(e -> e.rule().because()).forEach(because::add);
            hands.of(standing.get().id()).stream().map(Assessment.Need::inWords).forEach(because::add);
        } else if (stops.isEmpty()) {
            because.add("Nothing found so far points to a fault strongly enough to open the system.");
        }
        if (stops.stream().anyMatch(Assessment.StopFound::isReferral)) {
            course = catalogue.course(CourseId.REFER);
        } else if (!stops.isEmpty() && !course.repairs() && !course.id().equals(CourseId.REFER) && !bringsHeatBack(stops, course)) {
            // While a danger stands nothing but its repair, or another repair after it, is the course.
            course = catalogue.course(stops.get(0).course());
        }
        // A doubt about a path never passes in silence, whatever the course.
        because.addAll(paths.reasons());
        return new Assessment.Verdict(course, certainty(course, stops, standing), standing, because.stream().distinct().toList(), hands.all());
    }

    /** True when the leading cause, which stands behind no other, is hardly likelier than others, and those want other courses. */
    private boolean isUndecided(Assessment.CauseStanding leading, List<Assessment.CauseStanding> causes) {
        if (leading.isSettled() || leading.probability() >= TOO_SMALL_A_CHANCE) {
            return false;
        }
        String course = permitted(leading).course().id();
        double all = 0;
        double same = 0;
        for (Assessment.CauseStanding c : causes) {
            if (c.probability() >= NOT_A_RIVAL) {
                all += c.probability();
                same += permitted(c).course().id().equals(course) ? c.probability() : 0;
            }
        }
        return same < TOO_SMALL_A_SHARE * all;
    }

    private static Certainty certainty(Course course, List<Assessment.StopFound> stops, Optional<Assessment.CauseStanding> leading) {
        if (course.id().equals(CourseId.LOOK_FURTHER)) {
            return Certainty.UNDECIDED;
        }
        return !stops.isEmpty() || leading.map(Assessment.CauseStanding::isSettled).orElse(false) ? Certainty.SETTLED : Certainty.LIKELY;
    }

    /** Where nothing is wrong but that heat is wanting, whatever brings it back without a cleanse is the course. */
    private static boolean bringsHeatBack(List<Assessment.StopFound> stops, Course course) {
        return course.wet() && !course.cleanses() && stops.stream().noneMatch(s -> s.danger().heat().isOff());
    }
}
