package neutralpoint.rulebase.fact;

/** What the remedy of a cause needs, in this house, of the person who does it. */
public record Needs(String competence, Standing standing) {}
