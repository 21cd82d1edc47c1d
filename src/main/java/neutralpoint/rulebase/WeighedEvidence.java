package neutralpoint.rulebase;

import java.util.Optional;
import neutralpoint.rulebase.fact.Evidence;

/**
 * One piece of evidence as it counted.
 *
 * @param finding     the finding it belongs to; empty when the rule looked at no finding
 * @param value       the answer as it is shown
 * @param decibans    what it added, after damping within its family; nothing once it is explained
 * @param explainedBy the settled cause that accounts for it
 */
public record WeighedEvidence(String finding, String value, double decibans, Evidence.Kind kind, RuleInfo rule,
        Optional<String> explainedBy) {

    public boolean isFor() {
        return decibans > 0;
    }
}
