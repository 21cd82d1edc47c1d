package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import neutralpoint.job.Temperatures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Radiators entered in a call-out: typed, pasted, imported, replaced, and taken up again from the file.
 * Holds {@link EntryLoop} and {@link TypedRow}.
 */
class RadiatorEditorTest {
    private static final String LOUNGE = "lounge, ground, 68, 41, 70, 58";
    private static final Radiator READ_LOUNGE = new Radiator("lounge", "ground").withTemperatures(Temperatures.of(68, 41, 70, 58));

    @TempDir
    private Path folder;
    private ScriptedScreen screen;

    @Test
    void aRowIsTypedAndSavedAtOnce() {
        Job job = enter(LOUNGE);

        assertThat(job.radiators()).containsExactly(READ_LOUNGE);
        assertThat(saved().radiators()).isEqualTo(job.radiators());
        assertThat(screen.after(LOUNGE)).containsExactly("Kept lounge, ground, top 68, base 41, flow tail 70, return tail 58: cold base.");
    }

    @Test
    void theFloorAndWhatComesLastMayBeLeftOut() {
        Job job = enter("hall, 60, 52", "bath, first");

        assertThat(job.radiators()).containsExactly(new Radiator("hall", "unknown").withTemperatures(
                new Temperatures(OptionalDouble.of(60), OptionalDouble.of(52), OptionalDouble.empty(), OptionalDouble.empty())),
                new Radiator("bath", "first"));
    }

    @Test
    void otherColumnsAreGivenByName() {
        Job job = enter("lounge, ground, 68, 41, 70, 58, type=type-22, height=600, length=1200, run=9, leg=front, valves=open");

        assertThat(job.radiators()).containsExactly(new Radiator("lounge", "ground", "front", OptionalDouble.of(9),
                Optional.of(new RadiatorSize("type-22", 600, 1200)), "open", Temperatures.of(68, 41, 70, 58)));
    }

    @Test
    void aUnitMayStandBesideAFigure() {
        // 140 °F are (140 - 32) x 5/9 = 60 °C; 24 in are 609.6 mm.
        Job job = enter("lounge, top=140 °F, base = 41 C, type=type-11, height=24 in, length=1.2 m");

        assertThat(job.radiators().get(0).temperatures().topCelsius()).hasValue(60);
        assertThat(job.radiators().get(0).body()).contains(new RadiatorSize("type-11", 610, 1200));
    }

    @Test
    void severalLinesArePastedAtOnceAndEachIsReadOnItsOwn() {
        String pasted = LOUNGE + "\n\nhall, ground, 90, 52, 66, 55\nbed one;first;60,5;52;66;55\nbath\tfirst\t61\t52\t66\t55";

        Job job = enter(pasted);

        assertThat(job.radiators()).extracting(Radiator::name).containsExactly("lounge", "bed one", "bath");
        assertThat(job.radiators().get(1).temperatures().topCelsius()).as("decimal comma between semicolons").hasValue(60.5);
        assertThat(screen.after(pasted)).contains(
                "what you pasted, line 3: hall: the top at 90 cannot be hotter than its tails at 66 celsius; read both again.");
    }

    @Test
    void aWrongRowIsToldInOneSentenceAndLosesNothing() {
        Job job = enter(LOUNGE, "hall, ground, warm, 41", "hall, ground, 140", "hall, 60, 50, hieght=600", "hall, 60, 50, run=-4",
                "hall, 60, 50, type=type-2", "hall, ground, 60, 50, 66, 55, 12", "hall, 60, 50, top=61", ", ground, 60", "laundry");

        assertThat(screen.after("hall, ground, warm, 41")).containsExactly("your line: \"top\" takes a number in celsius, not \"warm\".");
        assertThat(screen.after("hall, ground, 140")).containsExactly(
                "your line: \"top\" cannot be 140 celsius; a plausible figure lies between -5 and 110.");
        assertThat(screen.after("hall, 60, 50, hieght=600")).containsExactly(
                "your line: \"hieght\" is not a column known here; did you mean \"height\"?");
        assertThat(screen.after("hall, 60, 50, run=-4")).first().asString().contains("\"run\" cannot be -4 m");
        assertThat(screen.after("hall, 60, 50, type=type-2")).first().asString().contains("did you mean \"type-20\"?");
        assertThat(screen.after("hall, ground, 60, 50, 66, 55, 12")).first().asString().contains("7 values are more than a row has");
        assertThat(screen.after("hall, 60, 50, top=61")).containsExactly("your line: \"top\" is given twice; keep one of them.");
        assertThat(screen.after(", ground, 60")).first().asString().contains("the name comes first");
        assertThat(screen.after("laundry")).first().asString().contains("nothing stands beside \"laundry\"");
        assertThat(job.radiators()).containsExactly(READ_LOUNGE);
        assertThat(saved().radiators()).containsExactly(READ_LOUNGE);
    }

    @Test
    void freshFiguresReplaceTheRowAndLeaveWhatTheRadiatorIs() {
        Job job = enter(LOUNGE + ", type=type-22, height=600, length=1200, run=9", "hall, ground, 60, 52", "Lounge, 60, 52");

        assertThat(job.radiators()).extracting(Radiator::name).as("in its place, under its name").containsExactly("lounge", "hall");
        Radiator lounge = job.radiators().get(0);
        assertThat(lounge.temperatures()).as("no old tails beside fresh faces").isEqualTo(
                new Temperatures(OptionalDouble.of(60), OptionalDouble.of(52), OptionalDouble.empty(), OptionalDouble.empty()));
        assertThat(lounge.floor()).isEqualTo("ground");
        assertThat(lounge.body()).contains(new RadiatorSize("type-22", 600, 1200));
        assertThat(screen.after("Lounge, 60, 52")).first().asString().startsWith("Replaced lounge");
    }

