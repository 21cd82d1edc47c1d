package neutralpoint.rulebase.fact;

/**
 * What fills the heating, where a filling loop and a loft tank may both do so.
 *
 * @param state known or doubtful; known means only that nothing found speaks against it
 */
public record FilledBy(String state) {}
