package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import neutralpoint.catalogue.Phase;
import neutralpoint.rulebase.fact.AlsoDo;
import neutralpoint.rulebase.fact.Before;
import neutralpoint.rulebase.fact.Covers;
import neutralpoint.rulebase.fact.LeadsTo;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;

/**
 * Puts the work in order: particular orders first, then the general ones that do not contradict
 * them, then the likeliest cause first.
 */
final class WorkOrder {
    /** More reasons than this for one place in the order would hide the work itself. */
    private static final int REASONS = 2;

    private final List<Derived<Before>> before;
    private final List<Derived<Covers>> covers;

    /**
     * @param leads a fault that stands behind another is cured before it
     */
    WorkOrder(List<Derived<Before>> before, List<Derived<LeadsTo>> leads, List<Derived<Covers>> covers) {
        this.covers = covers;
        Stream<Derived<Before>> roots = leads.stream().map(l -> l.map(f -> new Before(f.root(), f.consequence(), true)));
        this.before = Stream.concat(before.stream(), roots)
                .sorted(Comparator.comparing((Derived<Before> b) -> !b.fact().must()).thenComparing(b -> b.rule().id())
                        .thenComparing(b -> b.fact().first()).thenComparing(b -> b.fact().then())).toList();
    }

    List<Assessment.Step> steps(List<Assessment.CauseStanding> toBeDone, Function<Assessment.CauseStanding, CourseChoice.Chosen> choice) {
        Map<String, Assessment.CauseStanding> byId = new LinkedHashMap<>();
        toBeDone.forEach(c -> byId.put(c.id(), c));
        Map<String, List<String>> alsoAnswers = covered(byId, choice);
        DirectedAcyclicGraph<String, DefaultEdge> graph = new DirectedAcyclicGraph<>(DefaultEdge.class);
        byId.keySet().forEach(graph::addVertex);
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        for (Derived<Before> b : before) {
            String first = b.fact().first();
            String then = b.fact().then();
            if (byId.containsKey(first) && byId.containsKey(then) && !first.equals(then) && added(graph, first, then)) {
                reasons.computeIfAbsent(first, f -> new ArrayList<>()).add(b.rule().because());
            }
        }
        Comparator<String> likeliestFirst = Comparator.comparing((String id) -> byId.get(id).cause().phase())
                .thenComparing(id -> -byId.get(id).probability()).thenComparing(Comparator.naturalOrder());
        List<Assessment.Step> steps = new ArrayList<>();
        new TopologicalOrderIterator<>(graph, likeliestFirst).forEachRemaining(id -> steps.add(step(byId.get(id),
                choice.apply(byId.get(id)), reasons.getOrDefault(id, List.of()), alsoAnswers.getOrDefault(id, List.of()))));
        return steps;
    }

    /** Takes out the causes that another one's cleansing answers as well, and says which those are. */
    private Map<String, List<String>> covered(Map<String, Assessment.CauseStanding> byId,
            Function<Assessment.CauseStanding, CourseChoice.Chosen> choice) {
        Map<String, List<String>> alsoAnswers = new LinkedHashMap<>();
        for (Derived<Covers> c : covers) {
            Assessment.CauseStanding coverer = byId.get(c.fact().cause());
            Assessment.CauseStanding covered = byId.get(c.fact().covered());
            if (coverer != null && covered != null && choice.apply(coverer).course().cleanses()) {
                byId.remove(covered.id());
                alsoAnswers.computeIfAbsent(coverer.id(), x -> new ArrayList<>()).add(covered.cause().title());
            }
        }
        return alsoAnswers;
    }

    /** False where the edge would contradict an order already taken in, which stands above it. */
    private static boolean added(DirectedAcyclicGraph<String, DefaultEdge> graph, String first, String then) {
        try {
            return graph.addEdge(first, then) != null;
        } catch (IllegalArgumentException contradiction) {
            return false;
        }
    }

    /** Where another course took the place of the usual one, its own words say what is done: the usual work is not for here. */
    private static Assessment.Step step(Assessment.CauseStanding c, CourseChoice.Chosen chosen, List<String> order,
            List<String> alsoAnswers) {
        boolean usual = chosen.course().id().equals(c.cause().course());
        List<String> because = new ArrayList<>(Stream.concat(chosen.because().stream(), order.stream()).distinct().limit(REASONS).toList());
        if (!alsoAnswers.isEmpty()) {
            because.add("This also answers: " + String.join("; ", alsoAnswers) + ".");
        }
        return new Assessment.Step(Optional.of(chosen.course()), Optional.of(c.cause()), c.cause().phase(),
                usual ? c.cause().work() : chosen.course().means() + " For: " + c.cause().title() + ".",
                because.isEmpty() ? List.of(c.cause().means()) : because);
    }

    /** The steps that answer no cause, each after the last step of its phase or an earlier one. */
    static List<Assessment.Step> withAlsoDo(List<Assessment.Step> steps, List<Derived<AlsoDo>> also) {
        List<Assessment.Step> all = new ArrayList<>(steps);
        Map<String, Assessment.Step> distinct = new LinkedHashMap<>();
        also.forEach(d -> distinct.putIfAbsent(d.rule().id(), new Assessment.Step(Optional.empty(), Optional.empty(),
                Phase.of(d.fact().phase()), d.rule().action(), List.of(d.rule().because()))));
        distinct.values().stream().sorted(Comparator.comparing(Assessment.Step::phase)).forEach(all::add);
        return all;
    }
}
