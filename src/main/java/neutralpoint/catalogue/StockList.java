package neutralpoint.catalogue;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.document.BadInput;
import neutralpoint.document.Csv;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;
import neutralpoint.document.Where;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;

/**
 * Many homes as a table, one a row: a column {@code job}, perhaps a column {@code house}, and a column for each finding,
 * named by its id. An empty cell was not asked. Several answers to one finding are parted by semicolons; answers for
 * each radiator are written {@code lounge=cold; hall=hot}.
 */
public final class StockList {
    private static final String JOB = "job";
    private static final String HOUSE = "house";

    private final Catalogue catalogue;
    private final JobCheck check;

    public StockList(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.check = new JobCheck(catalogue);
    }

    /** Reads the rows of a table one after another; the headings are checked at once. */
    public Csv.Rows rows(String name, InputStream in) {
        Csv.Rows rows = Csv.rows(name, in);
        checkHeadings(rows.headings(), new Where(name, 1));
        return rows;
    }

    /** Refuses a heading row that lacks the job or names something that is not catalogued. */
    private void checkHeadings(List<String> headings, Where where) {
        if (!headings.contains(JOB)) {
            throw new BadInput(where, "the table has no column \"" + JOB + "\"; each home needs a name there.");
        }
        List<String> known = Stream.concat(Stream.of(JOB, HOUSE), catalogue.findings().keySet().stream()).toList();
        headings.stream().filter(h -> !known.contains(h)).findFirst().ifPresent(h -> {
            throw new BadInput(where, "\"" + h + "\" is not a column known here" + Nearest.hint(h, known));
        });
    }

    /** The home of one row; what is refused is named with its column and line. */
    public Job job(Node.Fields row) {
        Map<String, Node> cells = new LinkedHashMap<>();
        row.fields().forEach((heading, cell) -> {
            if (!cell.asText().isBlank()) {
                cells.put(heading, cell);
            }
        });
        Node name = Optional.ofNullable(cells.remove(JOB)).orElseThrow(() -> new BadInput(column(row.where(), JOB),
                "the cell is empty; each home needs a name there."));
        Optional<Node> house = Optional.ofNullable(cells.remove(HOUSE));
        Node.Fields findings = Node.noFields(row.where());
        cells.forEach((finding, cell) -> {
            Where where = column(row.where(), finding);
            findings.names().put(finding, where);
            findings.fields().put(finding, value(catalogue.finding(finding), cell.asText(), where));
        });
        return check.check(new JobFile.UncheckedJob(name.asText(), house.map(Node::asText).orElse(""), List.of(), findings,
                Optional.empty(), List.of(), List.of()));
    }

    private static Node value(Finding finding, String cell, Where where) {
        if (cell.equals("not-checked")) {
            return new Node.Text(where, cell);
        }
        return switch (finding.type()) {
            case SEVERAL_OF -> new Node.Items(where, parts(cell).map(p -> (Node) new Node.Text(where, p)).toList());
            case PER_RADIATOR -> byRadiator(cell, where);
            default -> new Node.Text(where, cell);
        };
    }

    private static Node byRadiator(String cell, Where where) {
        Node.Fields radiators = Node.noFields(where);
        for (String part : parts(cell).toList()) {
            List<String> pair = Stream.of(part.split("=", 2)).map(String::strip).toList();
            if (pair.size() < 2) {
                throw new BadInput(where, "\"" + part + "\" names no radiator; write lounge=cold; hall=hot.");
            }
            radiators.fields().put(pair.get(0), new Node.Text(where, pair.get(1)));
            radiators.names().put(pair.get(0), where);
        }
        return radiators;
    }

    private static Stream<String> parts(String cell) {
        return Stream.of(cell.split(";")).map(String::strip).filter(p -> !p.isEmpty());
    }

    private static Where column(Where row, String heading) {
        return new Where(row.file() + ", column " + heading, row.line());
    }
}
