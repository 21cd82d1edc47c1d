package neutralpoint.rulebase;

import java.util.List;
import java.util.Map;

/**
 * What a verdict does not show, for whoever would say otherwise.
 *
 * @param arrangements what speaks for and against each kind of system and feature, by id
 * @param bars         why a course is barred in this house, by the course's id
 */
public record Grounds(Map<String, List<WeighedEvidence>> arrangements, Map<String, List<String>> bars) {

    public List<WeighedEvidence> ofArrangement(String id) {
        return arrangements.getOrDefault(id, List.of());
    }

    public List<String> barring(String course) {
        return bars.getOrDefault(course, List.of());
    }
}
