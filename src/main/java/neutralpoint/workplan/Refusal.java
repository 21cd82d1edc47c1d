package neutralpoint.workplan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.rulebase.DraftPlan;

/**
 * Why a cleanse, or any work, is not planned, and what comes before it may be.
 *
 * @param what    what is not planned: cleanse or work
 * @param because why it is forbidden here
 * @param first   the work that must come first
 * @param then    the condition under which a cleanse may be planned
 */
public record Refusal(String what, String because, List<String> first, String then) {

    /** The refusal that follows from what stands in the way; none where nothing does. */
    static Optional<Refusal> of(DraftPlan draft) {
        List<DraftPlan.Obstacle> obstacles = draft.obstacles();
        boolean onlyLooks = draft.course().equals(CourseId.LOOK_FURTHER) && draft.assessment().verdict().course().repairs();
        return obstacles.isEmpty() ? Optional.empty() : Optional.of(new Refusal(onlyLooks ? "work" : "cleanse",
                together(obstacles, DraftPlan.Obstacle::because), obstacles.stream().map(DraftPlan.Obstacle::first).distinct().toList(),
                together(obstacles, DraftPlan.Obstacle::then)));
    }

    private static String together(List<DraftPlan.Obstacle> obstacles, Function<DraftPlan.Obstacle, String> sentence) {
        return obstacles.stream().map(sentence).distinct().collect(Collectors.joining(" "));
    }
}
