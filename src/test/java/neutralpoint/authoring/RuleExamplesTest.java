package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * For every rule: the smallest call-outs that fire it, and the nearest ones that do not.
 * Holds {@link neutralpoint.rulebase.RuleBase}, {@link neutralpoint.rulebase.RuleInfo} and {@link neutralpoint.rulebase.Situation}.
 */
class RuleExamplesTest {
    private static final List<RuleText> RULES = RuleReader.all(Path.of("rules"));
    private static final RuleExamples EXAMPLES = new RuleExamples(Shared.CATALOGUE);
    private static final ExampleReader READER = new ExampleReader(Shared.CATALOGUE, Shared.ASSESSOR);

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> everyRuleFiresAndStaysSilent() {
        Map<String, Set<String>> fired = new HashMap<>();
        return EXAMPLES.of(RULES).stream().map(e -> DynamicTest.dynamicTest(
                e.rule() + (e.fires() ? " fires: " : " stays silent: ") + e.text(), () ->
                        assertThat(fired.computeIfAbsent(e.text(), given -> READER.read(e.given()).fires(Shared.RULES, Shared.CATALOGUE)).contains(e.rule()))
                                .as("%s, at %s", e.text(), e.given().where()).isEqualTo(e.fires())));
    }

    @Test
    void everyRuleHasBothKindsOfExample() {
        List<Example> examples = EXAMPLES.of(RULES);
        for (boolean fires : List.of(true, false)) {
            assertThat(examples.stream().filter(e -> e.fires() == fires).map(Example::rule).collect(Collectors.toSet()))
                    .containsExactlyInAnyOrderElementsOf(Shared.RULES.rules().keySet());
        }
    }

    /** Who looks at one answer needs no example by hand: there is one for each answer that can be given. */
    @Test
    void aPlainRuleIsTriedOnEveryAnswerOfItsFinding() {
        RuleText rule = rule("black-bleed-water-speaks-for-sludge-throughout");
        List<Example> examples = EXAMPLES.of(rule, RULES);
        assertThat(examples).allMatch(Example::derived).hasSameSizeAs(Shared.CATALOGUE.finding("bleed-water").optionIds());
        assertThat(examples.stream().filter(Example::fires)).extracting(Example::text).containsExactly("bleed-water: black");
        assertThat(examples.stream().filter(e -> !e.fires())).extracting(Example::text).contains("bleed-water: clear", "bleed-water: orange");
    }

    @Test
    void writtenExamplesThatNobodyNeedsAreRefused() throws IOException {
        assertThatThrownBy(() -> written("finding == \"bleed-water\", answer in (\"black\", \"grey\")", "trial")).isInstanceOf(BadInput.class)
                .hasMessageContaining("trial.examples.yaml, line 1").hasMessageContaining("follow from its condition");
        assertThatThrownBy(() -> written("finding == \"bleed-water\", answer != \"black\"", "tryal")).isInstanceOf(BadInput.class)
                .hasMessageContaining("trial.examples.yaml, line 1").hasMessageContaining("\"tryal\" is not a rule of");
        assertThat(written("finding == \"bleed-water\", answer != \"black\"", "trial")).extracting(Example::derived).containsExactly(false, false);
    }

    private List<Example> written(String condition, String example) throws IOException {
        Path rules = Files.createDirectories(folder.resolve("caution"));
        Files.writeString(rules.resolve("trial.drl"), "package rules.caution;\n\nrule \"trial\"\n  @says(\"a\") @because(\"b\")\nwhen\n  Observed("
                + condition + ")\nthen\n  insert(new AttachCaution(\"scald\"));\nend\n");
        Files.writeString(rules.resolve("trial.examples.yaml"), example + ":\n  fires:\n    bleed-water: clear\n  silent:\n    bleed-water: black\n");
        return EXAMPLES.of(RuleReader.all(folder));
    }

    private static RuleText rule(String id) {
        return RULES.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }
}
