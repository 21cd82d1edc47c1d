package neutralpoint.authoring;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.BadInput;
import neutralpoint.rulebase.fact.Strength;

/**
 * The sentence of a rule. Evidence about a cause says its sign; what the sign says of the cause, and how strongly,
 * follows from what the rule concludes.
 */
public final class RuleSentence {
    private static final String STAGE = "evidence";

    private RuleSentence() {}

    /** The sentence: as it is written, or made of the sign. */
    public static String of(RuleText rule, Catalogue catalogue) {
        if (!rule.note("says").isBlank()) {
            return rule.note("says");
        }
        boolean many = rule.note("sign").isBlank();
        return (many ? rule.note("signs") : rule.note("sign")) + " " + verdict(rule.conclusion(), many ? "" : "s")
                + catalogue.cause(rule.conclusion().ids().get(0)).saidAs() + ".";
    }

    private static String verdict(Conclusion c, String s) {
        String grade = c.strength().map(Strength::words).orElse("");
        return switch (c.call()) {
            case "Evidence.supports" -> "speak" + s + " " + grade + " for ";
            case "Evidence.against" -> "speak" + s + " " + grade + " against ";
            case "Evidence.settles" -> "settle" + s + " it: ";
            default -> "rule" + s + " out ";
        };
    }

    /** By rule id, the sentences that are not written as such. */
    public static Map<String, String> made(List<RuleText> rules, Catalogue catalogue) {
        Map<String, String> made = new TreeMap<>();
        rules.stream().filter(r -> r.note("says").isBlank()).forEach(r -> made.put(r.id(), of(r, catalogue)));
        return made;
    }

    /** Refuses a rule that says nothing, or both a sentence and a sign. */
    static void check(RuleText rule) {
        long said = List.of("says", "sign", "signs").stream().filter(note -> !rule.note(note).isBlank()).count();
        if (rule.folder().equals(STAGE) ? said != 1 : said != 1 || rule.note("says").isBlank()) {
            throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs " + (rule.folder().equals(STAGE)
                    ? "@sign, its sign in words (@signs where they are several), or @says in place of it." : "@says, its sentence."));
        }
    }
}
