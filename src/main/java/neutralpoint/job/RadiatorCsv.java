package neutralpoint.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import neutralpoint.document.BadInput;
import neutralpoint.document.Csv;
import neutralpoint.document.Documents;
import neutralpoint.document.Lookup;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/** A radiator survey from a spreadsheet. A unit may stand in the heading ("top °F") or beside a figure. */
public final class RadiatorCsv {
    private static final List<String> NEEDED = List.of("name", "top", "base", "flow tail", "return tail");

    private RadiatorCsv() {}

    /** Where a column of the sheet goes, and the unit its heading gives. */
    private record TargetColumn(RadiatorTable.Column column, String unit) {}

    /** Reads a file, refusing one that is missing, too large or not UTF-8. */
    public static List<Radiator> read(Path file) {
        return read(file.toString(), Documents.decode(file.toString(), Documents.readBytes(file)));
    }

    /**
     * @param name where the text is from, for messages
     */
    public static List<Radiator> read(String name, String text) {
        Csv.Table table = Csv.read(name, text);
        Map<String, TargetColumn> targets = new LinkedHashMap<>();
        for (String heading : table.headings()) {
            TargetColumn target = target(heading).orElseThrow(() -> new BadInput(table.where(), "\"" + heading
                    + "\" is not a column known here" + Nearest.hint(heading.toLowerCase(Locale.ROOT), titles())));
            if (targets.values().stream().anyMatch(t -> t.column().equals(target.column()))) {
                throw new BadInput(table.where(), "\"" + heading + "\" is a second column of " + target.column().title() + "; keep one of them.");
            }
            targets.put(heading, target);
        }
        List<String> missing = NEEDED.stream()
                .filter(n -> targets.values().stream().noneMatch(t -> t.column().title().equals(n))).toList();
        if (!missing.isEmpty()) {
            throw new BadInput(table.where(), "the table has no column " + String.join(", ", missing)
                    + "; a survey needs " + String.join(", ", NEEDED) + ".");
        }
        List<Node> rows = new ArrayList<>();
        table.rows().stream().filter(RadiatorCsv::isFilled).forEach(row -> rows.add(row(row, targets)));
        return RadiatorTable.read(rows);
    }

    /** Spreadsheets leave rows of bare separators under a table. */
    private static boolean isFilled(Node.Fields cells) {
        return cells.fields().values().stream().anyMatch(cell -> !cell.asText().isBlank());
    }

    private static Node row(Node.Fields cells, Map<String, TargetColumn> targets) {
        Node.Fields row = Node.noFields(cells.where());
        cells.fields().forEach((heading, cell) -> {
            TargetColumn target = Lookup.known(targets, heading);
            String text = cell.asText();
            boolean bare = text.matches("[-+]?\\d+([.,]\\d+)?");
            row.fields().put(target.column().field(), bare ? new Node.Text(cell.where(), text + " " + target.unit()) : cell);
            row.names().put(target.column().field(), cell.where());
        });
        return row;
    }

    /** A heading is a column's title or field, with a unit after it or not. */
    private static Optional<TargetColumn> target(String heading) {
        String words = heading.toLowerCase(Locale.ROOT).replaceAll("[_()\\[\\]/,]", " ").replaceAll("\\s+", " ").strip();
        return RadiatorTable.COLUMNS.stream().flatMap(c -> target(c, words).stream()).findFirst();
    }

    private static Optional<TargetColumn> target(RadiatorTable.Column c, String words) {
        if (words.equals(c.title()) || words.equals(c.field().toLowerCase(Locale.ROOT))) {
            return Optional.of(new TargetColumn(c, c.unit()));
        }
        String unit = words.startsWith(c.title() + " ") ? words.substring(c.title().length() + 1) : "";
        return Units.convert(0, unit, c.unit()).isPresent() ? Optional.of(new TargetColumn(c, unit)) : Optional.empty();
    }

    private static List<String> titles() {
        return RadiatorTable.COLUMNS.stream().map(RadiatorTable.Column::title).toList();
    }
}
