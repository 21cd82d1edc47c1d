package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The gauge read over days, as it is typed on each visit. */
class GaugeLogEditorTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 5, 17, 30, 44);

    @TempDir
    private Path folder;
    private ScriptedScreen screen;
    private GaugeLogEditor desk;

    @Test
    void aReadingIsPressureTemperatureAndTime() {
        Job job = enter("1.2 bar, 15 C, 2026-11-02 08:00");

        assertThat(job.gauge()).containsExactly(new GaugeReading(LocalDateTime.of(2026, 11, 2, 8, 0), 1.2, 15));
        assertThat(JobFile.read(folder.resolve("test.json")).gauge()).isEqualTo(job.gauge());
        assertThat(screen.after("1.2 bar, 15 C, 2026-11-02 08:00")).containsExactly("Kept 2026-11-02 08:00, 1.2 bar, water at 15 C.");
    }

    @Test
    void nowIsTheMinuteItIs() {
        LocalDateTime minute = LocalDateTime.of(2026, 11, 5, 17, 30);

        assertThat(enter("1.1, 16, now").gauge()).containsExactly(new GaugeReading(minute, 1.1, 16));
        assertThat(enter("1.1, 16").gauge()).containsExactly(new GaugeReading(minute, 1.1, 16));
    }

    @Test
    void otherUnitsAreBroughtToBarAndCelsius() {
        // 17 psi x 6894.757 Pa = 1.17 bar; 59 °F are 15 °C.
        assertThat(enter("17 psi, 59 °F, now").gauge().get(0)).extracting(GaugeReading::bar, GaugeReading::waterCelsius).containsExactly(1.17, 15.0);
    }

    @Test
    void linesArePastedInAnyOrderAndKeptOldestFirst() {
        Job job = enter("1.0;15;2026-11-04T08:00\n1,2;15;2026-11-02 08:00");

        assertThat(job.gauge()).extracting(GaugeReading::bar).containsExactly(1.2, 1.0);
    }

    @Test
    void aSecondReadingOfOneTimeReplacesTheFirst() {
        assertThat(enter("1.0, 15, 2026-11-02 08:00", "1.3, 15, 2026-11-02 08:00").gauge()).extracting(GaugeReading::bar).containsExactly(1.3);
    }

    @Test
    void aWrongLineIsToldInOneSentenceAndLosesNothing() {
        Job job = enter("1.2, 15, 2026-11-02 08:00", "9, 15, now", "low, 15, now", "1.2, 15 bar, now", "1.2, 15, yesterday", "1.2",
                "1.2, 15, 2026-11-06 08:00");

        assertThat(screen.after("9, 15, now")).containsExactly("your line: \"bar\" cannot be 9 bar; a plausible figure lies between 0 and 6.");
        assertThat(screen.after("low, 15, now")).containsExactly("your line: \"bar\" takes a number in bar, not \"low\".");
        assertThat(screen.after("1.2, 15 bar, now")).first().asString().contains("not in bar, which measures a pressure");
        assertThat(screen.after("1.2, 15, yesterday")).containsExactly(
                "your line: \"yesterday\" is not a date and time such as 2026-11-02T08:00.");
        assertThat(screen.after("1.2")).first().asString().contains("a reading is pressure, water temperature and time");
        assertThat(screen.after("1.2, 15, 2026-11-06 08:00")).first().asString().contains("2026-11-06 08:00 is still to come");
        assertThat(job.gauge()).hasSize(1);
    }

    @Test
    void aReadingIsRemovedByItsNumber() {
        Job job = enter("1.2, 15, 2026-11-02 08:00", "1.0, 15, 2026-11-04 08:00", "remove 3", "remove 0", "remove 1", "table");

        assertThat(screen.after("remove 3")).containsExactly("Type \"remove\" and the number of a reading in the table, 1 to 2.");
        assertThat(screen.after("remove 0")).hasSize(1);
        assertThat(screen.after("table")).containsExactly("  1  2026-11-04 08:00, 1 bar, water at 15 C");
        assertThat(job.gauge()).hasSize(1);
    }

    @Test
    void leaveAndTheEndOfInputLeaveTheCallOutAndDoneDoesNot() {
        enter("done");
        assertThat(desk.isLeft()).isFalse();
        enter("leave");
        assertThat(desk.isLeft()).isTrue();
        enter();
        assertThat(desk.isLeft()).isTrue();
    }

    private Job enter(String... lines) {
        screen = new ScriptedScreen(lines);
        desk = new GaugeLogEditor(screen, new JobSaver(screen, folder.resolve("test.json"), Job.begin("test")), Job.begin("test"), () -> NOW);
        return desk.run();
    }
}
