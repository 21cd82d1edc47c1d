package neutralpoint.rulebase.fact;

import java.util.Set;

/**
 * What is known of the kind of system once the arrangement rules have been weighed.
 *
 * @param id             the most likely arrangement
 * @param status         settled, likely, unclear or contradictory
 * @param traits         traits shared by every arrangement still plausible: safe to rely on
 * @param possibleTraits traits of any arrangement still plausible: whatever is not here is ruled out
 */
public record Arrangement(String id, String status, Set<String> traits, Set<String> possibleTraits) {}
