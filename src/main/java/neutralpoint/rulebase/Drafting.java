package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Method;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.Bars;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.Layout;
import neutralpoint.rulebase.fact.Planning;
import neutralpoint.rulebase.fact.Step;

/** Has the rules draw up the steps of a course, once the house has been assessed in the same session. */
final class Drafting {
    private static final String REFER = "refer";
    private static final String NONE = "no-wet-side-work";
    private static final String LOOK = "look-further";
    private static final String NO_FLUSH = "no-flush";
    private static final String SUPPLY = "cold-supply-litres-per-minute";
    /** Below this a main rules out a mains-pressure flush, from the other figure on it speaks for one. */
    private static final double WEAK_LITRES_PER_MINUTE = 10;
    private static final double STRONG_LITRES_PER_MINUTE = 15;

    private final Catalogue catalogue;
    private final Session session;
    private final Assessment assessment;
    private final Layout layout;

    /** A cleanse that could be planned. */
    private record Cleanse(Course course, Method method) {}

    Drafting(Catalogue catalogue, Session session, Assessment assessment) {
        this.catalogue = catalogue;
        this.session = session;
        this.assessment = assessment;
        this.layout = layout();
        if (!layout.traits().equals(assessment.arrangement().traits())) {
            // A plan for the likely system keeps what is forbidden there, though the other systems are not ruled out.
            session.tell(List.of(new Arrangement(layout.system(), layout.status(), layout.traits(), layout.traits())));
            List<Object> told = assessment.paths().facts();
            session.tell(Paths.of(session).facts().stream().filter(fact -> !told.contains(fact)).toList());
        }
    }

    /**
     * @param method the method of cleansing asked for; when empty, the course recommended is planned
     */
    Draft draft(Optional<String> method) {
        Course recommended = assessment.verdict().course();
        Optional<Cleanse> cleanse = method.map(this::asked).or(this::recommended);
        List<Draft.Obstacle> obstacles = cleanse.map(this::obstacles).orElseGet(this::obstaclesToTheUsual);
        if (cleanse.isPresent() && obstacles.isEmpty()) {
            Cleanse planned = cleanse.get();
            return draft(planned.course().id(), Optional.of(planned.method().id()), obstacles);
        }
        Course first = cleanse.map(c -> comesFirst(c.course())).orElse(recommended);
        return first.cleanses() ? new Draft(assessment, first.id(), Optional.empty(), layout, List.of(), obstacles, catalogue.closures())
                : draft(first.id(), Optional.empty(), obstacles);
    }

    /** The course to take before a cleanse that is refused: the one recommended if it mends something, or the one its bar names. */
    private Course comesFirst(Course refused) {
        Course recommended = assessment.verdict().course();
        if (!recommended.cleanses() && !recommended.id().equals(NONE)) {
            return recommended;
        }
        List<Course> instead = bars(refused.id()).stream().map(b -> catalogue.course(b.fact().instead())).filter(c -> !c.cleanses()).toList();
        return instead.stream().filter(c -> c.id().equals(REFER)).findFirst().or(() -> instead.stream().findFirst()).orElse(recommended);
    }

    /** Tells of the course recommended and of every cleanse that nothing stands in the way of. */
    void tellAll() {
        List<Planning> all = new ArrayList<>();
        if (!assessment.verdict().course().cleanses()) {
            all.add(planning(assessment.verdict().course().id(), ""));
        }
        for (Method method : catalogue.methods().values()) {
            Cleanse cleanse = asked(method.id());
            if (obstacles(cleanse).isEmpty()) {
                all.add(planning(cleanse.course().id(), method.id()));
            }
        }
        session.tell(Dangers.asks(assessment.stops()));
        session.tell(Dangers.clears(assessment.stops()));
        session.tell(List.of(layout));
        session.tell(all);
    }

    private Draft draft(String course, Optional<String> method, List<Draft.Obstacle> obstacles) {
        session.tell(Dangers.asks(assessment.stops()));
        session.tell(Dangers.clears(assessment.stops()));
        session.tell(List.of(layout, planning(course, method.orElse(""))));
        List<Draft.Drawn> steps = session.all(Step.class).stream().map(s -> new Draft.Drawn(s.rule(), s.fact())).toList();
        return new Draft(assessment, course, method, layout, steps, obstacles, catalogue.closures());
    }

    private Planning planning(String course, String method) {
        return new Planning(course, method, supply(assessment.known()));
    }

