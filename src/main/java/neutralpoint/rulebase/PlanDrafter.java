package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Ids.CauseId;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.catalogue.Method;
import neutralpoint.catalogue.Phase;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.BarsCourse;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.HouseNote;
import neutralpoint.rulebase.fact.PlannedSystem;
import neutralpoint.rulebase.fact.Planning;
import neutralpoint.rulebase.fact.Step;

/** Has the rules draw up the steps of a course, once the house has been assessed in the same session. */
final class PlanDrafter {
    private static final String WHO_COMES = "who-comes";
    private static final Set<Phase> BEFORE_A_CLEANSE = Set.of(Phase.SAFETY, Phase.LEAK, Phase.EXPANSION, Phase.FLOW);
    /** Below this a main rules out a mains-pressure flush, from the other figure on it speaks for one. */
    private static final double WEAK_LITRES_PER_MINUTE = 10;
    private static final double STRONG_LITRES_PER_MINUTE = 15;

    private final Catalogue catalogue;
    private final Session session;
    private final Assessment assessment;
    private final PlannedSystem layout;

    /** A cleanse that could be planned. */
    private record Cleanse(Course course, Method method) {}

    PlanDrafter(Catalogue catalogue, Session session, Assessment assessment) {
        this.catalogue = catalogue;
        this.session = session;
        this.assessment = assessment;
        this.layout = layout();
        if (!layout.traits().equals(assessment.arrangement().traits())) {
            // A plan for the likely system keeps what is forbidden there, though the other systems are not ruled out.
            session.insertAndFire(List.of(new Arrangement(layout.system(), layout.status(), layout.traits(), layout.traits())));
            List<Object> told = assessment.paths().facts();
            session.insertAndFire(WaterPaths.of(session).facts().stream().filter(fact -> !told.contains(fact)).toList());
        }
    }

    /**
     * @param method the method of cleansing asked for; when empty, the course recommended is planned
     */
    DraftPlan draft(Optional<String> method) {
        Course recommended = assessment.verdict().course();
        Optional<Cleanse> cleanse = method.map(this::asked).or(this::recommended);
        List<DraftPlan.Obstacle> obstacles = cleanse.map(this::obstacles).orElseGet(this::obstaclesToTheUsual);
        if (cleanse.isPresent() && obstacles.isEmpty()) {
            Cleanse planned = cleanse.get();
            return draft(planned.course().id(), Optional.of(planned.method().id()), obstacles);
        }
        Course first = cleanse.map(c -> comesFirst(c.course())).orElse(recommended);
        if (first.wet() && isContradictory() && assessment.stops().isEmpty()) {
            // While two answers cannot both be right nothing is opened, whatever the likeliest cause.
            return draft(CourseId.LOOK_FURTHER, Optional.empty(), obstacles.isEmpty() ? List.of(unknownSystem()) : obstacles);
        }
        return first.cleanses() ? new DraftPlan(assessment, first.id(), Optional.empty(), layout, List.of(), obstacles, catalogue.closures())
                : draft(first.id(), Optional.empty(), obstacles);
    }

    /** The course to take before a cleanse that is refused: the one recommended if it mends something, or the one its bar names. */
    private Course comesFirst(Course refused) {
        Course recommended = assessment.verdict().course();
        if (!recommended.cleanses() && !recommended.id().equals(CourseId.NO_WET_SIDE_WORK)) {
            return recommended;
        }
        if (!isKnown() && assessment.stops().isEmpty()) {
            return catalogue.course(CourseId.LOOK_FURTHER);
        }
        List<Course> instead = bars(refused.id()).stream().map(b -> catalogue.course(b.fact().instead())).filter(c -> !c.cleanses()).toList();
        return instead.stream().filter(c -> c.id().equals(CourseId.REFER)).findFirst().or(() -> instead.stream().findFirst()).orElse(recommended);
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
        tellDangers();
        session.insertAndFire(told(assessment.verdict().course(), obstaclesToTheUsual()));
        session.insertAndFire(told(catalogue.course(CourseId.LOOK_FURTHER), List.of()));
        session.insertAndFire(told(catalogue.course(CourseId.FULL_FLUSH), List.of()));
        session.insertAndFire(List.of(layout));
        session.insertAndFire(all);
    }

