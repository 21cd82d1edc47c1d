package neutralpoint.rulebase.fact;

import java.util.Set;

/**
 * The one system that a plan is made for; told together with {@link Planning}.
 *
 * @param system   the arrangement the plan takes the house to have
 * @param status   settled or likely
 * @param features features found besides
 * @param traits   traits of the system and of its features
 */
public record PlannedSystem(String system, String status, Set<String> features, Set<String> traits) {}
