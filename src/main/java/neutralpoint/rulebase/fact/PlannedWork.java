package neutralpoint.rulebase.fact;

/**
 * One step of the order of work.
 *
 * @param chief true for the recommended course itself
 */
public record PlannedWork(String course, String cause, String phase, boolean chief) {}
