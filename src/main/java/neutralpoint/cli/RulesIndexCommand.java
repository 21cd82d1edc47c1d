package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.authoring.RuleIndex;
import neutralpoint.document.SafeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists all rules with their sentences; the list is made anew from the rules, and is kept nowhere. */
@Command(name = "index", mixinStandardHelpOptions = true, description = "List all rules with their sentences, as Markdown.")
final class RulesIndexCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "write it to this file, such as target/rules.md")
    private Path output;

    @Override
    public Integer call() {
        String index = RuleIndex.markdown(authoring.catalogue(), authoring.rules());
        if (output == null) {
            System.out.print(index);
        } else {
            SafeFile.write(output, index);
            System.out.println(output + " written.");
        }
        return 0;
    }
}
