package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import neutralpoint.document.Documents;
import neutralpoint.document.Lines;
import neutralpoint.document.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Many homes at once: JSON Lines on standard input, or a table with one home a row.
 * Holds {@link neutralpoint.document.Lines}.
 */
@UsesStandardStreams
class AssessManyTest {
    private static final String GAS = "{\"job\":\"gas\",\"findings\":{\"red-lines\":[\"gas-smell\"]}}\n";
    private static final String NOISE = "{\"job\":\"noise\",\"findings\":{\"red-lines\":[],\"complaint\":[\"kettling\"]}}\n";

    @TempDir
    Path folder;

    @Test
    void everyLineIsJudgedInItsPlace() {
        String jobs = IntStream.range(0, 300).mapToObj(i -> NOISE.replace("noise", "home-" + i)).collect(Collectors.joining());
        Run run = Run.reading(jobs, "assess", "--format", "json", "-");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().map(AssessManyTest::job))
                .containsExactlyElementsOf(IntStream.range(0, 300).mapToObj(i -> "home-" + i).toList());
    }

    @Test
    void aLineAloneIsJudgedAsItIsInAFile() throws IOException {
        Path file = folder.resolve("noise.json");
        Files.writeString(file, NOISE);
        String alone = Run.of("assess", "--format", "json", "--next", "0", file.toString()).out();
        String line = Run.reading(NOISE, "assess", "--format", "json", "-").out();
        assertThat(Documents.json("line", line, 1)).isNotNull();
        assertThat(line.replaceAll("\\s", "")).isEqualTo(alone.replaceAll("\\s", ""));
    }

    @Test
    void questionsAreLookedForOnlyWhenAskedFor() {
        assertThat(Run.reading(NOISE, "assess", "--format", "json", "-").out()).doesNotContain("\"next\"");
        Run asked = Run.reading(NOISE, "assess", "--format", "json", "--next", "1", "-");
        assertThat(Documents.json("out", asked.out(), 1).asFields().get("next").asItems().items()).hasSize(1);
        assertThat(Run.reading(NOISE, "assess", "-").out()).contains("Course: ").doesNotContain("could still matter");
    }

    @Test
    void badLinesAreToldWithTheirNumberAndTheRestIsJudged() {
        Run run = Run.reading(NOISE + "{\"cut\n" + "\n" + "{\"findings\":{\"bleed-watr\":\"black\"}}\n" + GAS, "assess", "--format", "json", "-");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out().lines().map(AssessManyTest::job)).containsExactly("noise", "gas");
        assertThat(run.err().lines()).satisfiesExactly(
                first -> assertThat(first).startsWith("standard input, line 2: ").contains("breaks off"),
                second -> assertThat(second).startsWith("standard input, line 4: ").contains("did you mean \"bleed-water\"?"));
    }

    @Test
    void strictStopsAtTheFirstBadLine() {
        Run run = Run.reading(NOISE + "{\"cut\n" + GAS + "{\"cut\n", "assess", "--format", "json", "--strict", "-");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out().lines().map(AssessManyTest::job)).containsExactly("noise");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void aRunIsTakenUpAgainFromALine() {
        Run run = Run.reading("{\"cut\n" + NOISE + GAS, "assess", "--format", "json", "--from-line", "3", "-");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out().lines().map(AssessManyTest::job)).containsExactly("gas");
    }

    @Test
    void theSummaryPutsTheHomesWithAStopFirst() throws IOException {
        Path summary = folder.resolve("summary.csv");
        Run run = Run.reading(NOISE + NOISE + GAS + "{\"cut\n", "assess", "--format", "json", "--summary", summary.toString(), "-");
        List<String> rows = Files.readAllLines(summary);
        assertThat(rows.get(0)).isEqualTo("what,id,title,homes");
        assertThat(rows.get(1)).isEqualTo("home with a stop,gas,Smell of gas,1");
        assertThat(rows).contains("course,refer,Stop and refer,1");
        assertThat(rows.stream().filter(r -> r.startsWith("course,")).mapToInt(r -> Integer.parseInt(r.replaceFirst(".*,", ""))).sum()).isEqualTo(3);
        assertThat(run.err().lines()).contains("Work stops in 1 home: gas (Smell of gas).", "Judged 3 homes; 1 line could not be used.");
    }

    @Test
    void aTableHoldsOneHomeARow() throws IOException {
        Run run = stock("job,house,bleed-water,complaint,red-lines\nA,Two floors,black,all-lukewarm; kettling,none\nB,,,,gas-smell\n");
        assertThat(run.code()).isEqualTo(1);
        Run lines = Run.reading("{\"job\":\"A\",\"findings\":{\"bleed-water\":\"black\",\"complaint\":[\"all-lukewarm\",\"kettling\"],\"red-lines\":[]}}\n"
                + GAS.replace("\"gas\"", "\"B\""), "assess", "--format", "json", "-");
        assertThat(run.out()).isEqualTo(lines.out());
    }

    @Test
    void whatIsWrongInATableIsNamedWithRowAndColumn() throws IOException {
        Run run = stock("job,bleed-water,pressure-cold-bar\nA,blak,\nB,,low\n,clear,\nC,clear,1.2 bar\nD,clear,,,\n");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out().lines().map(AssessManyTest::job)).containsExactly("C");
        assertThat(run.err().lines()).satisfiesExactly(
                a -> assertThat(a).contains("column bleed-water, line 2: \"blak\" is not an answer").contains("did you mean \"black\"?"),
                b -> assertThat(b).contains("column pressure-cold-bar, line 3: ").contains("takes a number in bar"),
                none -> assertThat(none).contains("column job, line 4: the cell is empty"),
                d -> assertThat(d).contains("line 6: this row has 5 cells and the heading row only 3"));
        assertThat(stock("job,bleed-watr\nA,black\n").err()).contains("line 1: \"bleed-watr\" is not a column known here; did you mean \"bleed-water\"?");
        assertThat(stock("house,bleed-water\nA,black\n").err()).contains("no column \"job\"");
    }

    @Test
    void whatDoesNotGoTogetherIsSaidSo() {
        assertThat(Run.of("assess").err()).contains("name a job file");
        assertThat(Run.of("assess", "--strict", "cases/hawthorn-row.json").err()).contains("go with - or --stock");
        assertThat(Run.of("assess", "--stock", "no-such.csv")).satisfies(run -> {
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("no-such.csv does not exist");
        });
    }

    /** Another program may write one line and wait for what comes of it before it writes the next. */
    @SuppressWarnings("try")
    @Test
    @Timeout(60)
    void aLineIsAnsweredWithoutWaitingForMore() throws Exception {
        InputStream in = System.in;
        PrintStream out = System.out;
        try (PipedOutputStream jobs = new PipedOutputStream(); PipedInputStream answers = new PipedInputStream(1 << 20)) {
            System.setIn(new PipedInputStream(jobs));
            PrintStream answering = new PrintStream(new PipedOutputStream(answers), true, StandardCharsets.UTF_8);
            CompletableFuture<Integer> running = CompletableFuture.supplyAsync(
                    () -> Main.run(new String[] {"assess", "--format", "json", "-"}, answering));
            for (String line : List.of(NOISE, GAS)) {
                jobs.write(line.getBytes(StandardCharsets.UTF_8));
                jobs.flush();
                String answer = new Lines(answers).next().orElseThrow().text("answers");
                assertThat(job(answer)).isEqualTo(job(line));
            }
            jobs.close();
            assertThat(running.get(30, TimeUnit.SECONDS)).isEqualTo(1);
        } finally {
            System.setIn(in);
            System.setOut(out);
        }
    }

    @Test
    void ofALineThatIsTooLongOnlyTheLimitIsHeld() {
        byte[] text = ("x".repeat(Documents.LARGEST_FILE_BYTES + 5) + "\nshort\n").getBytes(StandardCharsets.UTF_8);
        Lines lines = new Lines(new ByteArrayInputStream(text));
        Lines.Line first = lines.next().orElseThrow();
        assertThat(first.tooLong()).isTrue();
        assertThat(first.bytes()).hasSize(Documents.LARGEST_FILE_BYTES);
        assertThat(lines.next().orElseThrow().text("text")).isEqualTo("short");
        assertThat(lines.next()).isEmpty();
    }

    private Run stock(String table) throws IOException {
        Path file = folder.resolve("homes.csv");
        Files.writeString(file, table);
        return Run.of("assess", "--format", "json", "--stock", file.toString());
    }

    private static String job(String line) {
        Node.Fields fields = Documents.json("out", line, 1).asFields();
        return fields.text("job");
    }
}
