package neutralpoint.workplan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.fact.PlannedSystem;
import neutralpoint.workplan.figures.Figure;
import neutralpoint.workplan.figures.JobScope;
import neutralpoint.workplan.figures.Quantities;

/**
 * The method statement for one house.
 *
 * @param course   the course planned
 * @param method   the method of cleansing; empty when nothing is cleansed
 * @param refusal  present where a cleanse is forbidden; the steps are then those of the work that comes first
 * @param steps    in the order they are carried out
 * @param day      the same by the clock
 * @param cautions all that go with the house and with the method planned, the worst first
 */
public record WorkPlan(Assessment assessment, String course, Optional<String> method, Optional<Refusal> refusal, List<PlanStep> steps,
        Quantities quantities, DayPlan day, Checklists lists, List<Caution> cautions) {
    /** The step in which radiators are run to the drain one after another; it takes as long as they do. */
    private static final String RADIATORS_CLEARED = "radiators-cleared";
    /** Opening and shutting one radiator's valves. Common practice, no source. */
    private static final double MINUTES_OF_VALVES = 2;
    /** A step may take this share less or more than as a rule. Common practice, no source. */
    private static final double SHARE_OF_DOUBT = 0.3;

    /**
     * @param method the method of cleansing to plan for; when empty, the course recommended is planned
     * @throws IllegalArgumentException if there is no such method
     */
    public static WorkPlan of(Assessor assessor, Catalogue catalogue, Job job, Optional<String> method) {
        Planner.Planned planned = Planner.plan(assessor, job, method);
        Job known = planned.draft().assessment().known();
        Optional<String> used = planned.draft().method().filter(Predicate.not(String::isBlank));
        Set<String> traits = traits(planned.draft().layout());
        // Where nothing is planned, nothing is brought, dosed or drained for it either.
        JobScope scope = planned.steps().isEmpty() ? new JobScope(catalogue.course(CourseId.REFER), Optional.empty(), traits)
                : new JobScope(catalogue.course(planned.draft().course()), used.map(catalogue::method), traits);
        Quantities quantities = scope.course().equals(CourseId.REFER) ? Quantities.NONE : Quantities.of(known, scope);
        List<Assessment.StopFound> stops = planned.draft().assessment().stops();
        DayPlan day = DayPlan.of(planned.steps().stream().map(s -> timed(s, quantities)).toList());
        return new WorkPlan(planned.draft().assessment(), planned.draft().course(), used, planned.refusal(), planned.steps(),
                quantities, day, Checklists.of(catalogue.planLines().values(), known, scope, quantities,
                answered(planned.draft().assessment()), stops.stream().map(Assessment.StopFound::id).collect(Collectors.toSet()),
                stops.stream().anyMatch(s -> s.danger().heat().isOff())),
                cautions(catalogue, planned.draft().assessment(), used));
    }

    private static Set<String> answered(Assessment assessment) {
        Set<String> answered = new TreeSet<>();
        assessment.verdict().chief().filter(c -> !assessment.verdict().course().id().equals(CourseId.REFER)).ifPresent(c -> answered.add(c.id()));
        assessment.order().stream().filter(s -> s.course().map(Course::cleanses).orElse(false))
                .forEach(s -> s.cause().ifPresent(c -> answered.add(c.id())));
        return answered;
    }

    private static List<Caution> cautions(Catalogue catalogue, Assessment assessment, Optional<String> method) {
        return catalogue.cautions(Stream.concat(assessment.cautions().stream().map(Caution::id),
                method.stream().flatMap(m -> catalogue.method(m).cautions().stream())).toList());
    }

    /** True where a cleanse is refused and no other work of this house comes first. */
    public boolean isNothingPlanned() {
        return refusal.isPresent() && steps.isEmpty();
    }

    /** Every figure of the plan, the clock's last. */
    public List<Figure> figures() {
        return steps.isEmpty() || course.equals(CourseId.REFER) ? List.of() : Stream.concat(quantities.figures().stream(), day.figures().stream()).toList();
    }

    /** How long a step takes in this house. */
    public Estimate minutes(PlanStep step) {
        return minutes(step, quantities);
    }

    /** A system that is not known may be one whose water reaches the taps: nothing is put into it. */
    private static Set<String> traits(PlannedSystem layout) {
        Set<String> traits = new TreeSet<>(layout.traits());
        if (layout.system().isEmpty()) {
            traits.add(TraitId.NO_ADDITIVES);
        }
        return traits;
    }

    private static DayPlan.Timed timed(PlanStep step, Quantities quantities) {
        return new DayPlan.Timed(step.stage().word(), minutes(step, quantities), !step.boilerMayFire());
    }

    private static Estimate minutes(PlanStep step, Quantities quantities) {
        if (step.id().equals(RADIATORS_CLEARED)) {
            Optional<Estimate> dumps = quantities.figure("dump-minutes").map(Figure::value);
            if (dumps.isPresent()) {
                return dumps.get().plus(Estimate.about(quantities.dumps().size() * MINUTES_OF_VALVES, SHARE_OF_DOUBT));
            }
        }
        return Estimate.about(step.minutes(), SHARE_OF_DOUBT);
    }
}
