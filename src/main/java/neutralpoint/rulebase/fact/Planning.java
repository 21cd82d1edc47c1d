package neutralpoint.rulebase.fact;

/**
 * That a course is to be planned; told last, and every work plan rule begins with it.
 *
 * @param course the course to be carried out
 * @param method the method of cleansing; empty when the course does not cleanse
 * @param supply how much cold water there is: weak, ordinary, strong or unknown
 * @param descales   true when the cleanse is to take scale off an exchanger, which takes an acid
 * @param onlyClears true when what clears the dangers that stand is all the repair there is
 */
public record Planning(String course, String method, String supply, boolean descales, boolean onlyClears) {}
