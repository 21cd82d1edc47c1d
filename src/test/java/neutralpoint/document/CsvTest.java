package neutralpoint.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;

/** {@link Csv} as spreadsheets save it. */
class CsvTest {

    @Test
    void whicheverSeparatorTheHeadingHasIsTaken() {
        for (String separator : List.of(",", ";", "\t")) {
            Csv.Table table = Csv.read("survey.csv", "name,top\nhall,68\n".replace(",", separator));
            assertThat(table.headings()).containsExactly("name", "top");
            assertThat(table.rows().get(0).text("top")).isEqualTo("68");
        }
    }

    @Test
    void aRowKnowsItsLineAlsoBelowEmptyLinesAndAfterABreakWithinQuotes() {
        Csv.Table table = Csv.read("survey.csv", "\uFEFFname,note\n\nhall,\"cold,\nmostly\"\nden,\n");
        assertThat(table.rows()).extracting(r -> r.where().line()).containsExactly(4, 5);
        assertThat(table.rows().get(0).text("note")).isEqualTo("cold,\nmostly");
    }

    @Test
    void aRowThatIsTooLongIsRefusedWithItsLine() {
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Csv.read("survey.csv", "name,top\nhall,68\nden,68,5\n"))
                .withMessage("survey.csv, line 3: this row has 3 cells and the heading row only 2; put a cell that holds a comma in quotes.");
    }

    @Test
    void aQuoteThatIsNeverClosedIsToldByTheLineItBeganOn() {
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Csv.read("survey.csv", "name,top\nhall,\"68\nden,5\n"))
                .withMessageContaining("survey.csv").withMessageContaining("line 2");
    }

    @Test
    void whatIsWrittenReadsBack() {
        String text = Csv.write(List.of("name", "note"), List.of(List.of("hall", "cold, \"mostly\"")));
        assertThat(Csv.read("out.csv", text).rows().get(0).text("note")).isEqualTo("cold, \"mostly\"");
    }
}
