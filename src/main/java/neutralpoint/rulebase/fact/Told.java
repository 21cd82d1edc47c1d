package neutralpoint.rulebase.fact;

/**
 * Something of this house that a step of the plan has to name, in its own words.
 *
 * @param about who-comes (what is referred waits for somebody), what-first (it waits for something else), earlier-work
 *              (what the order of work puts before a cleanse) or look-again (answers that contradict each other)
 * @param says  whole sentences; may be empty
 */
public record Told(String about, String says) {}
