package neutralpoint.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import neutralpoint.document.Node;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/**
 * The houses something is for.
 *
 * @param given  every finding here has one of these answers; the word trait stands for what is certain of the system, and the
 *               word danger for the dangers that stand
 * @param unless no finding here has any of these answers
 */
public record When(Map<String, List<String>> given, Map<String, List<String>> unless) {
    /** The word that stands for the traits of the system. */
    public static final String TRAIT = "trait";
    /** The word that stands for the dangers that stand. */
    public static final String DANGER = "danger";
    /** Every house. */
    public static final When ALWAYS = new When(Map.of(), Map.of());

    /** True for such a house, where no danger is known to stand. */
    public boolean fits(Job known, Set<String> traits) {
        return fits(known, traits, Set.of());
    }

    /** True for such a house, where these dangers stand. */
    public boolean fits(Job known, Set<String> traits, Set<String> dangers) {
        return given.entrySet().stream().allMatch(e -> isSo(e.getKey(), e.getValue(), known, traits, dangers))
                && unless.entrySet().stream().noneMatch(e -> isSo(e.getKey(), e.getValue(), known, traits, dangers));
    }

    /** True when it hangs on findings alone, and on nothing that is only concluded from them. */
    boolean isOfFindings() {
        return Stream.of(TRAIT, DANGER).noneMatch(word -> given.containsKey(word) || unless.containsKey(word));
    }

    private static boolean isSo(String finding, List<String> answers, Job known, Set<String> traits, Set<String> dangers) {
        return finding.equals(TRAIT) ? answers.stream().anyMatch(traits::contains)
                : finding.equals(DANGER) ? answers.stream().anyMatch(dangers::contains)
                : known.answer(finding).map(a -> a instanceof Answer.One one ? answers.contains(one.choice())
                        : a instanceof Answer.Several several && several.choices().stream().anyMatch(answers::contains)).orElse(false);
    }

    /**
     * The houses that both are for. A finding that both ask for takes the answers they share; those that either excludes
     * are excluded.
     */
    When and(When other) {
        Map<String, List<String>> both = new LinkedHashMap<>(given);
        other.given.forEach((finding, answers) -> both.merge(finding, answers, (a, b) -> a.stream().filter(b::contains).toList()));
        Map<String, List<String>> either = new LinkedHashMap<>(unless);
        other.unless.forEach((finding, answers) -> either.merge(finding, answers,
                (a, b) -> Stream.concat(a.stream(), b.stream()).distinct().toList()));
        return new When(both, either);
    }

    /** The conditions of an entry: its fields "when" and "unless". */
    static When of(Node.Fields f) {
        return new When(answers(f, "when"), answers(f, "unless"));
    }

    /** Findings and their answers as a field of an entry names them. */
    static Map<String, List<String>> answers(Node.Fields f, String name) {
        Map<String, List<String>> answers = new LinkedHashMap<>();
        f.find(name).ifPresent(n -> n.asFields().fields().forEach((id, words) -> answers.put(id, words.asTexts())));
        return answers;
    }

    /** Refuses the first finding, answer or trait in the conditions of an entry that is not catalogued. */
    static void check(Node.Fields f, Catalogue catalogue) {
        f.find("when").ifPresent(n -> checkNamed(n.asFields(), catalogue));
        f.find("unless").ifPresent(n -> checkNamed(n.asFields(), catalogue));
    }

    static void checkNamed(Node.Fields when, Catalogue catalogue) {
        when.find(TRAIT).ifPresent(n -> CatalogueFiles.refer(when, TRAIT, catalogue.traits()));
        when.find(DANGER).ifPresent(n -> CatalogueFiles.refer(when, DANGER, catalogue.dangers().keySet()));
        Node.Fields findings = Node.noFields(when.where());
        when.fields().forEach((id, answers) -> {
            if (!id.equals(TRAIT) && !id.equals(DANGER)) {
                findings.fields().put(id, answers);
                findings.names().put(id, when.names().get(id));
            }
        });
        CatalogueFiles.checkAnswers(findings, catalogue);
    }
}
