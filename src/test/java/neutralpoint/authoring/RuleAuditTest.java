package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.document.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole set of rules is sound, and what is unsound in a set is seen. */
class RuleAuditTest {
    private static final List<RuleText> RULES = RuleReader.all(Path.of("rules"));
    private static final String PUMP_RULE = "seized-pump-trial";

    @Test
    void nothingIsWrongWithTheRules() {
        List<CaseStudy> cases = Shared.allCases();
        assertThat(RuleAudit.of(Shared.CATALOGUE, RULES, RuleCoverage.of(cases, Shared.ASSESSOR).counts(), cases.size()))
                .extracting(f -> f.where() + ": " + f.what()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a rule no case fires        | 0 | Evidence.supports(\\"pump-seized\\", GOOD, $x) | Trial speaks well for a seized pump. | no case fires it
            a rule every case fires     | 9 | Evidence.supports(\\"pump-seized\\", GOOD, $x) | Trial speaks well for a seized pump. | every case fires it
            a closure left closed       | 1 | Step.called(\\"a\\").in(\\"isolate\\").closes(\\"open vent\\") | Cap it. | closes the open vent, and no rule reopens it
            a reopening of nothing      | 1 | Step.called(\\"a\\").in(\\"isolate\\").reopens(\\"open vent\\") | Uncap it. | reopens the open vent, and no rule closes it
            a sentence of another grade | 1 | Evidence.supports(\\"pump-seized\\", GOOD, $x) | Trial speaks strongly for it.        | should say "well for"
            a rule turned round         | 1 | Evidence.against(\\"pump-seized\\", GOOD, $x)  | Trial speaks well for a seized pump. | should say "well against"
            a sign that settles nothing | 1 | Evidence.settles(\\"pump-seized\\", $x)        | Trial rules out a seized pump.       | should say "settles?"
            """)
    void anUnsoundRuleIsSeen(String what, int fired, String conclusion, String says, String fault) {
        RuleText rule = rule(PUMP_RULE, says, conclusion.replace("\\\"", "\""));
        assertThat(faults(List.of(rule), fired)).anyMatch(f -> f.contains(PUMP_RULE) && f.contains(fault));
    }

    @Test
    void twoRulesThatAskTheSameAreSeen() {
        RuleText one = rule("one", "Trial speaks well for it.", "Evidence.supports(\"pump-seized\", GOOD, $x)");
        RuleText same = rule("same", "Trial speaks well for it.", "Evidence.supports(\"pump-seized\", GOOD, $x)");
        RuleText contrary = rule("contrary", "Trial speaks well against it.", "Evidence.against(\"pump-seized\", GOOD, $x)");
        assertThat(faults(List.of(one, same), 1)).anyMatch(f -> f.contains("same: says the same as one"));
        assertThat(faults(List.of(one, contrary), 1)).anyMatch(f -> f.contains("contrary: contradicts one"));
    }

    @Test
    void aSourceThatGoesWithoutSayingIsSeen() {
        Where where = new Where("trial.drl", 1);
        RuleText said = new RuleText("one", "caution", "trial", where, Map.of("says", "a", "because", "b", "source", "common-practice"),
                List.of(), Conclusion.read("insert(new AttachCaution(\"tool-advises-only\"));", where));
        assertThat(said.source()).isEqualTo("common-practice");
        assertThat(faults(List.of(said), 1)).anyMatch(f -> f.contains("one: leave @source out"));
        assertThat(rule("two", "a", "Evidence.against(\"pump-seized\", GOOD, $x)").source()).isEqualTo("common-practice");
    }

    @Test
    void causesAndEntriesThatNoRuleTouchesAreSeen() {
        List<String> faults = faults(List.of(), 1);
        assertThat(faults).anyMatch(f -> f.contains("cause pump-seized") && f.contains("needs at least two"))
                .anyMatch(f -> f.contains("cause pump-seized") && f.contains("no rule against"))
                .anyMatch(f -> f.contains("cause pump-seized") && f.contains("no rule settles it"))
                .anyMatch(f -> f.contains("cause pump-seized") && f.contains("out of scale"))
                .anyMatch(f -> f.contains("finding bleed-water") && f.contains("no rule and no sum reads it"))
                .anyMatch(f -> f.contains("caution tool-advises-only"))
                .anyMatch(f -> f.contains("method machine-flush"));
    }

    @Test
    void particularOrdersThatRunInACircleAreSeen() {
        RuleText one = order("one", "pump-seized", "sludge-throughout");
        RuleText other = order("other", "sludge-throughout", "pump-seized");
        assertThat(faults(List.of(one, other), 1)).anyMatch(f -> f.contains("other: puts sludge-throughout before pump-seized"));
    }

    @Test
    void everyFileInRulesIsReadBySomething() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            assertThat(files.filter(Files::isRegularFile).map(f -> f.getFileName().toString())).allMatch(f -> f.endsWith(".drl")
                    || f.endsWith(".examples.yaml") && Files.exists(beside(f)) || f.endsWith(".yaml") && !f.contains(".examples")
                    || f.equals("README.md"));
        }
    }

    private static Path beside(String examples) {
        String drl = examples.replace(".examples.yaml", ".drl");
        return Shared.files("rules", "/" + drl).stream().findFirst().orElse(Path.of(drl));
    }

    private static List<String> faults(List<RuleText> rules, int fired) {
        Map<String, Integer> firing = rules.stream().filter(r -> fired > 0).collect(Collectors.toMap(RuleText::id, r -> fired));
        return RuleAudit.of(Shared.CATALOGUE, rules, firing, 9).stream().map(f -> f.where() + " " + f.what()).toList();
    }

    private static RuleText rule(String id, String says, String conclusion) {
        Where where = new Where("trial.drl", 1);
        return new RuleText(id, "evidence", "trial", where, Map.of("says", says, "because", "it is"),
                List.of(new RuleText.Pattern("Observed", List.of("finding == \"bleed-water\"", "answer == \"black\""), false, where)),
                Conclusion.read("insert(" + conclusion + ");", where));
    }

    private static RuleText order(String id, String first, String then) {
        Where where = new Where("trial.drl", 1);
        return new RuleText(id, "course", "trial", where, Map.of("says", "a", "because", "b"),
                List.of(new RuleText.Pattern("Standing", List.of("cause == \"" + first + "\""), false, where),
                        new RuleText.Pattern("Standing", List.of("cause == \"" + then + "\""), false, where)),
                Conclusion.read("insert(ComesBefore.must($first, $then));", where));
    }
}
