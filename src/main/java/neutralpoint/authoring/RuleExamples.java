package neutralpoint.authoring;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.document.Where;

/**
 * The examples of the rules. Where the whole condition is one answer to one finding they follow from it: the rule
 * fires on every answer it names, and on no other answer of that finding. All other rules have theirs written beside them.
 */
public final class RuleExamples {
    private final Catalogue catalogue;

    public RuleExamples(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Every example of these rules; refuses one that belongs to no rule, or that the rule's condition makes superfluous. */
    public List<Example> of(List<RuleText> rules) {
        Map<String, List<RuleText>> byFile = rules.stream()
                .collect(Collectors.groupingBy(r -> r.where().file(), LinkedHashMap::new, Collectors.toList()));
        return byFile.entrySet().stream().flatMap(e -> Stream.concat(written(e.getKey(), e.getValue()).stream(),
                e.getValue().stream().filter(this::isPlain).flatMap(r -> derived(r).stream()))).toList();
    }

    /** The examples of one rule. */
    public List<Example> of(RuleText rule, List<RuleText> rules) {
        return of(rules.stream().filter(r -> r.where().file().equals(rule.where().file())).toList()).stream()
                .filter(e -> e.rule().equals(rule.id())).toList();
    }

    /** True when the whole condition is that one finding has an answer, or one of several. */
    boolean isPlain(RuleText rule) {
        RuleText.Pattern first = rule.patterns().get(0);
        return rule.patterns().size() == 1 && first.fact().equals("Observed") && !first.absent() && first.constraints().size() == 2
                && first.constraints().stream().anyMatch(c -> c.matches("finding\\s*==.*"))
                && first.constraints().stream().anyMatch(c -> c.matches("(?s)answer\\s*(==|in\\b).*"));
    }

    private List<Example> derived(RuleText rule) {
        RuleText.Pattern condition = rule.patterns().get(0);
        List<String> named = ReferenceCheck.of(condition, "answer");
        Finding finding = catalogue.finding(ReferenceCheck.of(condition, "finding").get(0));
        List<Example> examples = new ArrayList<>();
        finding.optionIds().forEach(option -> examples.add(example(rule, named.contains(option), finding, List.of(option))));
        if (finding.type() == AnswerType.SEVERAL_OF) {
            examples.add(example(rule, named.contains("none"), finding, List.of()));
        }
        return examples;
    }

    private static Example example(RuleText rule, boolean fires, Finding finding, List<String> options) {
        List<Node> answers = options.stream().<Node>map(o -> new Node.Text(rule.where(), o)).toList();
        Node.Fields given = Node.noFields(rule.where());
        given.fields().put(finding.id(), finding.type() == AnswerType.SEVERAL_OF ? new Node.Items(rule.where(), answers) : answers.get(0));
        given.names().put(finding.id(), rule.where());
        return new Example(rule.id(), fires, true, given);
    }

    private List<Example> written(String drl, List<RuleText> rules) {
        Path file = Path.of(drl.replaceFirst("\\.drl$", ".examples.yaml"));
        if (!Files.exists(file)) {
            return List.of();
        }
        Map<String, RuleText> known = rules.stream().collect(Collectors.toMap(RuleText::id, Function.identity()));
        Node.Fields entries = Documents.readYaml(file).asFields();
        entries.names().forEach((rule, where) -> belongs(rule, where, known, drl));
        return entries.fields().entrySet().stream().flatMap(e -> Stream.of("fires", "silent")
                .map(kind -> new Example(e.getKey(), kind.equals("fires"), false, e.getValue().asFields().get(kind).asFields()))).toList();
    }

    private void belongs(String rule, Where where, Map<String, RuleText> known, String drl) {
        if (!known.containsKey(rule)) {
            throw new BadInput(where, "\"" + rule + "\" is not a rule of " + drl + ", beside which these examples lie.");
        }
        if (isPlain(known.get(rule))) {
            throw new BadInput(where, "the examples of \"" + rule + "\" follow from its condition, which is one answer to one finding; leave them out.");
        }
    }
}
