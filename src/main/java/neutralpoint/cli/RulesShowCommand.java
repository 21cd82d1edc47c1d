package neutralpoint.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import neutralpoint.authoring.Conclusion;
import neutralpoint.authoring.Example;
import neutralpoint.authoring.RuleCoverage;
import neutralpoint.authoring.RuleExamples;
import neutralpoint.authoring.RuleSentence;
import neutralpoint.authoring.RuleText;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.report.text.Wrap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** One rule: what it says, why, where from, how strongly, and which cases fire it. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Show one rule and the cases that fire it.")
final class RulesShowCommand implements Callable<Integer> {
    private static final int WIDTH = 78;
    private static final int CASES_SHOWN = 8;

    @Mixin
    private AuthoringOptions authoring;

    @Parameters(paramLabel = "ID", description = "the rule's id")
    private String id;

    @Override
    public Integer call() {
        Map<String, RuleText> rules = authoring.rulesById();
        RuleText rule = rules.get(id);
        if (rule == null) {
            throw new BadInput("\"" + id + "\" is not a known rule" + Nearest.hint(id, rules.keySet()));
        }
        Knowledge knowledge = Knowledge.load();
        RuleCoverage firings = RuleCoverage.of(authoring.cases(knowledge.check()), knowledge.assessor());
        line("", RuleSentence.of(rule, authoring.catalogue()));
        line("Because: ", rule.note("because"));
        line("Source:  ", knowledge.catalogue().source(rule.source()).title());
        if (!rule.note("action").isBlank()) {
            line("Now:     ", rule.note("action"));
        }
        line("When:    ", String.join("; ", rule.patterns().stream().map(RulesShowCommand::condition).toList()));
        line("Then:    ", conclusion(rule.conclusion()));
        List<Example> examples = new RuleExamples(knowledge.catalogue()).of(rule, List.copyOf(rules.values()));
        line("Fires:   ", examples(examples, true));
        line("Silent:  ", examples(examples, false));
        List<String> firing = firings.casesThatFire(id);
        line("Fired by ", firing.isEmpty() ? "no case." : firing.size() + " case" + (firing.size() == 1 ? "" : "s") + ": "
                + String.join(", ", firing.stream().limit(CASES_SHOWN).toList()) + (firing.size() > CASES_SHOWN ? " and more." : "."));
        line("Nearest: ", firings.nearestMiss(rule).map(c -> c + " comes close and does not fire it.")
                .orElse("no case asks what it looks at without firing it."));
        line("Written: ", rule.where().toString());
        return 0;
    }

    private static String examples(List<Example> examples, boolean fires) {
        return examples.stream().filter(e -> e.fires() == fires).map(Example::text).collect(Collectors.joining("; "));
    }

    private static String condition(RuleText.Pattern p) {
        return (p.absent() ? "no " : "") + p.fact() + " with " + String.join(", ", p.constraints());
    }

    private static String conclusion(Conclusion c) {
        String ids = String.join(", ", c.ids());
        String weight = c.strength().map(s -> ", " + s.words() + " (" + s.decibans() + " decibans)").orElse("");
        return switch (c.call()) {
            case "Evidence.supports" -> "speaks for " + ids + weight;
            case "Evidence.against" -> "speaks against " + ids + weight;
            case "Evidence.settles" -> "settles " + ids;
            case "Evidence.excludes" -> "excludes " + ids;
            case "Explains.awayFrom" -> "the sign no longer speaks for " + ids;
            case "Stop.refer" -> "work stops and is referred";
            case "Stop.clearBy" -> "work stops until cleared by " + ids;
            case "BarsCourse" -> "bars " + c.ids().get(0) + "; instead " + c.ids().get(1);
            case "Remedy" -> "is answered by " + ids;
            case "AttachCaution" -> "the caution " + ids + " is said";
            case "ForbidsHandling" -> "forbids " + ids;
            case "ExtraStep" -> "a further step in the phase " + ids;
            case "LeadsTo" -> "the first stands behind the second";
            case "AlsoCures" -> "cleansing for the first answers the second";
            case "ComesBefore.must", "ComesBefore.usually" -> "the first comes before the second";
            default -> "the answers contradict each other";
        };
    }

    private static void line(String label, String words) {
        System.out.println(Wrap.to(WIDTH, label, " ".repeat(label.length()), words));
    }
}
