package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * One thing that a standing danger asks for now, in the words of its catalogue entry.
 *
 * @param step    the id of the step it makes
 * @param after   the steps before it
 * @param heatOff true when from here on nothing may fire
 */
public record DangerAsks(String danger, String step, List<String> after, String says, String proves, boolean heatOff) {}
