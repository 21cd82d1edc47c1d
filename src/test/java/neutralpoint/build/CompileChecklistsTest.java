package neutralpoint.build;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.ChecklistItem;
import neutralpoint.document.BadInput;
import neutralpoint.job.Job;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A slip in the lists of a plan ends the build with the file and the nearest valid word. */
class CompileChecklistsTest {
    private static final String FILE = "plan-lists.yaml";

    @TempDir
    Path folder;

    private void load(UnaryOperator<String> change) throws IOException {
        Path copy = Files.createTempDirectory(folder, "catalogue");
        Shared.copy(Path.of("rules/catalogue"), copy);
        String before = Files.readString(copy.resolve(FILE));
        String after = change.apply(before);
        assertThat(after).as("the slip changes the file").isNotEqualTo(before);
        Files.writeString(copy.resolve(FILE), after);
        CatalogueFiles.fromFolder(copy);
    }

    @TestFactory
    Stream<DynamicTest> aSlipIsNamed() {
        record Slip(String what, UnaryOperator<String> change, String says) {}
        return Stream.of(
                new Slip("course", s -> s.replaceFirst("course: \\[full-flush", "course: [full-flash"), "\"full-flash\" is not a known course; did you mean \"full-flush\"?"),
                new Slip("method", s -> s.replaceFirst("method: \\[machine-flush", "method: [machine-flsh"), "\"machine-flsh\" is not a known method; did you mean \"machine-flush\"?"),
                new Slip("trait", s -> s.replaceFirst("trait: \\[open-vented", "trait: [open-ventd"), "\"open-ventd\" is not a known trait; did you mean \"open-vented\"?"),
                new Slip("without", s -> s.replaceFirst("without: \\[no-flush", "without: [no-flsh"), "\"no-flsh\" is not a known without; did you mean \"no-flush\"?"),
                new Slip("found", s -> s.replaceFirst("found: \\{waste-goes-to: \\[septic-tank", "found: {waste-goes-to: [septic-tnk"), "\"septic-tnk\" is not a known answer of waste-goes-to; did you mean \"septic-tank\"?"),
                new Slip("cause", s -> s.replaceFirst("cause: \\[scale-on-exchanger", "cause: [scale-on-exchange"), "\"scale-on-exchange\" is not a known cause; did you mean \"scale-on-exchanger\"?"),
                new Slip("danger", s -> s.replaceFirst("found: \\{danger: \\[gas-escape", "found: {danger: [gas-escpe"), "\"gas-escpe\" is not a known danger; did you mean \"gas-escape\"?"),
                new Slip("source", s -> s.replaceFirst("source: coshh", "source: cosh"), "\"cosh\" is not a known source; did you mean \"coshh\"?"),
                new Slip("list", s -> s.replaceFirst("list: bring", "list: brng"), "\"brng\" is not a valid \"list\"; did you mean \"bring\"?"),
                new Slip("condition", s -> s.replaceFirst("when: \\{course", "when: {curse"), "\"curse\" is not a field known here; did you mean \"course\"?"),
                new Slip("twice", s -> s.replaceFirst("id: bring-magnet", "id: bring-sheets"), "\"bring-sheets\" is catalogued twice"))
                .map(slip -> DynamicTest.dynamicTest(slip.what(), () -> assertThatThrownBy(() -> load(slip.change()))
                        .isInstanceOf(BadInput.class).hasMessageContaining(FILE).hasMessageContaining(slip.says())));
    }

    /** Any word of a condition is enough, all conditions must hold, and an excluded trait excludes. */
    @Test
    void aLineBelongsToTheJobsItNames() {
        ChecklistItem line = Shared.CATALOGUE.planLines().get("bring-caps");
        assertThat(line.fits("full-flush", "machine-flush", Set.of("open-vented"))).isTrue();
        assertThat(line.fits("full-flush", "leg-by-leg", Set.of("open-vented", "cylinder"))).isTrue();
        assertThat(line.fits("full-flush", "chemical-drain-and-rinse", Set.of("open-vented"))).isFalse();
        assertThat(line.fits("full-flush", "machine-flush", Set.of("sealed"))).isFalse();
        assertThat(line.fits("full-flush", "machine-flush", Set.of("open-vented", "no-flush"))).isFalse();
        ChecklistItem work = Shared.CATALOGUE.planLines().get("agree-why");
        assertThat(work.fits("valve-repair", "", Set.of())).isTrue();
        assertThat(work.fits("refer", "", Set.of())).as("a referral agrees what the referral needs").isFalse();
        ChecklistItem course = Shared.CATALOGUE.planLines().get("agree-referral");
        assertThat(course.fits("refer", "", Set.of())).isTrue();
        assertThat(course.fits("full-flush", "machine-flush", Set.of())).isFalse();
    }

    /** What is brought and agreed fits where the water may go, and nothing hot is read while a danger keeps the heat off. */
    @Test
    void aLineHangsOnAnswersAndOnHeat() {
        Job septic = aJob().with("waste-goes-to", "septic-tank").job();
        Job drain = aJob().with("waste-goes-to", "foul-drain").job();
        assertThat(fits("bring-containers", septic, false)).isTrue();
        assertThat(fits("bring-drain-down", septic, false)).isFalse();
        assertThat(fits("bring-containers", drain, false)).isFalse();
        assertThat(fits("bring-drain-down", drain, false)).isTrue();
        assertThat(fits("record-temperatures", drain, false)).isTrue();
        assertThat(fits("record-temperatures", drain, true)).isFalse();
    }

    /** Where gas or fumes have driven everybody out nothing is brought, recorded or agreed indoors. */
    @Test
    void aLineHangsOnTheDangersThatStand() {
        for (String line : List.of("bring-notice", "agree-referral", "record-what-was-seen")) {
            assertThat(under(line, "boiling")).as(line).isTrue();
            assertThat(under(line, "gas-escape")).as(line).isFalse();
        }
        assertThat(under("agree-outside", "carbon-monoxide")).isTrue();
        assertThat(under("agree-outside", "boiling")).isFalse();
    }

    private static boolean under(String line, String danger) {
        return Shared.CATALOGUE.planLines().get(line).fits(Job.begin("referred"), Set.of(), Set.of(), Set.of(danger), true);
    }

    /** A mild cleaner may stay for days; a descaler is an acid, and never does. */
    @Test
    void daysOfCleanerAreNotForADescaler() {
        ChecklistItem days = Shared.CATALOGUE.planLines().get("agree-days-of-cleaner");
        ChecklistItem hours = Shared.CATALOGUE.planLines().get("agree-hours-of-descaler");
        Job job = Job.begin("scale");
        assertThat(days.fits(job, Set.of(), Set.of("scale-on-exchanger"), Set.of(), false)).isFalse();
        assertThat(hours.fits(job, Set.of(), Set.of("scale-on-exchanger"), Set.of(), false)).isTrue();
        assertThat(days.fits(job, Set.of(), Set.of("sludge-throughout"), Set.of(), false)).isTrue();
        assertThat(hours.fits(job, Set.of(), Set.of("sludge-throughout"), Set.of(), false)).isFalse();
    }

    private static boolean fits(String line, Job job, boolean heatOff) {
        return Shared.CATALOGUE.planLines().get(line).fits(job, Set.of(), Set.of(), Set.of(), heatOff);
    }
}
