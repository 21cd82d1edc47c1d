package neutralpoint.rulebase.fact;

/** A cause that a deciding test has settled; only the rules in {@code explained} read it. */
public record Settled(String cause) {}