    private DraftPlan draft(String course, Optional<String> method, List<DraftPlan.Obstacle> obstacles) {
        tellDangers();
        session.insertAndFire(told(catalogue.course(course), obstacles));
        session.insertAndFire(List.of(layout, planning(course, method.orElse(""))));
        List<DraftPlan.DraftStep> steps = session.all(Step.class).stream().map(s -> new DraftPlan.DraftStep(s.rule(), s.fact())).toList();
        return new DraftPlan(assessment, course, method, layout, steps, obstacles, catalogue.closures());
    }

    private void tellDangers() {
        session.insertAndFire(StandingDangers.asks(assessment.stops()));
        session.insertAndFire(StandingDangers.clears(assessment.stops()));
    }

    /** What steps have to name in this house: who comes, what comes first, what to look at again. */
    private List<HouseNote> told(Course course, List<DraftPlan.Obstacle> obstacles) {
        List<HouseNote> told = new ArrayList<>();
        if (course.id().equals(CourseId.REFER)) {
            told.add(referral(obstacles));
        }
        if (course.id().equals(CourseId.LOOK_FURTHER) && isContradictory()) {
            told.add(new HouseNote("look-again", String.join(" ", assessment.arrangement().contradictions())));
        }
        String earlier = assessment.order().stream().filter(s -> s.course().map(c -> c.wet() && !c.cleanses()).orElse(false))
                .filter(s -> BEFORE_A_CLEANSE.contains(s.phase())).map(s -> s.cause().map(c -> c.title() + ": ").orElse("") + s.action()).distinct().collect(Collectors.joining(" "));
        if (course.cleanses() && !earlier.isEmpty()) {
            told.add(new HouseNote("earlier-work", earlier));
        }
        return told;
    }

    /** Who comes where a danger stands or a remedy is not the engineer's own work; otherwise what has to come first. */
    private HouseNote referral(List<DraftPlan.Obstacle> obstacles) {
        List<Assessment.StopFound> stops = assessment.stops();
        if (assessment.isReferredByStop()) {
            return new HouseNote(WHO_COMES, StandingDangers.whoComes(stops));
        }
        String who = assessment.verdict().chief().map(c -> assessment.verdict().needsOf(c.id())).orElse(List.of()).stream()
                .filter(n -> n.shown() != Assessment.Shown.YES).map(n -> n.competence().referTo()).distinct().collect(Collectors.joining(" and "));
        String first = obstacles.stream().map(DraftPlan.Obstacle::first).distinct().collect(Collectors.joining(" "));
        if (who.isEmpty()) {
            return first.isEmpty() ? new HouseNote(WHO_COMES, "It is the work of somebody registered or qualified for it.")
                    : new HouseNote("what-first", first);
        }
        return new HouseNote(WHO_COMES, "It needs " + who + ". " + first);
    }

    private Planning planning(String course, String method) {
        return new Planning(course, method, supply(assessment.known()), descales(), catalogue.course(course).repairs() && onlyClears());
    }

    private boolean descales() {
        boolean isChief = !assessment.verdict().course().id().equals(CourseId.REFER) && assessment.verdict().chief().map(c -> c.id().equals(CauseId.SCALE_ON_EXCHANGER)).orElse(false);
        return isChief || assessment.order().stream().anyMatch(s -> s.cause().map(c -> c.id().equals(CauseId.SCALE_ON_EXCHANGER)).orElse(false)
                && s.course().map(Course::cleanses).orElse(false));
    }

    /** True when no repair is left beside what clears the dangers. */
    private boolean onlyClears() {
        return !assessment.stops().isEmpty() && !assessment.isReferredByStop()
                && assessment.order().stream().noneMatch(s -> s.cause().isPresent() && s.course().map(Course::repairs).orElse(false));
    }

