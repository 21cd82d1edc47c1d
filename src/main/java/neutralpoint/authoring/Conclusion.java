package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.document.BadInput;
import neutralpoint.document.Where;
import neutralpoint.rulebase.fact.Strength;

/**
 * The one thing a rule inserts.
 *
 * @param call     how it is made, such as Evidence.supports or Bars
 * @param ids      the quoted ids it names, in order
 * @param strength the grade, for evidence that weighs
 */
public record Conclusion(String call, List<String> ids, Optional<Strength> strength, Where where) {
    private static final Pattern INSERT = Pattern.compile("\\s*insert\\(\\s*(?:new\\s+)?([\\w.]+)\\((.*)\\)\\s*\\);\\s*", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern GRADE = Pattern.compile("\\b(SLIGHT|SOME|GOOD|STRONG|DECISIVE)\\b");

    static Conclusion read(String consequence, Where where) {
        Matcher insert = INSERT.matcher(consequence);
        if (!insert.matches()) {
            throw new BadInput(where, "a rule inserts one fact and does nothing else: insert(…);");
        }
        List<String> ids = new ArrayList<>();
        Matcher quoted = QUOTED.matcher(insert.group(2));
        while (quoted.find()) {
            ids.add(quoted.group(1));
        }
        Matcher grade = GRADE.matcher(insert.group(2));
        return new Conclusion(insert.group(1), List.copyOf(ids),
                grade.find() ? Optional.of(Strength.valueOf(grade.group(1))) : Optional.empty(), where);
    }

    public boolean isEvidence() {
        return call.startsWith("Evidence.");
    }

    /** True when it weighs for something or settles it. */
    public boolean speaksFor() {
        return call.equals("Evidence.supports") || decidesFor();
    }

    /** True when it weighs against something or excludes it. */
    public boolean speaksAgainst() {
        return call.equals("Evidence.against") || call.equals("Evidence.excludes");
    }

    public boolean decidesFor() {
        return call.equals("Evidence.settles");
    }
}