    @Test
    void oneColumnIsChangedOrClearedByItsName() {
        Job job = enter(LOUNGE + ", run=9", "lounge, base=50, run=");

        assertThat(job.radiators()).containsExactly(READ_LOUNGE.withTemperatures(Temperatures.of(68, 50, 70, 58)));
    }

    @Test
    void aRowIsRemovedByItsName() {
        Job job = enter(LOUNGE, "bath, first, 60, 52", "remove louge", "remove Lounge", "remove");

        assertThat(screen.after("remove louge")).containsExactly("There is no radiator \"louge\"; did you mean \"lounge\"?");
        assertThat(job.radiators()).extracting(Radiator::name).containsExactly("bath");
        assertThat(saved().radiators()).hasSize(1);
    }

    @Test
    void aSpreadsheetBesideTheJobIsImported() throws Exception {
        Files.writeString(folder.resolve("survey.csv"), "name;floor;top °F;base;flow tail;return tail\nbath;first;140;52;66;55\nlounge;;154,4;44;70;58\n");

        Job job = enter(LOUNGE + ", run=9", "import survey.csv");

        assertThat(screen.after("import survey.csv")).first().isEqualTo("2 rows read from survey.csv, 1 in place of rows of the same name.");
        assertThat(job.radiators()).extracting(Radiator::name).containsExactly("lounge", "bath");
        assertThat(job.radiators().get(0).runMetres()).as("the sheet does not say").hasValue(9);
        assertThat(job.radiators().get(0).temperatures().baseCelsius()).hasValue(44);
        assertThat(saved().radiators()).isEqualTo(job.radiators());
    }

    @Test
    void anImportWithMissingColumnsNamesThemAndChangesNothing() throws Exception {
        Files.writeString(folder.resolve("survey.csv"), "name,top,base\nbath,60,52\n");

        Job job = enter(LOUNGE, "import survey.csv", "import nothing.csv", "import");

        assertThat(screen.after("import survey.csv")).singleElement().asString()
                .contains("line 1: the table has no column flow tail, return tail; a survey needs name");
        assertThat(screen.after("import nothing.csv")).containsExactly("nothing.csv does not exist; check the name and the folder.");
        assertThat(screen.after("import")).first().asString().contains("import survey.csv");
        assertThat(job.radiators()).containsExactly(READ_LOUNGE);
    }

    @Test
    void theTableComesBackFromTheFile() {
        enter(LOUNGE);

        consult(saved(), "radiators", "bath, first, 62, 54, 66, 56", "table", "done");

        assertThat(String.join("\n", screen.after("radiators"))).contains("""
                name   floor     top  base  flow return  state
                lounge ground     68    41    70     58  cold base""");
        assertThat(screen.after("table")).containsExactly("""
                name   floor     top  base  flow return  state
                lounge ground     68    41    70     58  cold base
                bath   first      62    54    66     56  healthy""");
        assertThat(saved().radiators()).hasSize(2);
    }

    @Test
    void doneShowsTheStripsAndGoesBackToTheQuestion() {
        consult(Job.begin("test"), "none", "radiators", LOUNGE, "done");

        assertThat(screen.after("done").get(0)).isEqualTo("ground floor\n  lounge  top 68  base 41  tails 70/58  cold base");
        assertThat(screen.headings()).last().isEqualTo(Shared.CATALOGUE.finding("complaint").ask());
    }

    @Test
    void leaveEndsTheCallOutFromHere() {
        consult(Job.begin("test"), "none", "radiators", LOUNGE, "leave", "none");

        assertThat(screen.after("leave")).last().asString().startsWith("Kept in ");
        assertThat(saved().radiators()).hasSize(1);
    }

    @Test
    void linesPastedBelowDoneAreNotTakenForAnswers() {
        String pasted = LOUNGE + "\ndone\nbath, first, 60, 52";

        Job job = enter(pasted);

        assertThat(job.radiators()).containsExactly(READ_LOUNGE);
        assertThat(screen.after(pasted)).contains("What was pasted below \"done\" was not read.");
    }

    @Test
    void helpNamesEveryWordThatCanBeTyped() {
        enter("help");

        assertThat(screen.after("help")).anySatisfy(l -> assertThat(l).contains("import FILE.csv"))
                .anySatisfy(l -> assertThat(l).contains("remove NAME")).anySatisfy(l -> assertThat(l).contains("done:"));
    }

    @Test
    void theSumsBehindTheReadingsCanBeRead() {
        consult(Job.begin("test"), "none", "sums", "radiators", LOUNGE, "hall, ground, 60, 52, 66, 55", "done", "sums ");

        assertThat(screen.after("sums")).first().asString().contains("Nothing has been worked out");
        assertThat(String.join("\n", screen.after("sums "))).contains("lounge: top 68, base 41, difference 27", "68 - 41 = 27");
    }

    private Job enter(String... lines) {
        String[] typed = new String[lines.length + 2];
        typed[0] = "radiators";
        System.arraycopy(lines, 0, typed, 1, lines.length);
        typed[lines.length + 1] = "done";
        return consult(Job.begin("test"), typed);
    }

    private Job consult(Job job, String... typed) {
        screen = new ScriptedScreen(typed);
        Callout.Engine engine = new Callout.Engine(Shared.ASSESSOR, new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE));
        return new Callout(screen, Shared.CATALOGUE, () -> engine, job, file()).run();
    }

    private Path file() {
        return folder.resolve("test.json");
    }

    private Job saved() {
        return new JobCheck(Shared.CATALOGUE).read(file());
    }
}
