package neutralpoint.rulebase.fact;

/**
 * A danger that stands in this house.
 *
 * @param danger   its id
 * @param referred true when somebody else must deal with it; otherwise it is cleared on site
 * @param heatOff  true when nothing may heat the house until it is over
 */
public record DangerStands(String danger, boolean referred, boolean heatOff) {}
