package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.authoring.RuleIndex;
import neutralpoint.document.SafeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the index of all rules beside them. */
@Command(name = "index", mixinStandardHelpOptions = true, description = "Write INDEX.md anew from the rules.")
final class RulesIndexCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Override
    public Integer call() {
        Path index = authoring.rulesFolder().resolve("INDEX.md");
        SafeFile.write(index, RuleIndex.markdown(authoring.catalogue(), authoring.rules()));
        System.out.println(index + " written.");
        return 0;
    }
}
