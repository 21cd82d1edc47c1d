package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The assess command as a person or a script meets it: output, exit codes, and one sentence for bad input. */
@UsesStandardStreams
class AssessCommandTest {
    @TempDir
    Path folder;

    private Run assess(String json) throws Exception {
        Path file = folder.resolve("job.json");
        Files.writeString(file, json);
        return Run.of("assess", file.toString());
    }

    @Test
    void everyCasePrintsJsonOfTheSchemaWithItsExpectedCourse() throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(
                Files.readString(Path.of("src/main/resources/neutralpoint/assessment.schema.json")), InputFormat.JSON);
        List<Path> cases = Shared.teachingCases();
        String[] args = Stream.concat(Stream.of("assess", "--format", "json"), cases.stream().map(Path::toString))
                .toArray(String[]::new);
        Run run = Run.of(args);
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSameSizeAs(cases);
        for (int i = 0; i < lines.size(); i++) {
            assertThat(schema.validate(lines.get(i), InputFormat.JSON)).as(cases.get(i).toString()).isEmpty();
            assertThat(CaseStudy.read(cases.get(i), new JobCheck(Shared.CATALOGUE)).courses())
                    .contains(Documents.json("out", lines.get(i), 1).asFields().get("course").asFields().text("id"));
        }
        assertThat(run.code()).isEqualTo(1);
    }

    @TestFactory
    Stream<DynamicTest> everyStopCaseExitsOneWithAnActionFirst() {
        return Shared.teachingCases().stream()
                .filter(f -> Documents.readJson(f).asFields().get("expected").asFields().has("stops"))
                .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> {
                    Run run = Run.of("assess", f.toString());
                    assertThat(run.code()).isEqualTo(1);
                    assertThat(run.out().lines().toList().get(0)).startsWith("STOP: ");
                    assertThat(run.out().lines().toList().get(1)).isEqualTo("Now:");
                    assertThat(run.out().lines().toList().get(2)).startsWith("  1  ");
                }));
    }

    @Tag("slow")
    @Test
    void textFitsEightyColumns() {
        for (Path file : Shared.teachingCases()) {
            assertThat(Run.of("assess", file.toString()).out().lines()).allMatch(line -> line.length() <= 80);
        }
    }

    @Test
    void everyCautionIsPrintedOnRequest() {
        Run few = Run.of("assess", "cases/hawthorn-row.json");
        Run all = Run.of("assess", "--cautions", "cases/hawthorn-row.json");
        assertThat(few.out()).contains("more: \"assess --cautions\" prints all.").doesNotContain("Before you leave");
        assertThat(all.out()).contains("Before you touch anything", "While you work", "Before you leave").doesNotContain(" more: ");
    }

    @Test
    void jsonLinesGiveOneResultALine() {
        Run run = Run.reading("{\"job\":\"one\",\"findings\":{\"complaint\":[\"kettling\"]}}\n{\"job\":\"two\",\"findings\":{}}\n",
                "assess", "--format", "json", "-");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines()).hasSize(2).allMatch(line -> line.startsWith("{\"job\":"));
    }

    @TestFactory
    Stream<DynamicTest> badInputGetsOneSentence() {
        record Bad(String what, String json, String says) {}
        return Stream.of(
                new Bad("unknown finding", "{\"findings\":{\"bleed-watr\":\"black\"}}", "did you mean \"bleed-water\"?"),
                new Bad("unknown value", "{\n\"findings\":{\n\"bleed-water\":\"blak\"}}", "line 3: \"blak\" is not an answer"),
                new Bad("out of range", "{\"findings\":{\"pressure-cold-bar\":12}}", "between 0 and 6 bar"),
                new Bad("unknown unit", "{\"findings\":{\"pressure-cold-bar\":\"12 furlongs\"}}", "is not a unit known here"),
                new Bad("wrong unit", "{\"findings\":{\"pressure-cold-bar\":\"12 kW\"}}", "not in kW, which measures a power"),
                new Bad("number in words", "{\"findings\":{\"pressure-cold-bar\":\"low\"}}", "takes a number in bar"),
                new Bad("cut short", "{\"findings\":{\"bleed-water\":", "breaks off before it is complete"),
                new Bad("not JSON", "{\"findings\":{bleed-water}}", "not valid JSON"),
                new Bad("twice", "{\"findings\":{\"bleed-water\":\"black\",\"bleed-water\":\"clear\"}}", "stands twice"),
                new Bad("no findings", "{\"job\":\"x\"}", "\"findings\" is missing"),
                new Bad("unknown field", "{\"findings\":{},\"hous\":\"x\"}", "did you mean \"house\"?"),
                new Bad("nested", "{\"findings\":".repeat(500), "nested too deeply"),
                new Bad("empty", "", "is empty"))
                .map(bad -> DynamicTest.dynamicTest(bad.what(), () -> {
                    Run run = assess(bad.json());
                    assertThat(run.code()).isEqualTo(2);
                    assertThat(run.err()).contains(bad.says()).doesNotContain("Exception").doesNotContain("\tat ");
                    assertThat(run.err().lines()).hasSize(1);
                    assertThat(run.out()).isEmpty();
                }));
    }

    @Test
    void aFileOfTheWrongEncodingIsRefused() throws Exception {
        Path file = folder.resolve("latin.json");
        Files.write(file, new byte[] {'{', '"', (byte) 0xE9, '"', '}'});
        Run run = Run.of("assess", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("is not UTF-8 text");
    }

    @Test
    void aHugeFileIsRefusedUnread() throws Exception {
        Path file = folder.resolve("huge.json");
        try (var channel = Files.newByteChannel(file, java.nio.file.StandardOpenOption.CREATE_NEW,
                java.nio.file.StandardOpenOption.WRITE, java.nio.file.StandardOpenOption.SPARSE)) {
            channel.position(100_000_000).write(java.nio.ByteBuffer.wrap(new byte[] {'}'}));
        }
        Run run = Run.of("assess", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("larger than 2 MB");
    }

    @Test
    void aMissingFileIsNamed() {
        Run run = Run.of("assess", "no-such-job.json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("no-such-job.json does not exist");
    }

    @Test
    void theCatalogueCanBePrinted() {
        for (String section : List.of("findings", "causes", "courses", "cautions")) {
            Run run = Run.of("catalogue", section, "--format", "json");
            assertThat(run.code()).isZero();
            assertThat(Documents.json("out", run.out(), 1).asFields().fields()).isNotEmpty();
        }
    }
}
