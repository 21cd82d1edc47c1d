package neutralpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import neutralpoint.catalogue.Caution;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every case study gives the verdict its author expects. */
class CasesTest {

    @TestFactory
    Stream<DynamicTest> everyCaseGivesItsVerdict() {
        return Shared.files("cases", ".json").stream().map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> judge(f)));
    }

    @TestFactory
    Stream<DynamicTest> everyCaseFitsTheSchema() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("cases/case.schema.json")), InputFormat.JSON);
        return Stream.concat(Shared.files("cases", ".json").stream(), Shared.files("src/test/resources/published", ".json").stream())
                .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () ->
                        assertThat(schema.validate(Files.readString(f), InputFormat.JSON)).isEmpty()));
    }

    private static void judge(Path file) {
        Node.Fields expected = Documents.readJson(file).asFields().get("expected").asFields();
        CaseScores score = CaseScores.of(file);
        Assessment a = score.assessment();
        assertThat(score.courseAccepted()).as(score.line()).isTrue();
        assertThat(score.causeInTopThree()).as(score.line()).isTrue();
        assertThat(a.cautions().stream().map(Caution::id)).containsAll(expected.texts("cautions"));
        assertThat(expected.texts("neverCourses")).doesNotContain(a.verdict().course().id());
        assertThat(a.stops().stream().map(Assessment.StopFound::id)).containsAll(expected.texts("stops"));
        assertThat(a.stops()).allSatisfy(s -> assertThat(s.action()).isNotBlank());
    }
}
