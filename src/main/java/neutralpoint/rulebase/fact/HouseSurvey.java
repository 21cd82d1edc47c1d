package neutralpoint.rulebase.fact;

/**
 * That the radiators of a house were surveyed; every survey rule begins with it.
 *
 * @param radiators how many had top, base and both tails read
 */
public record HouseSurvey(int radiators) {}
