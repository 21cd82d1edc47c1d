package neutralpoint.rulebase;

/** A conclusion together with the rule that drew it. */
record Derived<T>(RuleInfo rule, T fact) {}
