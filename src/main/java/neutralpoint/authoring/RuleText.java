package neutralpoint.authoring;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Source;
import neutralpoint.document.Where;

/**
 * One rule as it is written.
 *
 * @param folder   the stage it belongs to: stop, arrangement, evidence …
 * @param subject  the file it is in, with the folder below the stage if there is one: boiler-off, open-vent/vent-blocked
 * @param notes    its annotations: says, or sign or signs in its place, because and, for some, source, action, always …
 * @param patterns what must be so for it to fire
 */
public record RuleText(String id, String folder, String subject, Where where, Map<String, String> notes,
        List<Pattern> patterns, Conclusion conclusion) {

    /** One condition: a kind of fact and what is asked of it; absent when there must be none such. */
    public record Pattern(String fact, List<String> constraints, boolean absent, Where where) {

        String text() {
            return (absent ? "no " : "") + fact + constraints.stream().sorted().collect(Collectors.joining(", ", "(", ")"));
        }
    }

    /** Where it comes from: common practice where it names nothing else. */
    public String source() {
        return notes.getOrDefault("source", Source.COMMON_PRACTICE);
    }

    public String note(String name) {
        return notes.getOrDefault(name, "");
    }

    /** The conditions in a form in which two rules that ask the same read the same. */
    String conditions() {
        return patterns.stream().map(Pattern::text).sorted().collect(Collectors.joining(" and "));
    }
}
