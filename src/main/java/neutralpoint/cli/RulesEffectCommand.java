package neutralpoint.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.ReferenceCheck;
import neutralpoint.authoring.RuleCompiler;
import neutralpoint.authoring.RuleDiff;
import neutralpoint.authoring.RuleReader;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares two sets of rules on the same cases. */
@Command(name = "effect", mixinStandardHelpOptions = true, description = {"Show what a change of rules does to all cases: gains and losses.",
        "Compiles both folders, which takes a minute or two."})
final class RulesEffectCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Option(names = "--against", required = true, paramLabel = "DIR", description = "the rules as they were, such as those of another checkout")
    private Path against;

    @Option(names = "--questions", negatable = true, defaultValue = "true", fallbackValue = "true",
            description = "also compare how many questions are asked; takes about a second a case")
    private boolean questions;

    @Override
    public Integer call() {
        RuleDiff.Side before = side(against);
        RuleDiff.Side now = side(authoring.rulesFolder());
        List<CaseStudy> cases = authoring.cases(new JobCheck(now.catalogue()));
        RuleDiff effect = RuleDiff.of(cases, before, now, questions);
        section("Gains", effect.moved().stream().filter(RuleDiff.Moved::isGain).toList());
        section("Losses", effect.moved().stream().filter(RuleDiff.Moved::isLoss).toList());
        section("Other moves", effect.moved().stream().filter(m -> !m.isGain() && !m.isLoss()).toList());
        System.out.printf("%d of %d cases moved: %d gains, %d losses.%n", effect.moved().size(), effect.cases(),
                effect.moved().stream().filter(RuleDiff.Moved::isGain).count(), effect.moved().stream().filter(RuleDiff.Moved::isLoss).count());
        return 0;
    }

    private static RuleDiff.Side side(Path folder) {
        Catalogue catalogue = CatalogueFiles.fromFolder(folder.resolve("catalogue"));
        List<RuleText> written = RuleReader.all(folder);
        new ReferenceCheck(catalogue).check(written);
        return new RuleDiff.Side(RuleCompiler.compile(folder, written), catalogue);
    }

    private static void section(String heading, List<RuleDiff.Moved> moved) {
        if (moved.isEmpty()) {
            return;
        }
        System.out.println(heading);
        for (RuleDiff.Moved m : moved) {
            System.out.println("  " + m.id() + ":" + change("course", m.before().course(), m.now().course())
                    + change("first", m.before().first(), m.now().first())
                    + change("place of the true cause", m.before().rank(), m.now().rank())
                    + change("questions", m.before().questions(), m.now().questions()));
        }
    }

    private static String change(String what, Object before, Object now) {
        return before.equals(now) ? "" : " " + what + " " + before + " -> " + now + ";";
    }
}
