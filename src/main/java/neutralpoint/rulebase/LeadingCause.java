package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Phase;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.LeadsTo;

/**
 * The one cause that is to be answered.
 *
 * @param because why it is put before the causes it leads to
 * @param leads   which faults stand behind others
 */
record LeadingCause(Optional<Assessment.CauseStanding> standing, List<String> because, List<Derived<LeadsTo>> leads) {

    /** The likeliest fault that explains the complaint, or the fault that stands behind it; without one, the likeliest of all. */
    static LeadingCause of(Job job, List<Assessment.CauseStanding> causes, List<Derived<LeadsTo>> leads) {
        Set<String> complaints = job.chosen(FindingId.COMPLAINT);
        List<Assessment.CauseStanding> worth = causes.stream()
                .filter(c -> !c.isExcluded() && c.isSupported()).toList();
        Predicate<Assessment.CauseStanding> answers = c -> c.cause().answers().stream().anyMatch(complaints::contains);
        // Want of protection lets faults grow but is seldom itself what the householder feels; and a fault
        // that is likely comes before one that merely fits the words of the complaint.
        return Stream.<Predicate<Assessment.CauseStanding>>of(
                        answers.and(c -> c.isSettled() && isLikelyFault(c)),
                        c -> c.isSettled() && isLikelyFault(c) && c.cause().isFault(),
                        answers.and(LeadingCause::isLikelyFault),
                        answers.and(Assessment.CauseStanding::isActive),
                        LeadingCause::isLikelyFault,
                        answers,
                        c -> c.isActive() || complaints.isEmpty())
                .flatMap(wanted -> worth.stream().filter(wanted).limit(1)).findFirst()
                .map(c -> behind(c, worth, leads)).orElse(new LeadingCause(Optional.empty(), List.of(), leads));
    }

    /** Goes from a fault to the likeliest one behind it, as far as that leads. */
    private static LeadingCause behind(Assessment.CauseStanding first, List<Assessment.CauseStanding> worth, List<Derived<LeadsTo>> leads) {
        Assessment.CauseStanding chief = first;
        List<String> because = new ArrayList<>();
        Set<String> seen = new HashSet<>(Set.of(first.id()));
        for (Optional<Derived<LeadsTo>> lead = leadTo(chief, worth, leads, seen); lead.isPresent(); lead = leadTo(chief, worth, leads, seen)) {
            String root = lead.get().fact().root();
            chief = worth.stream().filter(c -> c.id().equals(root)).findFirst().orElseThrow();
            because.add(lead.get().rule().because());
            seen.add(root);
        }
        return new LeadingCause(Optional.of(chief), because, leads);
    }

    private static Optional<Derived<LeadsTo>> leadTo(Assessment.CauseStanding consequence, List<Assessment.CauseStanding> worth,
            List<Derived<LeadsTo>> leads, Set<String> seen) {
        return worth.stream().filter(c -> isLikelyFault(c) && !seen.contains(c.id()))
                .flatMap(c -> leads.stream().filter(l -> l.fact().root().equals(c.id()) && l.fact().consequence().equals(consequence.id())))
                .findFirst();
    }

    private static boolean isLikelyFault(Assessment.CauseStanding c) {
        return c.isActive() && c.cause().phase() != Phase.PROTECT;
    }

    boolean is(Assessment.CauseStanding other) {
        return standing.map(s -> s.id().equals(other.id())).orElse(false);
    }

    /** The causes with the leading one first, and no consequence before the fault behind it. */
    List<Assessment.CauseStanding> first(List<Assessment.CauseStanding> causes) {
        Map<String, Assessment.CauseStanding> left = new LinkedHashMap<>();
        standing.ifPresent(c -> left.put(c.id(), c));
        causes.forEach(c -> left.putIfAbsent(c.id(), c));
        List<Assessment.CauseStanding> ordered = new ArrayList<>(causes.size());
        standing.ifPresent(c -> ordered.add(left.remove(c.id())));
        while (!left.isEmpty()) {
            takeAfterItsRoots(left.keySet().iterator().next(), left, ordered);
        }
        return List.copyOf(ordered);
    }

    private void takeAfterItsRoots(String id, Map<String, Assessment.CauseStanding> left, List<Assessment.CauseStanding> ordered) {
        Assessment.CauseStanding c = left.remove(id);
        for (Derived<LeadsTo> lead : leads) {
            Assessment.CauseStanding root = left.get(lead.fact().root());
            if (lead.fact().consequence().equals(id) && root != null && isLikelyFault(root)) {
                takeAfterItsRoots(root.id(), left, ordered);
            }
        }
        ordered.add(c);
    }
}
