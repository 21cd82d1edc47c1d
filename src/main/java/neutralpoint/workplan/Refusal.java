package neutralpoint.workplan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.rulebase.Draft;

/**
 * Why a cleanse is not planned, and what comes before one may be.
 *
 * @param because why it is forbidden here
 * @param first   the work that must come first
 * @param then    the condition under which a cleanse may be planned
 */
public record Refusal(String because, List<String> first, String then) {

    /** The refusal that follows from what stands in the way; none where nothing does. */
    static Optional<Refusal> of(List<Draft.Obstacle> obstacles) {
        return obstacles.isEmpty() ? Optional.empty() : Optional.of(new Refusal(
                together(obstacles, Draft.Obstacle::because), obstacles.stream().map(Draft.Obstacle::first).distinct().toList(),
                together(obstacles, Draft.Obstacle::then)));
    }

    private static String together(List<Draft.Obstacle> obstacles, Function<Draft.Obstacle, String> sentence) {
        return obstacles.stream().map(sentence).distinct().collect(Collectors.joining(" "));
    }
}
