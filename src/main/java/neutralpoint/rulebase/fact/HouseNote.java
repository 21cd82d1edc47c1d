package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * Something of this house that a step of the plan has to name, in its own words.
 *
 * @param about who-comes (what is referred waits for somebody), what-first (it waits for something else), earlier-work
 *              (what the order of work puts before a cleanse) or look-again (answers that contradict each other)
 * @param says  whole sentences; may be empty
 */
public record HouseNote(String about, String says) {
    /** What a step may have to name. */
    public static final List<String> ABOUT = List.of("who-comes", "what-first", "earlier-work", "look-again");
}
