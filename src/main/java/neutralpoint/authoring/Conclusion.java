package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.document.BadInput;
import neutralpoint.document.Where;
import neutralpoint.rulebase.fact.Strength;

/**
 * The one thing a rule inserts.
 *
 * @param call     how it is made, such as Evidence.supports or BarsCourse
 * @param ids      the quoted ids it names, in order
 * @param strength the grade, for evidence that weighs
 * @param chained  for each word chained to the call, such as needs, the quoted words it was given
 */
public record Conclusion(String call, List<String> ids, Optional<Strength> strength, Map<String, List<String>> chained, Where where) {
    private static final Pattern INSERT = Pattern.compile("\\s*insert\\(\\s*(?:new\\s+)?([\\w.]+)\\((.*)\\)\\s*\\);\\s*", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern CHAINED = Pattern.compile("\\)\\s*\\.(\\w+)\\(([^()]*)");
    private static final Pattern GRADE = Pattern.compile("\\b(SLIGHT|SOME|GOOD|STRONG|DECISIVE)\\b");

    static Conclusion read(String consequence, Where where) {
        Matcher insert = INSERT.matcher(consequence);
        if (!insert.matches()) {
            throw new BadInput(where, "a rule inserts one fact and does nothing else: insert(…);");
        }
        Map<String, List<String>> chained = new LinkedHashMap<>();
        Matcher word = CHAINED.matcher(insert.group(2));
        while (word.find()) {
            chained.put(word.group(1), quoted(word.group(2)));
        }
        Matcher grade = GRADE.matcher(insert.group(2));
        return new Conclusion(insert.group(1), quoted(insert.group(2)),
                grade.find() ? Optional.of(Strength.valueOf(grade.group(1))) : Optional.empty(), chained, where);
    }

    private static List<String> quoted(String text) {
        List<String> words = new ArrayList<>();
        Matcher quoted = QUOTED.matcher(text);
        while (quoted.find()) {
            words.add(quoted.group(1));
        }
        return List.copyOf(words);
    }

    /** What a word chained to the call was given; nothing where it is not there. */
    public List<String> given(String word) {
        return chained.getOrDefault(word, List.of());
    }

    public boolean isStep() {
        return call.startsWith("Step.");
    }

    /** True for a step whose words are those of a danger's catalogue entry. */
    public boolean isStepOfDanger() {
        return call.equals("Step.asked") || call.equals("Step.clearing");
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
