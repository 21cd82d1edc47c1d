package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.consult.Challenge;
import neutralpoint.report.ChallengeText;
import neutralpoint.rulebase.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A second opinion. */
@Command(name = "challenge", mixinStandardHelpOptions = true,
        description = "Hold your own opinion against the findings: what supports it, what speaks against it, what it leaves unexplained, "
                + "and the look most likely to show it wrong.")
final class ChallengeCommand implements Callable<Integer> {
    private static final int WIDTH = 80;

    @Parameters(paramLabel = "JOB.json", description = "the job file")
    private Path file;

    @Option(names = "--i-say", required = true, paramLabel = "WORD", description = "a cause, a kind of system or a course, by its id or its words")
    private String claim;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        String meant = Challenge.named(claim, knowledge.catalogue());
        Assessment now = knowledge.assessor().assess(knowledge.check().read(file));
        System.out.print(ChallengeText.of(now, Challenge.of(now, meant, knowledge.assessor(), knowledge.catalogue()), WIDTH));
        return now.stops().isEmpty() ? 0 : 1;
    }
}
