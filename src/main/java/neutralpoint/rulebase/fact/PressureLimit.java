package neutralpoint.rulebase.fact;

/**
 * The greatest pressure the parts of this system may see; there is none while nothing is known of them.
 *
 * @param bar over the air outside
 */
public record PressureLimit(double bar) {}
