package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.console.ArrangementInterview;
import neutralpoint.console.TerminalScreen;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.report.ArrangementSheet;
import neutralpoint.rulebase.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The double-check of the open or sealed side. */
@Command(name = "arrangement", mixinStandardHelpOptions = true,
        description = "Double-check what kind of system it is and how its feed, vent or sealed side is handled: from a job file, "
                + "or by asking what is to be seen.")
final class ArrangementCommand implements Callable<Integer> {
    private static final int USUAL_WIDTH = 80;

    @Parameters(arity = "0..1", paramLabel = "JOB.json", description = "the job file; without one you are asked")
    private Path file;

    @Option(names = "--width", description = "columns to draw in, 60 to 120")
    private Integer width;

    @Option(names = "--plain", description = "no styling, and only ASCII in the drawing")
    private boolean plain;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        ArrangementQuestionChooser question = new ArrangementQuestionChooser(knowledge.assessor(), knowledge.catalogue());
        if (file != null) {
            return show(knowledge.assessor().assess(knowledge.check().read(file)), knowledge, question, USUAL_WIDTH);
        }
        try (TerminalScreen screen = TerminalScreen.open(plain)) {
            Assessment a = new ArrangementInterview(screen, knowledge.catalogue(), knowledge.assessor(), question).run();
            return show(a, knowledge, question, screen.width());
        }
    }

    private int show(Assessment a, Knowledge knowledge, ArrangementQuestionChooser question, int usualWidth) {
        System.out.println(ArrangementSheet.of(a, knowledge.catalogue(), question.best(a), width == null ? usualWidth : width, plain));
        return a.stops().isEmpty() ? 0 : 1;
    }
}
