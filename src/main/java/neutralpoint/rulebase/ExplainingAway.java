package neutralpoint.rulebase;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.Explains;
import neutralpoint.rulebase.fact.Sign;

/** Signs that a settled cause already accounts for, by the rivals they no longer speak for. */
record ExplainingAway(Map<String, Map<Sign, String>> signsByRival) {
    static final ExplainingAway NOTHING = new ExplainingAway(Map.of());

    static ExplainingAway of(List<Derived<Explains>> found) {
        Map<String, Map<Sign, String>> signs = new TreeMap<>();
        found.forEach(d -> d.fact().rivals().forEach(rival ->
                signs.computeIfAbsent(rival, r -> new HashMap<>()).putIfAbsent(d.fact().sign(), d.fact().by())));
        return new ExplainingAway(signs);
    }

    /** True when some sign no longer speaks for this cause. */
    boolean speaksOf(String cause) {
        return signsByRival.containsKey(cause);
    }

    /** The settled cause that accounts for this evidence, if one does. Deciding tests are never explained away. */
    Optional<String> by(Evidence evidence) {
        if (evidence.kind() != Evidence.Kind.FOR || evidence.from().isEmpty()) {
            return Optional.empty();
        }
        return Optional.ofNullable(signsByRival.getOrDefault(evidence.about(), Map.of()).get(evidence.from().get(0)));
    }
}
