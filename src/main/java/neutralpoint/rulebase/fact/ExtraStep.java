package neutralpoint.rulebase.fact;

/** A step of the order of work that belongs to no cause; the rule's action says what to do. */
public record ExtraStep(String phase) {}
