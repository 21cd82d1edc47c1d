package neutralpoint.cli;

import java.util.List;
import java.util.concurrent.Callable;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.RuleAudit;
import neutralpoint.authoring.RuleCoverage;
import neutralpoint.authoring.RuleIndex;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Source;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Looks over the whole set of rules. */
@Command(name = "check", mixinStandardHelpOptions = true, description = {"Look over the whole set of rules.",
        "Reports rules that no case or every case fires, rules that say the same or contradict each other, weights out of "
        + "scale, causes without evidence or a deciding test, and entries of the catalogue that nothing uses. "
        + "It judges with the rules the program was built with: build first."})
final class RulesCheckCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        List<RuleText> rules = authoring.rules();
        List<CaseStudy> cases = authoring.cases(knowledge.check());
        RuleIndex.counts(knowledge.catalogue(), rules).forEach((what, count) -> System.out.printf("%6d %s%n", count, what));
        System.out.printf("%6d rules rest on common practice and name no source%n",
                rules.stream().filter(r -> r.source().equals(Source.COMMON_PRACTICE)).count());
        System.out.printf("%6d cases%n", cases.size());
        List<RuleAudit.Fault> faults = RuleAudit.of(knowledge.catalogue(), rules,
                RuleCoverage.of(cases, knowledge.assessor()).counts(), cases.size());
        faults.forEach(f -> System.out.println(f.where() + ": " + f.what()));
        System.out.println(faults.isEmpty() ? "Nothing is wrong." : faults.size() + " to put right.");
        return faults.isEmpty() ? 0 : 2;
    }
}
