package neutralpoint.rulebase.fact;

/** A cause that is settled or likely; only the rules in {@code explained} read it. */
public record Likely(String cause) {}
