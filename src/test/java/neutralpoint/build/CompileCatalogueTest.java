package neutralpoint.build;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A misspelt id anywhere in the rules ends the build with the file, the line and the nearest valid id. */
class CompileCatalogueTest {
    @TempDir
    Path folder;

    private void compileWithRule(String text) throws IOException {
        compileWithRule("evidence/trial.drl", text);
    }

    private void compileWithRule(String file, String text) throws IOException {
        Path rules = folder.resolve("rules");
        Shared.copy(Path.of("rules/catalogue"), rules.resolve("catalogue"));
        Files.createDirectories(rules.resolve(file).getParent());
        Files.writeString(rules.resolve(file), text);
        CompileCatalogue.main(new String[] {rules.toString(), folder.resolve("out").toString(), folder.resolve("staged").toString()});
    }

    private static String rule(String when, String then) {
        return "package rules.evidence;\n\nrule \"trial\"\n  @says(\"a\")\n  @because(\"b\")\n"
                + "when\n  " + when + "\nthen\n  " + then + "\nend\n";
    }

    @TestFactory
    Stream<DynamicTest> aMisspeltIdIsNamed() {
        String good = "$x : Observed(finding == \"bleed-water\", answer == \"black\")";
        String then = "insert(Evidence.supports(\"sludge-throughout\", GOOD, $x));";
        record Slip(String what, String rule, String says) {}
        return Stream.of(
                new Slip("finding", rule(good.replace("bleed-water", "bleed-watr"), then), "line 7: \"bleed-watr\" is not a known finding; did you mean \"bleed-water\"?"),
                new Slip("answer", rule(good.replace("black", "blak"), then), "line 7: \"blak\" is not a known answer of bleed-water; did you mean \"black\"?"),
                new Slip("cause", rule(good, then.replace("sludge-throughout", "sludge-everywhere")), "line 9: \"sludge-everywhere\" is not a known cause, arrangement or method"),
                new Slip("competence", rule("$s : Standing(cause == \"sensor-fault\", answered)", "insert(new Needs(\"gass\", $s));"), "line 9: \"gass\" is not a known competence; did you mean \"gas\"?"),
                new Slip("kind of work", rule("$s : Standing(needs contains \"pumpp\", answered)", "insert(new Needs(\"gas\", $s));"), "line 7: \"pumpp\" is not a known kind of work; did you mean \"pump\"?"),
                new Slip("source", rule(good, then).replace("when\n", "  @source(\"coshhh\")\nwhen\n"), "line 3: \"coshhh\" is not a known source; did you mean \"coshh\"?"),
                new Slip("no because", rule(good, then).replace("  @because(\"b\")\n", ""), "needs @because"),
                new Slip("no sentence", rule(good, then).replace("  @says(\"a\")\n", ""), "needs @sign, its sign in words"),
                new Slip("a sentence and a sign", rule(good, then).replace("@says(\"a\")", "@says(\"a\") @sign(\"b\")"), "line 3: the rule \"trial\" needs @sign"),
                new Slip("absence of what appears late", rule("not Standing(cause == \"sludge-throughout\", active)\n  " + good, then), "line 7: \"not\" cannot go with Standing"),
                new Slip("absence of nothing in particular", rule("not Observed(answer == \"black\")\n  " + good, then), "line 7: a condition that nothing was found names its finding"),
                new Slip("causes nobody speaks of", rule("Standing(cause == \"sludge-throughout\", probability >= 0.01)\n  " + good, then), "line 7: a condition on Standing says active, answered, chief or probability >= 0.1"),
                new Slip("counting answers", rule("accumulate(Observed(answer == \"black\"); $n : count(1); $n >= 2)\n  " + good, then), "line 7: only RadiatorSurvey may be counted"),
                new Slip("another cause's file", rule(good, then), "line 3: \"trial\" is about sludge-throughout; its place is rules/evidence/deposits/sludge-throughout.drl."),
                new Slip("package", rule(good, then).replace("rules.evidence", "rules.water"), "line 1: the package should be rules.evidence"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> {
                    try (Stream<Path> old = Files.exists(folder.resolve("rules")) ? Files.walk(folder.resolve("rules")) : Stream.empty()) {
                        old.sorted(java.util.Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
                    }
                    assertThatThrownBy(() -> compileWithRule(slip.rule())).isInstanceOf(BadInput.class)
                            .hasMessageContaining("trial.drl").hasMessageContaining(slip.says());
                }));
    }

    @Test
    void aSoundRulePasses() throws IOException {
        compileWithRule("evidence/deposits/sludge-throughout.drl", rule("$x : Observed(finding == \"bleed-water\", answer == \"black\")",
                "insert(Evidence.supports(\"sludge-throughout\", GOOD, $x));"));
        org.assertj.core.api.Assertions.assertThat(folder.resolve("out/neutralpoint/rule-count.txt")).hasContent("1");
    }
}
