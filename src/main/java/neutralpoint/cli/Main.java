package neutralpoint.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import neutralpoint.document.BadInput;
import neutralpoint.document.Lookup;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's front door. */
@Command(name = "neutralpoint", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Triage of a wet central heating call-out.",
        footer = "Exit codes: 0 judged, 1 judged with a stop, 2 bad input, 3 a fault of the program.",
        subcommands = {AssessCommand.class, ArrangementCommand.class, ChallengeCommand.class, WorkPlanCommand.class, CatalogueCommand.class, CalloutCommand.class, RulesCommand.class, RehearseCommand.class})
public final class Main implements Runnable {

    public static void main(String[] args) {
        System.exit(run(args, new PrintStream(System.out, true, StandardCharsets.UTF_8)));
    }

    static int run(String[] args, PrintStream out) {
        System.setOut(out);
        CommandLine line = new CommandLine(new Main());
        if (args.length > 0 && args[0].equals("rules")) {
            RulesCommand.addSubcommands(Lookup.known(line.getSubcommands(), "rules"));
        }
        line.setExecutionExceptionHandler((e, command, parsed) -> {
            if (e instanceof BadInput) {
                System.err.println(e.getMessage());
                return 2;
            }
            if (e instanceof IllegalStateException) {
                System.err.println("This is a fault of Neutral Point, not of what you gave it, and nothing was changed: " + e.getMessage());
                return 3;
            }
            throw e;
        });
        return line.execute(args.length == 0 ? new String[] {"callout"} : args);
    }

    @Override
    public void run() {
        throw new IllegalStateException("a command is always chosen");
    }
}
