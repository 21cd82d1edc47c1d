package neutralpoint.cli;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.authoring.RuleIndex;
import neutralpoint.authoring.RuleSentence;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the rules by subject; its sub-commands are for those who write them. */
@Command(name = "rules", mixinStandardHelpOptions = true, description = "List the rules by subject, and work on them.")
final class RulesCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Parameters(arity = "0..1", paramLabel = "SUBJECT", description = "only this stage, subject or cause, such as stop, pump or pump-seized")
    private String subject;

    /** The sub-commands are put in only when one of them may be meant: a call-out should not wait for them. */
    static void addSubcommands(CommandLine rules) {
        List.of(new RulesShowCommand(), new RulesCheckCommand(), new RulesIndexCommand(), new RulesNewCommand(),
                new RulesScoreCommand(), new RulesCalibrateCommand(), new RulesQuestionsCommand(), new RulesEffectCommand()).forEach(rules::addSubcommand);
    }

    @Override
    public Integer call() {
        List<RuleText> rules = authoring.rules();
        Catalogue catalogue = authoring.catalogue();
        if (subject == null) {
            RuleIndex.counts(catalogue, rules).forEach((what, count) -> System.out.printf("%6d %s%n", count, what));
        }
        Map<String, List<RuleText>> bySubject = rules.stream()
                .filter(r -> subject == null || r.folder().equals(subject) || List.of(r.subject().split("/")).contains(subject))
                .collect(Collectors.groupingBy(r -> r.folder() + ": " + r.subject(), TreeMap::new, Collectors.toList()));
        if (bySubject.isEmpty()) {
            List<String> subjects = rules.stream().flatMap(r -> Stream.concat(Stream.of(r.folder()), Stream.of(r.subject().split("/")))).distinct().toList();
            throw new BadInput("\"" + subject + "\" is not a stage or a subject of rules" + Nearest.hint(subject, subjects));
        }
        bySubject.forEach((heading, members) -> {
            System.out.println("\n" + heading);
            members.forEach(r -> System.out.println("  " + r.id() + "\n      " + RuleSentence.of(r, catalogue)));
        });
        return 0;
    }
}
