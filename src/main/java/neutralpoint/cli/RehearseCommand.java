package neutralpoint.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import neutralpoint.console.TerminalScreen;
import neutralpoint.report.AssessmentJson;
import neutralpoint.report.AssessmentText;
import neutralpoint.rulebase.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Touches what a consultation touches, so that the build can lay its classes out for a quick start. */
@Command(name = "rehearse", hidden = true)
final class RehearseCommand implements Callable<Integer> {
    @Parameters
    private Path file;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        Assessment assessment = knowledge.assessor().assess(knowledge.check().read(file));
        var next = knowledge.lookahead().rank(assessment, 3);
        try (TerminalScreen screen = TerminalScreen.open(true)) {
            screen.heading(neutralpoint.document.Json.line(AssessmentJson.of(assessment, next)));
            screen.line(AssessmentText.of(assessment, next, screen.width()));
            screen.ask("", java.util.List.of());
        }
        return 0;
    }
}