    private static String supply(Job job) {
        if (!(job.answers().get(FindingId.COLD_SUPPLY_LITRES_PER_MINUTE) instanceof Answer.Reading reading)) {
            return "unknown";
        }
        if (reading.value() < WEAK_LITRES_PER_MINUTE) {
            return "weak";
        }
        return reading.value() < STRONG_LITRES_PER_MINUTE ? "ordinary" : "strong";
    }

    private PlannedSystem layout() {
        Assessment.RecognisedSystem system = assessment.arrangement();
        Set<String> traits = new TreeSet<>(system.traits());
        if (isKnown()) {
            traits.addAll(catalogue.arrangement(system.id()).traits());
        }
        return new PlannedSystem(isKnown() ? system.id() : "", system.status(), new TreeSet<>(system.features()), traits);
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

    private List<DraftPlan.Obstacle> obstacles(Cleanse cleanse) {
        List<DraftPlan.Obstacle> obstacles = obstacles(cleanse.course());
        session.all(Evidence.class, rule -> rule.folder().equals("method")).stream()
                .filter(e -> e.fact().kind() == Evidence.Kind.EXCLUDES && e.fact().about().equals(cleanse.method().id()))
                .map(e -> obstacle(e.rule())).forEach(obstacles::add);
        return obstacles.stream().distinct().toList();
    }

    /** What stands in the way of a cleansing course, whatever the method. */
    private List<DraftPlan.Obstacle> obstacles(Course course) {
        List<DraftPlan.Obstacle> obstacles = new ArrayList<>();
        assessment.stops().forEach(s -> obstacles.add(new DraftPlan.Obstacle(s.because(), s.action(),
                "The danger \"" + s.title() + "\" is over and the house has been assessed again.")));
        bars(course.id()).forEach(b -> obstacles.add(obstacle(b.rule())));
        obstacles.addAll(doubts());
        if (!isKnown()) {
            obstacles.add(unknownSystem());
        } else if (layout.traits().contains(TraitId.NO_FLUSH) && obstacles.isEmpty()) {
            obstacles.add(new DraftPlan.Obstacle("This kind of system must never be flushed.", "Hand it over to someone licensed for it.",
                    "It has been made into a system of another kind."));
        }
        return obstacles;
    }

    private DraftPlan.Obstacle unknownSystem() {
        String unclear = "What is closed, and where the flush is connected, hangs on the kind of system, and that is not known.";
        return new DraftPlan.Obstacle(String.join(" ", isContradictory() ? assessment.arrangement().contradictions() : List.of(unclear)),
                "Find out how the heating is filled, where feed and vent join, and what kind of cylinder there is.",
                "The kind of system is known and no two answers contradict each other.");
    }

    private boolean isContradictory() {
        return !assessment.arrangement().contradictions().isEmpty();
    }

    /** Where the chief cause is usually answered by a cleanse and another course has taken its place. */
    private List<DraftPlan.Obstacle> obstaclesToTheUsual() {
        List<DraftPlan.Obstacle> usual = assessment.verdict().chief().map(c -> catalogue.course(c.cause().course())).filter(Course::cleanses)
                .map(c -> obstacles(c).stream().distinct().toList()).orElse(List.of());
        return usual.isEmpty() && assessment.verdict().course().id().equals(CourseId.LOOK_FURTHER) ? doubts() : usual;
    }

    /** What is in doubt about a path: nothing is cleansed before the look that settles it. */
    private List<DraftPlan.Obstacle> doubts() {
        return assessment.paths().doubts().stream().map(d -> new DraftPlan.Obstacle(d.rule().because(), d.look(),
                "That look has settled it, and the house has been assessed again.")).toList();
    }

    private List<Derived<BarsCourse>> bars(String course) {
        return session.all(BarsCourse.class).stream().filter(b -> b.fact().course().equals(course)).toList();
    }

    private static DraftPlan.Obstacle obstacle(RuleInfo rule) {
        return new DraftPlan.Obstacle(rule.because(), rule.note("first"), rule.note("then"));
    }
}
