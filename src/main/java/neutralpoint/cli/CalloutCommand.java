package neutralpoint.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.console.Callout;
import neutralpoint.console.TerminalScreen;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.document.BadInput;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The console at the customer's door. */
@Command(name = "callout", mixinStandardHelpOptions = true,
        description = "Ask the questions that matter and give a verdict; resumes a job that was left.")
final class CalloutCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", paramLabel = "JOB.json", description = "the job file to begin or to resume")
    private Path file;

    @Option(names = "--plain", description = "no colour and no styling; one prompt a line")
    private boolean plain;

    @Override
    public Integer call() {
        if (file != null && Files.exists(file) && !Files.isWritable(file)) {
            throw new BadInput(file + " is read-only, so answers could not be kept in it; copy it or choose another file.");
        }
        Catalogue catalogue = CatalogueFiles.compiled();
        Path target = file == null ? unused() : file;
        Job job = Files.exists(target) ? new JobCheck(catalogue).read(target) : Job.begin(JobFile.nameOf(target));
        try (TerminalScreen screen = TerminalScreen.open(plain)) {
            // Only now, with the terminal open: until the first question stands there it would slow it down.
            CompletableFuture<Callout.Engine> engine = CompletableFuture.supplyAsync(() -> engine(catalogue, job));
            Callout callout = new Callout(screen, catalogue, engine::join, job, target);
            callout.run();
            return callout.stopStands() ? 1 : 0;
        }
    }

    private static Callout.Engine engine(Catalogue catalogue, Job job) {
        Assessor assessor = new Assessor(RuleBase.load(), catalogue);
        QuestionChooser lookahead = new QuestionChooser(assessor, catalogue);
        rehearse(assessor, lookahead, job);
        return new Callout.Engine(assessor, lookahead);
    }

    /** Looks ahead once on a guess, so that the first real question comes without a pause. */
    private static void rehearse(Assessor assessor, QuestionChooser lookahead, Job job) {
        Job guess = job.with(FindingId.RED_LINES, new Answer.Several(List.of()))
                .with(FindingId.COMPLAINT, new Answer.Several(List.of("all-lukewarm")))
                .with(FindingId.HEATING_FILLED_BY, new Answer.One("loft-tank")).with(FindingId.HOT_WATER_MADE_BY, new Answer.One("cylinder"));
        lookahead.rank(assessor.assess(guess), 1);
    }

    /** A file name of today that is not taken yet. */
    private static Path unused() {
        for (int n = 1; ; n++) {
            Path path = Path.of("callout-" + LocalDate.now(ZoneId.systemDefault()) + (n == 1 ? "" : "-" + n) + ".json");
            if (!Files.exists(path)) {
                return path;
            }
        }
    }
}
