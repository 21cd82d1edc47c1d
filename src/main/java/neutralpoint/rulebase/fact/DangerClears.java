package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * One thing that clears a danger on site, in the words of its catalogue entry.
 *
 * @param step    the id of the step it makes
 * @param after   the steps before it
 * @param tools   with commas between
 * @param minutes 0 or more
 * @param first   true when it is done before any other work is begun
 * @param last    true when the danger is over once it is proved
 */
public record DangerClears(String danger, String step, List<String> after, String says, String proves, String tools, double minutes,
        boolean first, boolean last) {}
