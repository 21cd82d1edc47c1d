package neutralpoint.rulebase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.catalogue.Closure;
import neutralpoint.rulebase.fact.PlannedSystem;
import neutralpoint.rulebase.fact.Step;

/**
 * What the rules say of the work in one house, not yet put in order.
 *
 * @param course    the course whose steps these are
 * @param method    the method of cleansing, when the course cleanses and nothing stands in its way
 * @param layout    the system the steps are for
 * @param steps     steps in the order of rule ids; none where a cleanse is refused and no other course comes first
 * @param obstacles what stands in the way of the cleanse that was asked for or would be usual
 * @param closures  what may be shut in a house, by id
 */
public record DraftPlan(Assessment assessment, String course, Optional<String> method, PlannedSystem layout, List<DraftStep> steps,
        List<Obstacle> obstacles, Map<String, Closure> closures) {

    /** A step with the rule that drew it up. */
    public record DraftStep(RuleInfo rule, Step step) {}

    /**
     * Something that forbids a cleanse here.
     *
     * @param because why it is forbidden
     * @param first   the work that must come first
     * @param then    the condition under which a cleanse may be planned
     */
    public record Obstacle(String because, String first, String then) {}
}
