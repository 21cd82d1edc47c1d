package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import neutralpoint.Shared;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.job.Job;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a person sees on terminals of three sizes: the first question, how to check it, and the
 * second question. After a change that is meant, run it once with {@code -Dneutralpoint.rewrite=true}
 * and look at what changed in the pictures.
 * Holds {@link TerminalScreen} and {@link Screen}.
 */
class TerminalGoldenTest {
    private static final Path PICTURES = Path.of("src/test/resources/console");
    /** Short and always the same, because its name is shown. */
    private static final Path JOB = Path.of("target/callout.json");
    private static final String ENTER = "\r";
    private static final String CTRL_D = "\u0004";

    private static final int SETTLED_LOOKS = 4;
    private static final int MILLIS_BETWEEN_LOOKS = 50;

    @ParameterizedTest(name = "{0} columns, {1} lines")
    @CsvSource({"80, 24", "60, 20", "40, 15"})
    @Timeout(60)
    void theFirstQuestionsLookAsTheyShould(int columns, int lines) throws Exception {
        String seen = consultation(columns, lines);

        Path golden = PICTURES.resolve("first-questions-" + columns + "x" + lines + ".txt");
        if (Boolean.getBoolean("neutralpoint.rewrite")) {
            Files.createDirectories(PICTURES);
            Files.writeString(golden, seen);
        }
        assertThat(seen).isEqualTo(Files.readString(golden));
        assertThat(seen.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
    }

    /** The screen each time it waits for an answer. */
    private static String consultation(int columns, int lines) throws Exception {
        ScreenTerminal.VirtualTerminal virtual = ScreenTerminal.withTerminal("test", "xterm", columns, lines);
        Callout.Engine engine = new Callout.Engine(Shared.ASSESSOR, new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE));
        try (TerminalScreen screen = new TerminalScreen(virtual.terminal(), true)) {
            CompletableFuture<Job> left = CompletableFuture.supplyAsync(() ->
                    new Callout(screen, Shared.CATALOGUE, () -> engine, Job.begin("callout"), JOB).run());
            String first = waiting(virtual.screen(), "");
            type(virtual, "how" + ENTER);
            String how = waiting(virtual.screen(), first);
            type(virtual, "none" + ENTER);
            String second = waiting(virtual.screen(), how);
            type(virtual, CTRL_D);
            left.get(10, TimeUnit.SECONDS);
            return picture("The first question", first, columns) + picture("After \"how\"", how, columns)
                    + picture("The second question, after \"none\"", second, columns);
        } finally {
            Files.deleteIfExists(JOB);
        }
    }

    private static void type(ScreenTerminal.VirtualTerminal virtual, String keys) throws IOException {
        virtual.terminal().processInputBytes(keys.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What is on the screen once it has changed, an empty prompt stands last and nothing more is
     * being written: a single look can catch the screen in the middle of a scroll.
     */
    private static String waiting(ScreenTerminal screen, String before) throws InterruptedException {
        String now = rows(screen);
        int unchanged = 0;
        while (now.equals(before) || !now.endsWith("\n>") || unchanged < SETTLED_LOOKS) {
            Thread.sleep(MILLIS_BETWEEN_LOOKS);
            String next = rows(screen);
            unchanged = next.equals(now) ? unchanged + 1 : 0;
            now = next;
        }
        return now;
    }

    /** The rows of the screen without the blanks at their ends. */
    private static String rows(ScreenTerminal screen) {
        return screen.toString().lines().map(String::stripTrailing)
                .reduce((above, below) -> above + "\n" + below).orElse("").stripTrailing();
    }

    private static String picture(String title, String rows, int columns) {
        return title + "\n" + "-".repeat(columns) + "\n" + rows + "\n" + "-".repeat(columns) + "\n";
    }
}
