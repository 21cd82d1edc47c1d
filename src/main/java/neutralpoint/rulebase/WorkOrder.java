package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Phase;
import neutralpoint.document.Lookup;
import neutralpoint.rulebase.fact.AlsoCures;
import neutralpoint.rulebase.fact.ComesBefore;
import neutralpoint.rulebase.fact.ExtraStep;
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

    /** A cause that is to be worked on, with the course that answers it here. */
    record ToDo(Assessment.CauseStanding standing, CourseChoice.Chosen chosen) {
        String id() {
            return standing.id();
        }
    }

    private final List<Derived<ComesBefore>> before;
    private final List<Derived<AlsoCures>> covers;

    /**
     * @param leads a fault that stands behind another is cured before it
     */
    WorkOrder(List<Derived<ComesBefore>> before, List<Derived<LeadsTo>> leads, List<Derived<AlsoCures>> covers) {
        this.covers = covers;
        Stream<Derived<ComesBefore>> roots = leads.stream().map(l -> l.map(f -> new ComesBefore(f.root(), f.consequence(), true)));
        this.before = Stream.concat(before.stream(), roots)
                .sorted(Comparator.comparing((Derived<ComesBefore> b) -> !b.fact().must()).thenComparing(b -> b.rule().id())
                        .thenComparing(b -> b.fact().first()).thenComparing(b -> b.fact().then())).toList();
    }

    List<Assessment.WorkStep> steps(List<ToDo> toDo) {
        Map<String, ToDo> byId = new LinkedHashMap<>();
        toDo.forEach(t -> byId.put(t.id(), t));
        Map<String, List<String>> alsoAnswers = covered(byId);
        DirectedAcyclicGraph<String, DefaultEdge> graph = new DirectedAcyclicGraph<>(DefaultEdge.class);
        byId.keySet().forEach(graph::addVertex);
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        for (Derived<ComesBefore> b : before) {
            String first = b.fact().first();
            String then = b.fact().then();
            if (byId.containsKey(first) && byId.containsKey(then) && !first.equals(then) && added(graph, first, then)) {
                reasons.computeIfAbsent(first, f -> new ArrayList<>()).add(b.rule().because());
            }
        }
        Comparator<String> likeliestFirst = Comparator.comparing((String id) -> Lookup.known(byId, id).standing().cause().phase())
                .thenComparing(id -> -Lookup.known(byId, id).standing().probability()).thenComparing(Comparator.naturalOrder());
        List<Assessment.WorkStep> steps = new ArrayList<>();
        new TopologicalOrderIterator<>(graph, likeliestFirst).forEachRemaining(id -> steps.add(step(Lookup.known(byId, id), reasons.getOrDefault(id, List.of()), alsoAnswers.getOrDefault(id, List.of()))));
        return steps;
    }

    /** Takes out the causes that another one's cleansing answers as well, and says which those are. */
    private Map<String, List<String>> covered(Map<String, ToDo> byId) {
        Map<String, List<String>> alsoAnswers = new LinkedHashMap<>();
        for (Derived<AlsoCures> c : covers) {
            ToDo coverer = byId.get(c.fact().cause());
            ToDo covered = byId.get(c.fact().covered());
            if (coverer != null && covered != null && coverer.chosen().course().cleanses()) {
                byId.remove(covered.id());
                alsoAnswers.computeIfAbsent(coverer.id(), x -> new ArrayList<>()).add(covered.standing().cause().title());
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
    private static Assessment.WorkStep step(ToDo toDo, List<String> order, List<String> alsoAnswers) {
        Cause cause = toDo.standing().cause();
        CourseChoice.Chosen chosen = toDo.chosen();
        boolean usual = chosen.course().id().equals(cause.course());
        List<String> because = new ArrayList<>(Stream.concat(chosen.because().stream(), order.stream()).distinct().limit(REASONS).toList());
        if (!alsoAnswers.isEmpty()) {
            because.add("This also answers: " + String.join("; ", alsoAnswers) + ".");
        }
        return new Assessment.WorkStep(Optional.of(chosen.course()), Optional.of(cause), cause.phase(),
                usual ? cause.work() : chosen.course().means() + " For: " + cause.title() + ".",
                because.isEmpty() ? List.of(cause.means()) : because);
    }

    /** The steps that answer no cause come after the work itself, in the order of their phases. */
    static List<Assessment.WorkStep> withAlsoDo(List<Assessment.WorkStep> steps, List<Derived<ExtraStep>> also) {
        List<Assessment.WorkStep> all = new ArrayList<>(steps);
        Map<String, Assessment.WorkStep> distinct = new LinkedHashMap<>();
        also.forEach(d -> distinct.putIfAbsent(d.rule().id(), new Assessment.WorkStep(Optional.empty(), Optional.empty(),
                Phase.of(d.fact().phase()), d.rule().action(), List.of(d.rule().because()))));
        distinct.values().stream().sorted(Comparator.comparing(Assessment.WorkStep::phase)).forEach(all::add);
        return all;
    }
}
