package neutralpoint.rulebase;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import neutralpoint.catalogue.Source;

/**
 * A rule as a reader sees it: its sentence, its mechanism and where it comes from.
 *
 * @param title  a few words naming a red line; empty for other rules
 * @param action what to do now; empty for other rules
 * @param notes  everything it is annotated with, by name
 */
public record RuleInfo(String id, String folder, String says, String because, String source, String title, String action,
        Map<String, String> notes) {

    static RuleInfo of(org.kie.api.definition.rule.Rule rule, Map<String, String> sentences) {
        Map<String, String> notes = new TreeMap<>();
        rule.getMetaData().forEach((name, value) -> notes.put(name, String.valueOf(value)));
        Optional.ofNullable(sentences.get(rule.getName())).ifPresent(sentence -> notes.put("says", sentence));
        return of(rule.getName(), rule.getPackageName().replaceFirst("^rules\\.", ""), notes);
    }

    /** A rule that is known by its notes. */
    public static RuleInfo of(String id, String folder, Map<String, String> notes) {
        return new RuleInfo(id, folder, notes.getOrDefault("says", ""), notes.getOrDefault("because", ""),
                notes.getOrDefault("source", Source.COMMON_PRACTICE), notes.getOrDefault("title", ""), notes.getOrDefault("action", ""),
                Collections.unmodifiableMap(notes));
    }

    /** What it is annotated with under this name; empty when with nothing. */
    public String note(String name) {
        return notes.getOrDefault(name, "");
    }
}
