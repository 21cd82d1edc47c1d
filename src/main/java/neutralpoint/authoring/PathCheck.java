package neutralpoint.authoring;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.document.BadInput;
import neutralpoint.document.Lookup;

/** Holds the paths, states and parts that rules name against those there are. */
final class PathCheck {
    /** What a doubt about a path bars. */
    static final Set<String> CLEANSES = Set.of(CourseId.FULL_FLUSH, CourseId.PARTIAL_CLEANSE);

    private static final Map<String, Set<String>> STATES = Map.of("ReliefPath", Set.of("open", "doubtful", "shut"),
            "TapWater", Set.of("apart", "doubtful", "shared"), "FilledBy", Set.of("known", "doubtful"));
    private static final Map<String, Set<String>> PARTS = Map.of(
            "relief", Set.of("feed-and-vent", "vent", "flow", "vessel", "safety-valve", "safety-valve-stuck"),
            "waters", Set.of("tank", "cylinder", "taps", "leak"), "filling", Set.of());
    private static final Map<String, Set<String>> SAYING = Map.of("WaterPath.shut", Set.of("relief"), "WaterPath.shared", Set.of("waters"),
            "WaterPath.doubtful", PARTS.keySet());
    private static final Pattern AT = Pattern.compile("(shut|shared)At\\s+(?:not\\s+)?contains\\s+\"([^\"]*)\"");

    private PathCheck() {}

    /** Refuses a condition that asks for a state or a part there is not. */
    static void check(RuleText.Pattern pattern) {
        Set<String> states = STATES.get(pattern.fact());
        if (states == null) {
            return;
        }
        ReferenceCheck.of(pattern, "state").forEach(s -> ReferenceCheck.known(s, states, "state of " + pattern.fact(), pattern.where()));
        for (String constraint : pattern.constraints()) {
            Matcher at = AT.matcher(constraint);
            while (at.find()) {
                String path = at.group(1).equals("shut") ? "relief" : "waters";
                ReferenceCheck.known(at.group(2), Lookup.known(PARTS, path), "part of the path " + path, pattern.where());
            }
        }
    }

    /** Refuses a conclusion about a path there is not, one without its part, and a doubt without the look that settles it. */
    static void check(Conclusion c, RuleText rule) {
        if (!rule.folder().equals("paths")) {
            throw new BadInput(c.where(), "\"" + rule.id() + "\" concludes about a path; such rules stand in paths/.");
        }
        String path = c.ids().isEmpty() ? "" : c.ids().get(0);
        ReferenceCheck.known(path, Lookup.known(SAYING, c.call()), "path for " + c.call(), c.where());
        List<String> at = c.given("at");
        at.forEach(part -> ReferenceCheck.known(part, Lookup.known(PARTS, path), "part of the path " + path, c.where()));
        boolean doubt = c.call().equals("WaterPath.doubtful");
        if (doubt != at.isEmpty()) {
            throw new BadInput(c.where(), doubt ? "\"" + rule.id() + "\" is a doubt and has no .at(…)."
                    : "\"" + rule.id() + "\" needs .at(…), one of " + String.join(", ", Lookup.known(PARTS, path).stream().sorted().toList()) + ".");
        }
        if (doubt && rule.note("look").isBlank()) {
            throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs a @look, the one look that settles the doubt.");
        }
    }
}
