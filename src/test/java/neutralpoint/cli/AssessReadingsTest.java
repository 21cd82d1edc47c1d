package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Readings beside a job on the command line: a survey in a table, the strips, and the sums with the pressure plot. */
@UsesStandardStreams
class AssessReadingsTest {
    @TempDir
    private Path folder;
    private Path job;

    @BeforeEach
    void aSealedSystemWhoseGaugeRunsUp() throws Exception {
        job = Files.writeString(folder.resolve("job.json"), """
                {"findings": {"heating-filled-by": "filling-loop", "pressure-cold-bar": 1, "pressure-hot-bar": 2.8,
                  "vessel-size-litres": 12, "system-content-litres": 100}}
                """);
    }

    @Test
    void aSurveyIsReadBesideTheJob() throws Exception {
        Run run = assess("--radiators", survey("name,floor,top °F,base,flow tail,return tail\nlounge,ground,154.4,41,70,58\n").toString());

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("From the readings", "ground floor\n  lounge  top 68  base 41  tails 70/58  cold base\n");
        assertThat(Files.readString(job)).as("the job file is left as it was").doesNotContain("lounge");
    }

    @TestFactory
    Stream<DynamicTest> aSurveyThatCannotBeUsedGetsOneSentence() {
        record Bad(String what, String text, String says) {}
        return Stream.of(new Bad("missing columns", "name,top,base\n", "the table has no column flow tail, return tail"),
                new Bad("unknown column", "name,topp,base,flow tail,return tail\n", "did you mean \"top\"?"),
                new Bad("impossible row", "name,top,base,flow tail,return tail\nhall,60,75,70,58\n", "the base at 75 cannot be hotter"),
                new Bad("nothing", "", "the table has no column name, top, base, flow tail, return tail"),
                new Bad("heading without a name", "name,top,base,flow tail,return tail,\nhall,60,50,70,58,\n", "cannot be read as a table"))
                .map(bad -> DynamicTest.dynamicTest(bad.what(), () -> {
                    Run run = assess("--radiators", survey(bad.text()).toString());
                    assertThat(run.code()).isEqualTo(2);
                    assertThat(run.err()).contains("survey.csv", bad.says()).doesNotContain("Exception");
                    assertThat(run.err().lines()).hasSize(1);
                    assertThat(run.out()).isEmpty();
                }));
    }

    @Test
    void aSurveyBelongsToOneJob() {
        Run run = assess(job.toString(), "--radiators", "survey.csv");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--radiators belongs to one job file");
    }

    @Test
    void theSumsComeWithThePressurePlot() {
        Run run = assess("--sums");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("The sums\n", "3 - 2.8 = 0.2 bar", "bar, by the gauge", "o cold  @ hot  . expected  - safety valve",
                "Cold 1 bar at 15 C; hot 2.8 bar at 65 C", "Safety valve 3 bar, 0.2 bar over the hot reading.");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(assess().out()).doesNotContain("The sums", "by the gauge");
    }

    @Test
    void whatIsNotATerminalGetsNoColour() throws Exception {
        Run run = assess("--sums", "--radiators", survey("name,top,base,flow tail,return tail\nlounge,68,41,70,58\n").toString());

        assertThat(run.out()).doesNotContain("\u001b").doesNotContain("█");
    }

    private Path survey(String text) throws Exception {
        return Files.writeString(folder.resolve("survey.csv"), text);
    }

    private Run assess(String... more) {
        return Run.of(Stream.concat(Stream.of("assess", job.toString()), Stream.of(more)).toArray(String[]::new));
    }
}
