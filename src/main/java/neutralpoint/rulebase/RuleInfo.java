package neutralpoint.rulebase;

import java.util.Map;

/**
 * A rule as a reader sees it: its sentence, its mechanism and where it comes from.
 *
 * @param title  a few words naming a red line; empty for other rules
 * @param action what to do now; empty for other rules
 */
public record RuleInfo(String id, String folder, String says, String because, String source, String title, String action) {

    static RuleInfo of(org.kie.api.definition.rule.Rule rule) {
        Map<String, Object> notes = rule.getMetaData();
        return new RuleInfo(rule.getName(), rule.getPackageName().replaceFirst("^rules\\.", ""), note(notes, "says"),
                note(notes, "because"), note(notes, "source"), note(notes, "title"), note(notes, "action"));
    }

    private static String note(Map<String, Object> notes, String name) {
        Object value = notes.get(name);
        return value == null ? "" : value.toString();
    }
}
