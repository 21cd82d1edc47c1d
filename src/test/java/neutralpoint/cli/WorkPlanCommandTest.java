package neutralpoint.cli;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Method;
import neutralpoint.document.Json;
import neutralpoint.job.Job;
import neutralpoint.report.WorkPlanCompare;
import neutralpoint.report.WorkPlanJson;
import neutralpoint.report.WorkPlanMarkdown;
import neutralpoint.report.WorkPlanText;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.WorkPlan;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The method statement as an engineer reads it before the work.
 * Holds {@link neutralpoint.workplan.WorkPlan} and {@link neutralpoint.workplan.SystemConversion}.
 */
@UsesStandardStreams
class WorkPlanCommandTest {
    private static final String FLUSH_HOUSE = "cases/hawthorn-row.json";

    @TempDir
    Path folder;

    private static WorkPlan plan(Job job, Optional<String> method) {
        return WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, job, method);
    }

    /** Every house of the case studies, by the course recommended and by every method: as text, Markdown and JSON. */
    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> everyHousesPlanFitsThePageAndItsSchema() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("src/main/resources/neutralpoint/workplan.schema.json")), InputFormat.JSON);
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            for (WorkPlan p : Stream.concat(Stream.of(plan(c.job(), Optional.empty())),
                    Shared.CATALOGUE.methods().values().stream().map(Method::id).map(m -> plan(c.job(), Optional.of(m)))).toList()) {
                assertThat(WorkPlanText.of(p, Shared.CATALOGUE, 78, true).lines()).allMatch(line -> line.length() <= 80);
                assertThat(WorkPlanMarkdown.of(p, Shared.CATALOGUE)).startsWith("# Work plan: ");
                assertThat(schema.validate(Json.line(WorkPlanJson.of(p)), InputFormat.JSON)).isEmpty();
            }
        }));
    }

    @Test
    void aFlushIsSaidFromTheAgreementToTheRecord() {
        Run run = Run.of("workplan", FLUSH_HOUSE);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("Course: Full flush, by machine flush", "Bring", "Tell and agree beforehand", "Isolate", "Dump",
                "Put back", "Prove", "Figures", "Water in the heating");
        assertThat(run.out().indexOf("\nIsolate")).isLessThan(run.out().indexOf("\nDump")).isGreaterThan(run.out().indexOf("\nPrepare"));
    }

    @Test
    void theArithmeticIsPrintedOnRequest() {
        assertThat(Run.of("workplan", FLUSH_HOUSE, "--sums").out().length()).isGreaterThan(Run.of("workplan", FLUSH_HOUSE).out().length());
    }

    /** Never a flush with care: what must come first, and when a flush may be planned. */
    @Test
    void aSingleFeedCylinderIsRefusedAFlush() {
        Job job = aJob().with("heating-filled-by", "shared-tank").with("hot-water-made-by", "cylinder").with("cylinder-style", "single-feed").with("bleed-water", "black").with("complaint", "radiators-cold-at-base").job();
        for (String method : Shared.CATALOGUE.methods().keySet()) {
            WorkPlan p = plan(job, Optional.of(method));
            assertThat(p.method()).as(method).isEmpty();
            assertThat(p.refusal()).as(method).isPresent();
            assertThat(p.isNothingPlanned() ? p.figures() : List.of()).isEmpty();
            assertThat(WorkPlanText.of(p, Shared.CATALOGUE, 78, false)).doesNotContain("Cleaner:").contains("No cleanse is planned here", "- First: ", "A cleanse may be planned when");
        }
    }

    /** Nothing goes into water that may reach the taps, in the steps or in any list. */
    @Test
    void aSystemThatIsNotKnownIsNotDosed() {
        WorkPlan p = plan(aJob().with("complaint", "one-radiator-cold").with("trv-head-off", "pin-stays-down").job(), Optional.empty());
        assertThat(p.assessment().arrangement().status()).isEqualTo("unclear");
        assertThat(p.figures()).noneMatch(f -> f.id().startsWith("inhibitor"));
        assertThat(p.lists().restore()).noneMatch(l -> l.startsWith("Inhibitor in"));
    }

    @Test
    void twoMethodsStandSideBySide() {
        Run run = Run.of("workplan", FLUSH_HOUSE, "--compare", "machine-flush,mains-pressure-flush");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("machine-flush", "mains-pressure-flush", "Time on the job", "shut for the work");
        assertThat(run.out().lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    void theSameHouseOpenAndSealedStandsSideBySide() {
        Run run = Run.of("workplan", FLUSH_HOUSE, "--compare", "open-vented,sealed");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("open-vented", "sealed", "expansion vessel");
    }

    /** Read as the CommonMark specification says: every step is a numbered item with its own points under it, numbered on. */
    @Test
    void theMarkdownRendersAsNumberedSteps() {
        WorkPlan p = plan(new JobCheck(Shared.CATALOGUE).read(Path.of(FLUSH_HOUSE)), Optional.empty());
        List<ListItem> steps = new ArrayList<>();
        List<Integer> begins = new ArrayList<>();
        Parser.builder().build().parse(WorkPlanMarkdown.of(p, Shared.CATALOGUE)).accept(new AbstractVisitor() {
            @Override
            public void visit(OrderedList list) {
                begins.add(list.getMarkerStartNumber());
                for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
                    steps.add((ListItem) item);
                }
            }
        });
        assertThat(steps).hasSize(p.steps().size()).allMatch(item -> item.getLastChild() instanceof BulletList);
        assertThat(begins).as("one list a stage, numbered on").isSorted().doesNotHaveDuplicates()
                .hasSize((int) p.steps().stream().map(PlanStep::stage).distinct().count());
    }

    @Test
    void wordsOfTheHouseAreNotFormatting() {
        Job job = Shared.job("{\"job\": \"*_x_*\", \"findings\": {}}");
        assertThat(WorkPlanMarkdown.of(plan(job, Optional.empty()), Shared.CATALOGUE)).startsWith("# Work plan: \\*\\_x\\_\\*");
    }

    @Test
    void aMethodThatIsNoneIsOneSentenceWithTheNearest() {
        Run run = Run.of("workplan", FLUSH_HOUSE, "--method", "machine-flash");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("\"machine-flash\" is not a known method of cleansing; did you mean \"machine-flush\"?");
        assertThat(Run.of("workplan", FLUSH_HOUSE, "--compare", "machine-flush").err().lines()).hasSize(1);
    }

    @Test
    void aPlanComparedWithItselfIsTheSameTwice() {
        WorkPlan p = plan(Shared.allCases().get(0).job(), Optional.empty());
        assertThat(WorkPlanCompare.of(List.of("one", "one"), p, p, Shared.CATALOGUE, 78).lines()).isNotEmpty();
    }
}