    private static String supply(Job job) {
        if (!(job.answers().get(SUPPLY) instanceof Answer.Reading reading)) {
            return "unknown";
        }
        if (reading.value() < WEAK_LITRES_PER_MINUTE) {
            return "weak";
        }
        return reading.value() < STRONG_LITRES_PER_MINUTE ? "ordinary" : "strong";
    }

    private Layout layout() {
        Assessment.System system = assessment.arrangement();
        Set<String> traits = new TreeSet<>(system.traits());
        if (isKnown()) {
            traits.addAll(catalogue.arrangement(system.id()).traits());
        }
        return new Layout(isKnown() ? system.id() : "", system.status(), new TreeSet<>(system.features()), traits);
    }

    private boolean isKnown() {
        return assessment.arrangement().isKnown();
    }

    private Optional<Cleanse> recommended() {
        Course course = assessment.verdict().course();
        return assessment.cleansing().filter(c -> course.cleanses()).map(c -> new Cleanse(course, c.method()));
    }

    /** The method asked for, in a course it can carry out: the one recommended, or else one that is not barred. */
    private Cleanse asked(String id) {
        Method method = catalogue.methods().get(id);
        if (method == null) {
            throw new IllegalArgumentException("the method must be one of " + String.join(", ", catalogue.methods().keySet())
                    + ", but is " + id + ".");
        }
        String course = method.courses().stream().filter(c -> c.equals(assessment.verdict().course().id())).findFirst()
                .or(() -> method.courses().stream().filter(c -> bars(c).isEmpty()).findFirst()).orElse(method.courses().get(0));
        return new Cleanse(catalogue.course(course), method);
    }

    private List<Draft.Obstacle> obstacles(Cleanse cleanse) {
        List<Draft.Obstacle> obstacles = obstacles(cleanse.course());
        session.all(Evidence.class, rule -> rule.folder().equals("method")).stream()
                .filter(e -> e.fact().kind() == Evidence.Kind.EXCLUDES && e.fact().about().equals(cleanse.method().id()))
                .map(e -> obstacle(e.rule())).forEach(obstacles::add);
        return obstacles.stream().distinct().toList();
    }

    /** What stands in the way of a cleansing course, whatever the method. */
    private List<Draft.Obstacle> obstacles(Course course) {
        List<Draft.Obstacle> obstacles = new ArrayList<>();
        assessment.stops().forEach(s -> obstacles.add(new Draft.Obstacle(s.because(), s.action(),
                "The danger \"" + s.title() + "\" is over and the house has been assessed again.")));
        bars(course.id()).forEach(b -> obstacles.add(obstacle(b.rule())));
        obstacles.addAll(doubts());
        if (!isKnown()) {
            String unclear = "What is closed, and where the flush is connected, hangs on the kind of system, and that is not known.";
            obstacles.add(new Draft.Obstacle(String.join(" ", assessment.arrangement().contradictions().isEmpty() ? List.of(unclear)
                    : assessment.arrangement().contradictions()), "Find out how the heating is filled, where feed and vent join, "
                    + "and what kind of cylinder there is.", "The kind of system is known and no two answers contradict each other."));
        } else if (layout.traits().contains(NO_FLUSH) && obstacles.isEmpty()) {
            obstacles.add(new Draft.Obstacle("This kind of system must never be flushed.", "Hand it over to someone licensed for it.",
                    "It has been made into a system of another kind."));
        }
        return obstacles;
    }

    /** Where the chief cause is usually answered by a cleanse and another course has taken its place. */
    private List<Draft.Obstacle> obstaclesToTheUsual() {
        List<Draft.Obstacle> usual = assessment.verdict().chief().map(c -> catalogue.course(c.cause().course())).filter(Course::cleanses)
                .map(c -> obstacles(c).stream().distinct().toList()).orElse(List.of());
        return usual.isEmpty() && assessment.verdict().course().id().equals(LOOK) ? doubts() : usual;
    }

    /** What is in doubt about a path: nothing is cleansed before the look that settles it. */
    private List<Draft.Obstacle> doubts() {
        return assessment.paths().doubts().stream().map(d -> new Draft.Obstacle(d.rule().because(), d.look(),
                "That look has settled it, and the house has been assessed again.")).toList();
    }

    private List<Derived<Bars>> bars(String course) {
        return session.all(Bars.class).stream().filter(b -> b.fact().course().equals(course)).toList();
    }

    private static Draft.Obstacle obstacle(RuleInfo rule) {
        return new Draft.Obstacle(rule.because(), rule.note("first"), rule.note("then"));
    }
}
