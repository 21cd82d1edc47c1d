package neutralpoint.authoring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;

/** The list of all rules with their sentences, made from the rules. */
public final class RuleIndex {
    /** The stages in the order in which they come. */
    static final List<String> STAGES = List.of("survey", "stop", "arrangement", "paths", "evidence", "explained", "method", "competence", "course",
            "caution", "workplan");

    private RuleIndex() {}

    /** How many there are of each kind, in words. */
    public static Map<String, Integer> counts(Catalogue catalogue, List<RuleText> rules) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        counts.put("arrangements and features", catalogue.arrangements().size());
        counts.put("causes", catalogue.causes().size());
        counts.put("findings", catalogue.findings().size());
        counts.put("cautions", catalogue.cautions().size());
        STAGES.forEach(stage -> counts.put(stage + " rules", (int) rules.stream().filter(r -> r.folder().equals(stage)).count()));
        return counts;
    }

    public static String markdown(Catalogue catalogue, List<RuleText> rules) {
        StringBuilder out = new StringBuilder("# All rules\n\nMade by `neutralpoint rules index`.\n\n");
        counts(catalogue, rules).forEach((what, count) -> out.append("- ").append(count).append(' ').append(what).append('\n'));
        for (String stage : STAGES) {
            Map<String, List<RuleText>> subjects = rules.stream().filter(r -> r.folder().equals(stage))
                    .collect(Collectors.groupingBy(RuleText::subject, TreeMap::new, Collectors.toList()));
            subjects.forEach((subject, members) -> {
                out.append("\n## ").append(stage).append(": ").append(subject.replace('-', ' ').replace("/", ": ")).append("\n\n");
                members.forEach(r -> out.append("- `").append(r.id()).append("` ").append(RuleSentence.of(r, catalogue)).append('\n'));
            });
        }
        return out.toString();
    }
}
