package neutralpoint.workplan;

import static neutralpoint.workplan.Houses.MACHINE;
import static neutralpoint.workplan.Houses.OPEN;
import static neutralpoint.workplan.Houses.tenRadiators;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import neutralpoint.Shared;
import neutralpoint.catalogue.ChecklistItem;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.workplan.figures.JobScope;
import neutralpoint.workplan.figures.Quantities;
import org.junit.jupiter.api.Test;

/** The lists that go with a plan: what belongs to this job, with its sizes and figures. */
class ChecklistsTest {

    private static Checklists lists(Job job, JobScope scope) {
        return Checklists.of(Shared.CATALOGUE.planLines().values(), job, scope, Quantities.of(job, scope), Set.of(), Set.of(), false);
    }

    @Test
    void fittingsAreOfTheSizesOfTheHouse() {
        Job job = tenRadiators().with("largest-pipe", new Answer.One("copper-28")).with("radiator-piping", new Answer.One("microbore-manifold"));
        assertThat(lists(job, OPEN).bring()).anyMatch(l -> l.startsWith("Two 28 mm tees")).anyMatch(l -> l.contains("for 8 or 10 mm tails"));
        assertThat(lists(tenRadiators(), OPEN).bring()).anyMatch(l -> l.startsWith("Two 22 mm tees"))
                .anyMatch(l -> l.endsWith("for 15 mm tails."));
    }

    @Test
    void chemicalsComeWithTheirNumber() {
        assertThat(lists(tenRadiators(), MACHINE).bring()).contains("Cleaner: 1 container of 1 litre.",
                "Inhibitor, with its label for the boiler: 1 container of 1 litre.");
        assertThat(lists(Job.begin("bare"), MACHINE).bring()).contains("Cleaner: not worked out yet, see what to measure.");
        assertThat(lists(tenRadiators(), MACHINE).agree()).anyMatch(l -> l.startsWith("Water the work takes from the main: 497 litres (413 to 581)."));
    }

    @Test
    void whatASystemHasDecidesWhatBelongsToIt() {
        assertThat(lists(tenRadiators(), MACHINE).bring()).anyMatch(l -> l.contains("foot pump")).noneMatch(l -> l.contains("loft"));
        assertThat(lists(tenRadiators(), OPEN).bring()).noneMatch(l -> l.contains("foot pump")).anyMatch(l -> l.startsWith("A bung for the loft tank"));
        JobScope direct = Houses.scope("component-repair", "", Set.of("open-vented", "shared-tank", "no-additives", "no-flush"));
        Checklists bare = lists(tenRadiators(), direct);
        assertThat(bare.bring()).noneMatch(l -> l.contains("Inhibitor") || l.contains("Cleaner") || l.contains("filling hose"));
        assertThat(bare.agree()).anyMatch(l -> l.startsWith("Nothing may be put into this heating water"));
        assertThat(bare.restore()).noneMatch(l -> l.contains("Inhibitor"));
    }

    @Test
    void everyJobHasSomethingToAgreeAndSomethingToRestore() {
        assertThat(Houses.scopes()).allSatisfy(scope -> {
            Checklists lists = lists(tenRadiators(), scope);
            assertThat(lists.agree()).isNotEmpty();
            assertThat(lists.recordFirst()).isNotEmpty();
            assertThat(lists.restore().isEmpty()).isEqualTo(Set.of("refer", "look-further").contains(scope.course()));
            assertThat(lists.bring().isEmpty()).isEqualTo(Set.of("no-wet-side-work", "look-further").contains(scope.course()));
        });
    }

    /** What is recorded of valves, pump and controls is there to be restored. */
    @Test
    void whatIsRecordedIsRestored() {
        for (String what : List.of("lockshields", "valve-heads", "pump", "controls", "zone-valves")) {
            ChecklistItem record = Shared.CATALOGUE.planLines().get("record-" + what);
            ChecklistItem restore = Shared.CATALOGUE.planLines().get("restore-" + what);
            assertThat(restore.courses()).as(what).isEqualTo(record.courses());
            assertThat(restore.traits()).as(what).isEqualTo(record.traits());
            assertThat(restore.without()).as(what).isEqualTo(record.without());
        }
    }

    /** A word in braces is a size, or a figure that some plan has; a line of the catalogue belongs to some job. */
    @Test
    void everyWordInBracesIsKnownAndEveryLineBelongsToSomeJob() {
        Set<String> known = new HashSet<>(Set.of("largest", "tails"));
        Houses.scopes().forEach(s -> Quantities.of(tenRadiators(), s).figures().forEach(f -> known.add(f.id())));
        Set<String> traits = Shared.CATALOGUE.traits();
        for (ChecklistItem line : Shared.CATALOGUE.planLines().values()) {
            assertThat(Pattern.compile("\\{([^}]*)}").matcher(line.says()).results().map(m -> m.group(1)).collect(Collectors.toSet()))
                    .as(line.id()).isSubsetOf(known);
            assertThat(line.says()).as(line.id()).matches("(?s)[A-Z{].*[.?]");
            assertThat(line.id()).startsWith(line.list().equals("record-first") ? "record-" : line.list() + "-");
            Set<String> asked = line.traits().isEmpty() ? Set.of() : Set.of(line.traits().get(0));
            assertThat(traits).as(line.id()).containsAll(asked);
            assertThat(Houses.scopes()).as(line.id()).anyMatch(s -> line.fits(s.course(), s.method(), asked));
        }
    }
}
