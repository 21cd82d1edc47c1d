package neutralpoint.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Tables with a heading row, separated by commas, semicolons or tabs, as a spreadsheet saves or copies them. */
public final class Csv {
    private Csv() {}

    /**
     * A table.
     *
     * @param rows cells by heading; a row that is short leaves out its last cells
     */
    public record Table(List<String> headings, Where where, List<Node.Fields> rows) {}

    /**
     * @param name where the text is from, for messages
     */
    public static Table read(String name, String text) {
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(delimiter(text)).setHeader().setSkipHeaderRecord(true)
                .setTrim(true).setIgnoreEmptyLines(true).get();
        try (CSVParser parser = CSVParser.parse(text.startsWith("\uFEFF") ? text.substring(1) : text, format)) {
            List<Node.Fields> rows = new ArrayList<>();
            for (CSVRecord record : parser) {
                rows.add(row(record, parser.getHeaderNames(), new Where(name, (int) parser.getCurrentLineNumber())));
            }
            return new Table(parser.getHeaderNames(), new Where(name, 1), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw new BadInput(name + ": this cannot be read as a table: " + e.getMessage(), e);
        }
    }

    /** Whichever separator the heading row has most of. */
    private static String delimiter(String text) {
        String heading = text.lines().findFirst().orElse("");
        return Stream.of(",", ";", "\t").max((a, b) -> Long.compare(count(heading, a), count(heading, b))).orElse(",");
    }

    private static long count(String text, String separator) {
        return text.chars().filter(c -> c == separator.charAt(0)).count();
    }

    private static Node.Fields row(CSVRecord record, List<String> headings, Where where) {
        if (record.size() > headings.size()) {
            throw new BadInput(where, "this row has " + record.size() + " cells and the heading row only " + headings.size()
                    + "; put a cell that holds a comma in quotes.");
        }
        Node.Fields row = Node.noFields(where);
        for (int i = 0; i < record.size(); i++) {
            row.fields().put(headings.get(i), new Node.Text(where, record.get(i)));
            row.names().put(headings.get(i), where);
        }
        return row;
    }
}
