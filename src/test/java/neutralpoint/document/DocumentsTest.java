package neutralpoint.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Files as trees that know their lines: {@link Documents}, {@link Node}, {@link Where}, {@link Yaml}, {@link Json}, {@link Lookup},
 * {@link Nearest} and what a person is told by {@link BadInput}.
 */
class DocumentsTest {

    @Test
    void everyValueKnowsItsLine() {
        Node.Fields job = Documents.json("job.json", "{\"job\": \"A\",\n \"findings\":\n  {\"bleed-water\": \"black\"}}", 1).asFields();
        assertThat(job.get("findings").asFields().get("bleed-water").where()).hasToString("job.json, line 3");
    }

    @Test
    void yamlIsReadUnderTheSameRules() {
        Node.Fields entry = Documents.yaml("a.yaml", "- id: kettling\n  minutes: 3\n").asItems().items().get(0).asFields();
        assertThat(entry.text("id")).isEqualTo("kettling");
        assertThat(entry.get("minutes").asNumber()).isEqualTo(3);
        assertThat(entry.get("minutes").where().line()).isEqualTo(2);
    }

    @Test
    void whatCannotBeReadIsOneSentenceWithItsLine() {
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Documents.json("job.json", "{\"job\": \"A\",\n oops", 1))
                .withMessageContaining("job.json, line 2: this is not valid JSON");
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Documents.json("job.json", "{\"job\":", 1))
                .withMessageContaining("breaks off before it is complete");
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Documents.json("job.json", " ", 1))
                .withMessageContaining("the file is empty");
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Documents.decode("job.json", new byte[] {(byte) 0xff}))
                .withMessageContaining("not UTF-8");
    }

    @Test
    void aFieldThatIsNotKnownIsRefusedWithTheNearest() {
        assertThatExceptionOfType(BadInput.class)
                .isThrownBy(() -> Documents.json("job.json", "{\"hosue\": 1}", 1).asFields().only(java.util.Set.of("job", "house")))
                .withMessageContaining("\"hosue\"").withMessageContaining("did you mean \"house\"?");
    }

    @Test
    void anEmptyValueIsWrittenAsNull() {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("method", Optional.empty());
        fields.put("course", Optional.of("full-flush"));
        fields.put("bar", OptionalDouble.empty());
        fields.put("litres", OptionalDouble.of(1.5));
        fields.put("tools", List.of("bucket"));
        assertThat(Json.line(fields).strip())
                .isEqualTo("{\"method\":null,\"course\":\"full-flush\",\"bar\":null,\"litres\":1.5,\"tools\":[\"bucket\"]}");
    }

    @Test
    void theNearestNameIsOfferedOnlyWhereOneIsNear() {
        assertThat(Nearest.to("blak", List.of("black", "clear"))).contains("black");
        assertThat(Nearest.to("quince", List.of("black", "clear"))).isEmpty();
    }

    @Test
    void whatMustBeThereIsAFaultOfTheProgramWhereItIsNot() {
        assertThat(Lookup.known(Map.of("a", 1), "a")).isEqualTo(1);
        assertThatIllegalStateException().isThrownBy(() -> Lookup.known(Map.of("a", 1), "b")).withMessage("nothing is kept for b");
    }
}
