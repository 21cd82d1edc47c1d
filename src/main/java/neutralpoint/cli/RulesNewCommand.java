package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.authoring.Scaffold;
import neutralpoint.rulebase.fact.Strength;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a new evidence rule. */
@Command(name = "new", mixinStandardHelpOptions = true, description = {"Begin an evidence rule that looks at one answer.",
        "The because is left for you to write, and the sign may want better words; the build refuses the rule until the because is there."})
final class RulesNewCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Parameters(paramLabel = "ID", description = "the rule's id: the sign and what it speaks for, in kebab-case")
    private String id;

    @Option(names = "--finding", required = true, description = "the finding it looks at")
    private String finding;

    @Option(names = "--answer", required = true, description = "the answer that makes it fire")
    private String answer;

    @Option(names = "--cause", required = true, description = "the cause it moves")
    private String cause;

    @Option(names = "--strength", defaultValue = "GOOD", description = "${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
    private Strength strength;

    @Option(names = "--against", description = "the sign speaks against the cause")
    private boolean against;

    @Override
    public Integer call() {
        Path written = Scaffold.write(authoring.rulesFolder(), authoring.catalogue(), authoring.rulesById(),
                new Scaffold.Wanted(id, finding, answer, cause, strength, against));
        System.out.println(id + " begun in " + written + ". Write its sign in better words, its because, and its source if it has one.");
        return 0;
    }
}
