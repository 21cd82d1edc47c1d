package neutralpoint.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import neutralpoint.console.TerminalScreen;
import neutralpoint.consult.NextQuestion;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Json;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.RadiatorCsv;
import neutralpoint.job.RadiatorTable;
import neutralpoint.report.AssessmentJson;
import neutralpoint.report.AssessmentText;
import neutralpoint.report.CautionView;
import neutralpoint.report.Look;
import neutralpoint.report.SumsText;
import neutralpoint.rulebase.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges recorded findings. */
@Command(name = "assess", mixinStandardHelpOptions = true,
        description = "Judge recorded findings from files, or from JSON Lines on standard input (-).")
final class AssessCommand implements Callable<Integer> {
    private static final int QUESTIONS = 3;
    private static final int WIDTH = 78;

    enum Format { text, json }

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "job files, or - for JSON Lines on standard input")
    private List<String> files;

    @Option(names = "--format", defaultValue = "text", description = "text or json")
    private Format format;

    @Option(names = "--radiators", paramLabel = "SURVEY.csv", description = "a table of radiators to read beside the one job file")
    private Path survey;

    @Option(names = "--sums", description = "show the arithmetic behind everything worked out")
    private boolean sums;

    @Option(names = "--cautions", description = "print every caution, not only the first")
    private boolean cautions;

    @Option(names = "--plain", description = "no colour and no block characters")
    private boolean plain;

    private int code;

    @Override
    public Integer call() {
        if (survey != null && (files.size() > 1 || files.contains("-"))) {
            throw new BadInput("--radiators belongs to one job file; name one file only.");
        }
        Knowledge knowledge = Knowledge.load();
        for (String file : files) {
            if (file.equals("-")) {
                lines(knowledge);
            } else {
                show(knowledge, surveyed(knowledge.check().read(Path.of(file))), files.size() > 1);
            }
        }
        return code;
    }

    private Job surveyed(Job job) {
        return survey == null ? job : job.withRadiators(RadiatorTable.together(job.radiators(), RadiatorCsv.read(survey)));
    }

    private void lines(Knowledge knowledge) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            int number = 0;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                number++;
                if (!line.isBlank()) {
                    JobFile.Draft draft = JobFile.draft(Documents.json("standard input", line, number), "line-" + number);
                    show(knowledge, knowledge.check().check(draft), true);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void show(Knowledge knowledge, Job job, boolean oneLine) {
        Assessment assessment = knowledge.assessor().assess(job);
        List<NextQuestion> next = knowledge.lookahead().rank(assessment, QUESTIONS);
        if (format == Format.json) {
            Object fields = AssessmentJson.of(assessment, next);
            System.out.print(oneLine ? Json.line(fields) + "\n" : Json.pretty(fields));
        } else {
            Look look = TerminalScreen.standardOutput(plain, WIDTH);
            System.out.println(AssessmentText.of(assessment, next, look, cautions ? CautionView.ALL : CautionView.FROM_FILES));
            if (sums) {
                System.out.println("The sums\n" + SumsText.of(assessment, look));
            }
        }
        code = Math.max(code, assessment.stops().isEmpty() ? 0 : 1);
    }
}
