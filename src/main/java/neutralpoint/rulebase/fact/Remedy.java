package neutralpoint.rulebase.fact;

/** A course that answers a cause on this system. One that names another course replaces the usual one. */
public record Remedy(String course, Standing standing) {}
