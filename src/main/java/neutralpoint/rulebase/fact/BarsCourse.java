package neutralpoint.rulebase.fact;

/** A course that must not be taken on this system, and what is recommended in its place. */
public record BarsCourse(String course, String instead) {}
