package neutralpoint.rulebase.fact;

import java.util.List;

/** Two answers that cannot both be right; the rule's because says which to look at again. */
public record Contradiction(List<Sign> from) {
    public static Contradiction between(Sign... from) {
        return new Contradiction(List.of(from));
    }
}
