package neutralpoint.document;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
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
        CSVFormat format = format(text);
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

    /** A table read row by row, however long it is. */
    public static final class Rows {
        private final String name;
        private final CSVParser parser;
        private final Iterator<CSVRecord> records;

        private Rows(String name, CSVParser parser) {
            this.name = name;
            this.parser = parser;
            this.records = parser.iterator();
        }

        public List<String> headings() {
            return parser.getHeaderNames();
        }

        /** The next row; empty at the end of the table. Refuses a table of which the rest cannot be read. */
        public Optional<Row> next() {
            try {
                // The line of a record is the last it stands on; after the last record the parser is past it.
                if (!records.hasNext()) {
                    return Optional.empty();
                }
                CSVRecord record = records.next();
                return Optional.of(new Row(headings(), record, new Where(name, (int) parser.getCurrentLineNumber())));
            } catch (IllegalArgumentException | IllegalStateException | UncheckedIOException e) {
                throw new BadInput(new Where(name, (int) parser.getCurrentLineNumber()),
                        "from here on this cannot be read as a table: " + e.getMessage(), e);
            }
        }
    }

    /** One row as it was read. */
    public static final class Row {
        private final List<String> headings;
        private final CSVRecord record;
        private final Where where;

        private Row(List<String> headings, CSVRecord record, Where where) {
            this.headings = headings;
            this.record = record;
            this.where = where;
        }

        public int line() {
            return where.line();
        }

        /** Its cells by heading; refused when it has more cells than there are headings. */
        public Node.Fields fields() {
            return row(record, headings, where);
        }
    }

    /** Opens a table to be read row by row. */
    public static Rows rows(String name, InputStream in) {
        try {
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()), 1 << 16);
            reader.mark(1 << 16);
            if (reader.read() != 0xFEFF) {
                reader.reset();
            }
            reader.mark(1 << 16);
            String heading = reader.readLine();
            reader.reset();
            return new Rows(name, CSVParser.parse(reader, format(heading == null ? "" : heading)));
        } catch (IOException e) {
            throw new BadInput(name + " is no table in UTF-8 with a heading row (" + e.getMessage() + ").", e);
        } catch (IllegalArgumentException e) {
            throw new BadInput(name + ": this cannot be read as a table: " + e.getMessage(), e);
        }
    }

    private static CSVFormat format(String text) {
        return CSVFormat.DEFAULT.builder().setDelimiter(delimiter(text)).setHeader().setSkipHeaderRecord(true)
                .setTrim(true).setIgnoreEmptyLines(true).get();
    }

    /** Writes a table with commas. */
    public static String write(List<String> headings, List<List<String>> rows) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get())) {
            printer.printRecord(headings);
            for (List<String> row : rows) {
                printer.printRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
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
