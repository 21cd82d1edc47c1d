package neutralpoint.rulebase;

import neutralpoint.rulebase.fact.Evidence;

/**
 * One piece of evidence as it counted.
 *
 * @param finding  the finding it belongs to
 * @param value    the answer as it is shown
 * @param decibans what it added, after damping within its family
 */
public record WeighedEvidence(String finding, String value, double decibans, Evidence.Kind kind, RuleInfo rule) {

    public boolean isFor() {
        return decibans > 0;
    }
}
