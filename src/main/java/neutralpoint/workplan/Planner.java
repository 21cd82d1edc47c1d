package neutralpoint.workplan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import neutralpoint.catalogue.Closure;
import neutralpoint.document.Lookup;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.DraftPlan;
import neutralpoint.rulebase.fact.Step;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;

/** Puts the steps that the rules draw up in order. A plan that is not safe from end to end is not produced. */
public final class Planner {
    private Planner() {}

    /**
     * The plan of one house: steps in order, or why there is no cleanse and what comes first.
     *
     * @param refusal present where a cleanse is forbidden; the steps are then those of the course that comes first
     */
    public record Planned(DraftPlan draft, Optional<Refusal> refusal, List<PlanStep> steps) {}

    /**
     * @param method the method of cleansing to plan for; when empty, the course recommended is planned
     * @throws IllegalArgumentException if there is no such method
     * @throws IllegalStateException    if the rules draw up a plan that is not safe; the message names the step
     */
    public static Planned plan(Assessor assessor, Job job, Optional<String> method) {
        DraftPlan draft = assessor.plan(job, method);
        return new Planned(draft, Refusal.of(draft), order(draft.steps(), draft.closures(), draft.assessment().stops()));
    }

    /**
     * Steps by stage and by what they need. What a danger asks comes before everything, what clears it before every other
     * repair and before anything that may fire or heat.
     *
     * @param closures what may be shut, by id
     * @param stops    the dangers that stand at the start
     * @throws IllegalStateException for a need that is not met or runs in a circle, for a closure that is not reopened,
     *                               for water heated to 80 °C or more, for water let out or a way of relief shut while
     *                               the boiler may fire,
     *                               for heat while a danger that forbids it is not over
     */
    static List<PlanStep> order(List<DraftPlan.DraftStep> drawn, Map<String, Closure> closures, List<Assessment.StopFound> stops) {
        Map<String, DraftPlan.DraftStep> byId = byId(drawn);
        DirectedAcyclicGraph<String, DefaultEdge> graph = new DirectedAcyclicGraph<>(DefaultEdge.class);
        byId.keySet().forEach(graph::addVertex);
        byId.values().forEach(d -> {
            d.step().needs().forEach(need -> edge(graph, byId, need, d.step()));
            d.step().after().stream().filter(byId::containsKey).forEach(first -> edge(graph, byId, first, d.step()));
        });
        closuresBeforeReopenings(graph, byId);
        dangersFirst(graph, byId);
        dangersOverBeforeHeat(graph, byId);
        Comparator<String> byStage = Comparator.comparing((String id) -> Stage.of(Lookup.known(byId, id).step())).thenComparing(id -> id);
        IsolationRegister itinerary = new IsolationRegister(closures, stops);
        new TopologicalOrderIterator<>(graph, byStage).forEachRemaining(id -> itinerary.add(Lookup.known(byId, id)));
        return itinerary.finished();
    }

    /** One step is drawn up once, or by several rules in the same words. */
    private static Map<String, DraftPlan.DraftStep> byId(List<DraftPlan.DraftStep> drawn) {
        Map<String, DraftPlan.DraftStep> byId = new TreeMap<>();
        for (DraftPlan.DraftStep d : drawn) {
            DraftPlan.DraftStep other = byId.putIfAbsent(d.step().id(), d);
            if (other != null && !other.step().equals(d.step())) {
                throw new IllegalStateException("the step " + d.step().id() + " is drawn up in two ways, by "
                        + other.rule().id() + " and by " + d.rule().id() + ".");
            }
        }
        return byId;
    }

    private static void edge(DirectedAcyclicGraph<String, DefaultEdge> graph, Map<String, DraftPlan.DraftStep> byId, String first, Step then) {
        if (!byId.containsKey(first)) {
            throw new IllegalStateException("the step " + then.id() + " needs " + first + ", which is not in the plan.");
        }
        try {
            graph.addEdge(first, then.id());
        } catch (IllegalArgumentException circle) {
            throw new IllegalStateException("the step " + then.id() + " comes after " + first
                    + ", which itself comes after it: a circle.", circle);
        }
    }

    private static void closuresBeforeReopenings(DirectedAcyclicGraph<String, DefaultEdge> graph, Map<String, DraftPlan.DraftStep> byId) {
        for (DraftPlan.DraftStep closing : byId.values()) {
            closing.step().closes().ifPresent(thing -> byId.values().stream().map(DraftPlan.DraftStep::step)
                    .filter(s -> s.reopens().equals(Optional.of(thing))).forEach(s -> edge(graph, byId, closing.step().id(), s)));
        }
    }

    /** Nothing is brought, agreed or opened before what a danger asks, and nothing else is mended before what clears it. */
    private static void dangersFirst(DirectedAcyclicGraph<String, DefaultEdge> graph, Map<String, DraftPlan.DraftStep> byId) {
        List<Step> steps = byId.values().stream().map(DraftPlan.DraftStep::step).toList();
        for (Step danger : steps.stream().filter(Step::isOfDanger).toList()) {
            steps.stream().filter(s -> !s.isOfDanger() && (Stage.of(danger) == Stage.MAKE_SAFE || Stage.of(s).compareTo(Stage.REPAIR) >= 0))
                    .forEach(s -> edge(graph, byId, danger.id(), s));
        }
    }

    private static void dangersOverBeforeHeat(DirectedAcyclicGraph<String, DefaultEdge> graph, Map<String, DraftPlan.DraftStep> byId) {
        List<Step> steps = byId.values().stream().map(DraftPlan.DraftStep::step).toList();
        steps.stream().filter(s -> s.clears().isPresent()).forEach(over -> steps.stream()
                .filter(s -> s.fires().orElse(false) || s.heatsToCelsius().isPresent()).forEach(s -> edge(graph, byId, over.id(), s)));
    }

    static List<String> commaList(String note) {
        return note.isBlank() ? List.of() : Stream.of(note).flatMap(n -> Arrays.stream(n.split(","))).map(String::strip).toList();
    }
}
