package neutralpoint.rulebase;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A strong sign that none of the causes to be worked on accounts for.
 *
 * @param finding catalogue id of the finding
 * @param value   the answer as it is shown
 * @param rule    what it speaks for, and why
 * @param second  the likeliest cause that it does speak for, to be tried together with the leading one
 */
public record Unexplained(String finding, String value, RuleInfo rule, Assessment.CauseStanding second) {
    /** A sign that speaks for a cause by so many decibans is strong. */
    private static final double STRONG_DECIBANS = 10;

    /**
     * @param causes  all causes, best first
     * @param leading the cause that the course answers
     */
    static List<Unexplained> of(List<Assessment.CauseStanding> causes, Optional<Assessment.CauseStanding> leading) {
        return by(causes, c -> c.isActive() || leading.map(c::equals).orElse(false));
    }

    /** The strong signs that would be left if this cause were all there is. */
    public static List<Unexplained> by(List<Assessment.CauseStanding> causes, Assessment.CauseStanding only) {
        return by(causes, only::equals);
    }

    private static List<Unexplained> by(List<Assessment.CauseStanding> causes, Predicate<Assessment.CauseStanding> taken) {
        Set<String> accountedFor = new HashSet<>();
        causes.stream().filter(taken)
                .forEach(c -> c.evidence().stream().filter(Unexplained::isAccounted).forEach(e -> accountedFor.add(e.finding())));
        Map<String, Unexplained> found = new LinkedHashMap<>();
        for (Assessment.CauseStanding c : causes) {
            for (WeighedEvidence e : c.evidence()) {
                if (e.decibans() >= STRONG_DECIBANS && e.explainedBy().isEmpty() && !e.finding().isEmpty()
                        && !c.isExcluded() && c.cause().isFault() && !accountedFor.contains(e.finding())) {
                    found.putIfAbsent(e.finding(), new Unexplained(e.finding(), e.value(), e.rule(), c));
                }
            }
        }
        return List.copyOf(found.values());
    }

    private static boolean isAccounted(WeighedEvidence e) {
        return e.isFor() || e.explainedBy().isPresent();
    }
}
