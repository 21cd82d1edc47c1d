package neutralpoint.catalogue;

import java.util.Map;

/**
 * Ids that were given up, each with the one that stands for it now, so that older job files are still read.
 *
 * @param options for each finding, by its id of today
 */
public record Renames(Map<String, String> findings, Map<String, Map<String, String>> options, Map<String, String> causes,
        Map<String, String> arrangements) {
    public static final Renames NONE = new Renames(Map.of(), Map.of(), Map.of(), Map.of());

    /** The id of today; one that was never given up is returned as it is. */
    public String finding(String id) {
        return findings.getOrDefault(id, id);
    }

    /** An answer's id of today. */
    public String option(String finding, String id) {
        return options.getOrDefault(finding, Map.of()).getOrDefault(id, id);
    }

    public String cause(String id) {
        return causes.getOrDefault(id, id);
    }

    public String arrangement(String id) {
        return arrangements.getOrDefault(id, id);
    }
}
