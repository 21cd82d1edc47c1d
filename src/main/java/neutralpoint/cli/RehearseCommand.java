package neutralpoint.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.console.TerminalScreen;
import neutralpoint.consult.NextQuestion;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.document.Json;
import neutralpoint.job.Job;
import neutralpoint.report.AssessmentJson;
import neutralpoint.report.AssessmentText;
import neutralpoint.report.CautionView;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Touches what a consultation touches: the build runs it to lay the classes out for a quick start,
 * and with --times it is the benchmark.
 */
@Command(name = "rehearse", hidden = true)
final class RehearseCommand implements Callable<Integer> {
    private static final int QUESTIONS = 3;
    private static final int REPEATS = 20;

    @Parameters
    private Path file;

    @Option(names = "--times")
    private boolean times;

    @Override
    public Integer call() {
        long start = System.nanoTime();
        Catalogue catalogue = CatalogueFiles.compiled();
        long catalogued = System.nanoTime();
        Assessor assessor = new Assessor(RuleBase.load(), catalogue);
        long ready = System.nanoTime();
        QuestionChooser lookahead = new QuestionChooser(assessor, catalogue);
        Job job = new JobCheck(catalogue).read(file);
        Assessment assessment = assessor.assess(job);
        List<NextQuestion> next = lookahead.rank(assessment, QUESTIONS);
        long first = System.nanoTime();
        for (int i = 0; i < REPEATS; i++) {
            lookahead.next(assessor.assess(job));
        }
        long end = System.nanoTime();
        if (times) {
            System.out.printf("catalogue ready %d ms, rule base ready %d ms after it, first verdict and question %d ms, "
                    + "next question %d ms%n", millis(start, catalogued), millis(catalogued, ready), millis(ready, first),
                    millis(first, end) / REPEATS);
        } else {
            touchViews(assessment, next);
        }
        return 0;
    }

    private static void touchViews(Assessment assessment, List<NextQuestion> next) {
        try (TerminalScreen screen = TerminalScreen.open(true)) {
            screen.heading(Json.line(AssessmentJson.of(assessment, next)));
            screen.line(AssessmentText.of(assessment, next, screen.look(), CautionView.AT_A_PROMPT));
            screen.ask("", List.of());
        }
    }

    private static long millis(long from, long to) {
        return (to - from) / 1_000_000;
    }
}
