package neutralpoint.rulebase.fact;

import java.util.Set;

/**
 * The tap water beside the heating water.
 *
 * @param state    apart, doubtful or shared; apart means only that nothing found speaks against it
 * @param sharedAt where they meet: any of tank, cylinder, taps, leak
 */
public record TapWater(String state, Set<String> sharedAt) {}
