package neutralpoint.authoring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.SafeFile;
import neutralpoint.rulebase.fact.Strength;

/** Makes a new evidence rule with its headings in place, for its author to complete. It looks at one answer, so its examples follow from it. */
public final class Scaffold {
    private static final String HEADER = """
            package rules.evidence;

            import neutralpoint.rulebase.fact.*;
            import static neutralpoint.rulebase.fact.Strength.*;
            """;
    private static final String RULE = """

            rule "%s"
              @sign("%s")
              @because("")
            when
              $sign : Observed(finding == "%s", answer == "%s")
            then
              insert(Evidence.%s("%s", %s, $sign));
            end
            """;
    private Scaffold() {}

    /**
     * What the new rule is to say.
     *
     * @param against true when the sign speaks against the cause
     */
    public record Wanted(String id, String finding, String answer, String cause, Strength strength, boolean against) {}

    /** Appends the rule to the file of its cause, or begins it. */
    public static Path write(Path rules, Catalogue catalogue, Map<String, RuleText> known, Wanted w) {
        Finding finding = catalogue.finding(w.finding());
        Cause cause = catalogue.cause(w.cause());
        if (!w.id().matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new BadInput("\"" + w.id() + "\" is not a plain kebab-case id, such as black-bleed-water-speaks-for-sludge.");
        }
        if (known.containsKey(w.id())) {
            throw new BadInput("the rule \"" + w.id() + "\" is already in " + known.get(w.id()).where() + ".");
        }
        if (!finding.optionIds().contains(w.answer())) {
            throw new BadInput("\"" + w.answer() + "\" is not an answer of " + w.finding()
                    + Nearest.hint(w.answer(), finding.optionIds()) + " A number or a table is best written by hand; see rules/README.md.");
        }
        Path drl = rules.resolve("evidence").resolve(cause.subject()).resolve(cause.id() + ".drl");
        append(drl, HEADER, rule(finding, w));
        return drl;
    }

    private static String rule(Finding finding, Wanted w) {
        String sign = finding.say(w.answer());
        return RULE.formatted(w.id(), sign.substring(0, 1).toUpperCase(Locale.ROOT) + sign.substring(1), w.finding(), w.answer(),
                w.against() ? "against" : "supports", w.cause(), w.strength());
    }

    private static void append(Path file, String begin, String text) {
        try {
            SafeFile.write(file, (Files.exists(file) ? Files.readString(file) : begin) + text);
        } catch (IOException e) {
            throw new BadInput(file + " could not be read.", e);
        }
    }
}
