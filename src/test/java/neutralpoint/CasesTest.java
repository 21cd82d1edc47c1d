package neutralpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.Ranking;
import neutralpoint.catalogue.Caution;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every case comes out as expected: the case studies in invented houses, and fault-and-fix reports
 * published by others, encoded only from what each report says, its source in the file. Those that
 * do not come out right are listed with the reason, and the list must be exact: one that comes right
 * is taken off it.
 * Holds {@link neutralpoint.rulebase.Assessor}, {@link neutralpoint.rulebase.Assessment}, {@link neutralpoint.rulebase.LeadingCause} and {@link neutralpoint.rulebase.CourseChoice}.
 */
class CasesTest {
    private static final Map<String, Node> MISSES =
            Documents.readJson(Path.of("src/test/resources/known-misses.json")).asFields().fields();

    @TestFactory
    Stream<DynamicTest> eachComesOutRightOrIsAKnownMiss() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            Assessment a = Shared.assessed(c);
            int rank = c.rank(Ranking.own().causes().apply(a));
            boolean right = c.accepts(a) && (c.causes().isEmpty() || rank >= 1 && rank <= 3);
            assertThat(right).as("%s: course %s (wanted %s), true cause %s in place %d", c.id(), a.verdict().course().id(), c.courses(),
                    c.causes(), rank).isEqualTo(!MISSES.containsKey(c.id()));
        }));
    }

    @TestFactory
    Stream<DynamicTest> noneGetsUnsafeAdvice() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () ->
                assertThat(c.isUnsafe(Shared.assessed(c))).isFalse()));
    }

    @TestFactory
    Stream<DynamicTest> whatACaseNamesIsSaid() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> {
            Node.Fields expected = Documents.readJson(c.file()).asFields().get("expected").asFields();
            Assessment a = Shared.assessed(c);
            assertThat(a.cautions().stream().map(Caution::id)).containsAll(expected.texts("cautions"));
            assertThat(a.stops().stream().map(Assessment.StopFound::id)).containsAll(expected.texts("stops"));
        }));
    }

    @TestFactory
    Stream<DynamicTest> everyCaseFitsTheSchema() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("cases/case.schema.json")), InputFormat.JSON);
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () ->
                assertThat(schema.validate(Files.readString(c.file()), InputFormat.JSON)).isEmpty()));
    }

    @Test
    void everyKnownMissIsACaseAndEveryCaseIsNamedOnce() {
        List<String> ids = Shared.allCases().stream().map(CaseStudy::id).toList();
        assertThat(ids).doesNotHaveDuplicates().containsAll(MISSES.keySet());
        assertThat(Shared.allCases()).allSatisfy(c -> assertThat(c.file().getFileName()).hasToString(c.id() + ".json"));
    }

    @Test
    void everyCauseHasACase() {
        Set<String> causes = Shared.allCases().stream().flatMap(c -> c.causes().stream()).collect(Collectors.toCollection(HashSet::new));
        assertThat(causes).containsAll(Shared.CATALOGUE.causes().keySet());
    }
}
