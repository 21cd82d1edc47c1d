package neutralpoint.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;
import neutralpoint.document.Where;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorTable;

/**
 * A row of the table of radiators as it was typed: cells in the order of the usual columns, and others as name=value.
 *
 * @param cells field to text; blank to clear what the row held before
 */
record TypedRow(String name, Map<String, String> cells, Where where) {
    private static final List<String> TEMPERATURES = List.of("topCelsius", "baseCelsius", "flowTailCelsius", "returnTailCelsius");
    private static final String SHAPE = "a row is name, floor, top, base, flow tail, return tail, and others as in run=9";

    /** Reads a line with commas, or with the tabs or semicolons of a spreadsheet. */
    static TypedRow of(String line, Where where) {
        String separator = line.contains("\t") ? "\t" : line.contains(";") ? ";" : ",";
        List<String> inOrder = new ArrayList<>();
        Map<String, String> cells = new LinkedHashMap<>();
        for (String cell : line.split(separator, -1)) {
            if (cell.contains("=")) {
                String[] pair = cell.split("=", 2);
                put(cells, field(pair[0].strip(), where), pair[1].strip(), where);
            } else {
                inOrder.add(cell.strip());
            }
        }
        if (inOrder.isEmpty() || inOrder.get(0).isEmpty()) {
            throw new BadInput(where, "the name comes first; " + SHAPE + ".");
        }
        if (inOrder.size() == 1 && cells.isEmpty()) {
            throw new BadInput(where, "nothing stands beside \"" + inOrder.get(0) + "\"; " + SHAPE + ".");
        }
        inOrder(inOrder, cells, where);
        return new TypedRow(inOrder.get(0), cells, where);
    }

    private static void inOrder(List<String> typed, Map<String, String> cells, Where where) {
        List<String> fields = new ArrayList<>(TEMPERATURES);
        // The floor may be left out: no floor begins with a figure.
        if (typed.size() > 1 && !typed.get(1).matches("[-+]?\\d.*")) {
            fields.add(0, "floor");
        }
        if (typed.size() - 1 > fields.size()) {
            throw new BadInput(where, typed.size() + " values are more than a row has; " + SHAPE + ".");
        }
        for (int i = 1; i < typed.size(); i++) {
            String field = fields.get(i - 1);
            if (!typed.get(i).isEmpty()) {
                put(cells, field, typed.get(i), where);
            }
            if (TEMPERATURES.contains(field)) {
                // Figures are read together: one that is left out is not carried over from an earlier reading.
                TEMPERATURES.forEach(t -> cells.putIfAbsent(t, ""));
            }
        }
    }

    private static void put(Map<String, String> cells, String field, String text, Where where) {
        String before = cells.put(field, text);
        if (before != null && !before.isEmpty()) {
            throw new BadInput(where, "\"" + title(field) + "\" is given twice; keep one of them.");
        }
    }

    /** The column that is named, or the only one that begins so. */
    private static String field(String typed, Where where) {
        String words = typed.toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ");
        List<RadiatorTable.Column> fits = RadiatorTable.COLUMNS.stream().filter(c -> !c.field().equals("name")).toList();
        List<String> titles = fits.stream().map(RadiatorTable.Column::title).toList();
        fits = fits.stream().filter(c -> !words.isEmpty() && c.title().startsWith(words)).toList();
        if (fits.size() != 1) {
            throw new BadInput(where, "\"" + typed + "\" is not a column known here" + Nearest.hint(words, titles));
        }
        return fits.get(0).field();
    }

    private static String title(String field) {
        return RadiatorTable.COLUMNS.stream().filter(c -> c.field().equals(field)).findFirst().orElseThrow().title();
    }

    /** The row as the table reads it, with what the row of this name held before where nothing was typed. */
    Node over(Optional<Radiator> before) {
        Node.Fields row = Node.noFields(where);
        before.ifPresent(r -> RadiatorTable.fields(r).forEach((field, value) -> put(row, field, value.toString())));
        cells.forEach((field, text) -> put(row, field, text));
        if (before.isEmpty()) {
            put(row, "name", name);
        }
        return row;
    }

    private static void put(Node.Fields row, String field, String text) {
        row.fields().put(field, new Node.Text(row.where(), text));
        row.names().put(field, row.where());
    }
}
