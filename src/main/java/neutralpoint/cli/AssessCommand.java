package neutralpoint.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import neutralpoint.catalogue.StockList;
import neutralpoint.console.TerminalScreen;
import neutralpoint.consult.NextQuestion;
import neutralpoint.document.BadInput;
import neutralpoint.document.Csv;
import neutralpoint.document.Documents;
import neutralpoint.document.Json;
import neutralpoint.document.Lines;
import neutralpoint.document.SafeFile;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.RadiatorCsv;
import neutralpoint.job.RadiatorTable;
import neutralpoint.report.AssessmentJson;
import neutralpoint.report.AssessmentText;
import neutralpoint.report.CautionView;
import neutralpoint.report.SumsText;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.rulebase.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges recorded findings. */
@Command(name = "assess", mixinStandardHelpOptions = true,
        description = "Judge recorded findings from files, from JSON Lines on standard input (-), or from a table of homes (--stock).")
final class AssessCommand implements Callable<Integer> {
    private static final int QUESTIONS = 3;
    private static final int WIDTH = 78;
    private static final String STDIN = "standard input";

    private Optional<DisplayOptions> look = Optional.empty();

    enum AssessmentFormat { text, json }

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "job files, or - for JSON Lines on standard input")
    private List<String> files = List.of();

    @Option(names = "--stock", paramLabel = "HOMES.csv", description = "a table of homes, one a row: a column job, and one for each finding by its id")
    private Path stock;

    @Option(names = "--format", defaultValue = "text", description = "text or json")
    private AssessmentFormat format;

    @Option(names = "--radiators", paramLabel = "SURVEY.csv", description = "a table of radiators to read beside the one job file")
    private Path survey;

    @Option(names = "--sums", description = "show the arithmetic behind everything worked out")
    private boolean sums;

    @Option(names = "--cautions", description = "print every caution, not only the first")
    private boolean cautions;

    @Option(names = "--plain", description = "no colour and no block characters")
    private boolean plain;

    @Option(names = "--next", paramLabel = "N", description = "questions to ask next: 3 for files, none for JSON Lines and tables")
    private Optional<Integer> questions = Optional.empty();

    @Option(names = "--strict", description = "JSON Lines and tables: stop at the first line that cannot be used")
    private boolean strict;

    @Option(names = "--from-line", defaultValue = "1", paramLabel = "N", description = "JSON Lines and tables: pass over all lines before this one")
    private int fromLine;

    @Option(names = "--summary", paramLabel = "FILE.csv", description = "JSON Lines and tables: write the homes with a stop, and counts, to this file")
    private Path summary;

    @Override
    public Integer call() {
        boolean many = stock != null || files.contains("-");
        refuseWhatDoesNotGoTogether(many);
        Knowledge knowledge = Knowledge.load();
        return many ? judgeMany(knowledge) : judgeFiles(knowledge);
    }

    private void refuseWhatDoesNotGoTogether(boolean many) {
        if (files.isEmpty() && stock == null) {
            throw new BadInput("name a job file, - for JSON Lines on standard input, or --stock with a table of homes.");
        }
        if (survey != null && (many || files.size() > 1)) {
            throw new BadInput("--radiators belongs to one job file; name one file only.");
        }
        if (many && files.size() > (stock == null ? 1 : 0)) {
            throw new BadInput("standard input or a table of homes is judged by itself; leave out the other files.");
        }
        if (!many && (strict || summary != null || fromLine != 1)) {
            throw new BadInput("--strict, --from-line and --summary go with - or --stock.");
        }
        if (questions.orElse(0) < 0 || fromLine < 1) {
            throw new BadInput("--next takes a number from 0, --from-line one from 1.");
        }
    }

    private int judgeFiles(Knowledge knowledge) {
        int code = 0;
        for (String file : files) {
            Job job = surveyed(knowledge.check().read(Path.of(file)));
            Assessment assessment = knowledge.assessor().assess(job);
            System.out.print(shown(knowledge, assessment, questions.orElse(QUESTIONS), files.size() > 1));
            code = Math.max(code, assessment.stops().isEmpty() ? 0 : 1);
        }
        return code;
    }

    private Job surveyed(Job job) {
        return survey == null ? job : job.withRadiators(RadiatorTable.together(job.radiators(), RadiatorCsv.read(survey)));
    }

    private int judgeMany(Knowledge knowledge) {
        try (InputStream in = stock == null ? System.in : Files.newInputStream(stock)) {
            Supplier<Optional<Bulk.Item>> next = stock == null ? lines(knowledge, in) : rows(knowledge, in);
            Bulk bulk = new Bulk(knowledge.assessor()::assess, a -> shown(knowledge, a, questions.orElse(0), true), strict,
                    Progress.of(TerminalScreen.isErrorSeen()));
            int code = bulk.run(next);
            if (summary != null) {
                SafeFile.write(summary, bulk.tally().csv());
                System.err.print(bulk.tally().text());
            }
            return code;
        } catch (NoSuchFileException e) {
            throw new BadInput(stock + " does not exist; check the name and the folder.", e);
        } catch (IOException e) {
            throw new BadInput((stock == null ? STDIN : stock) + " could not be read (" + e.getMessage() + ").", e);
        }
    }

    private Supplier<Optional<Bulk.Item>> lines(Knowledge knowledge, InputStream in) {
        Lines lines = new Lines(in);
        return () -> {
            Optional<Lines.Line> line = lines.next();
            while (line.isPresent() && (line.get().number() < fromLine || line.get().isBlank())) {
                line = lines.next();
            }
            return line.map(l -> new Bulk.Item(l.number(), () -> knowledge.check().check(
                    JobFile.draft(Documents.json(STDIN, l.text(STDIN), l.number()), "line-" + l.number()))));
        };
    }

    private Supplier<Optional<Bulk.Item>> rows(Knowledge knowledge, InputStream in) {
        StockList list = new StockList(knowledge.catalogue());
        Csv.Rows rows = list.rows(stock.toString(), in);
        return () -> {
            Optional<Csv.Row> row = rows.next();
            while (row.isPresent() && row.get().line() < fromLine) {
                row = rows.next();
            }
            return row.map(r -> new Bulk.Item(r.line(), () -> list.job(r.fields())));
        };
    }

    private String shown(Knowledge knowledge, Assessment assessment, int most, boolean oneLine) {
        List<NextQuestion> next = most == 0 ? List.of() : knowledge.lookahead().rank(assessment, most);
        if (format == AssessmentFormat.json) {
            Object fields = most == 0 ? AssessmentJson.of(assessment) : AssessmentJson.of(assessment, next);
            return oneLine ? Json.line(fields) + "\n" : Json.pretty(fields);
        }
        DisplayOptions look = look();
        CautionView view = cautions ? CautionView.ALL : CautionView.FROM_FILES;
        return (most == 0 ? AssessmentText.of(assessment, look, view) : AssessmentText.of(assessment, next, look, view)) + System.lineSeparator()
                + (sums ? "The sums\n" + SumsText.of(assessment, look) + System.lineSeparator() : "");
    }

    private synchronized DisplayOptions look() {
        look = look.or(() -> Optional.of(TerminalScreen.standardOutput(plain, WIDTH)));
        return look.orElseThrow();
    }
}
