package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.catalogue.Danger;
import neutralpoint.report.text.Wrap;

/** The matrix of dangers as people read it and as programs do. */
public final class DangerMatrixText {
    private static final int WIDTH = 100;
    private static final String LABEL = "    %-11s";
    private static final String REST = " ".repeat(15);
    private static final int GAP = 2;
    private static final String NO_WAYS = "How each danger is told stands in rules/catalogue/dangers.yaml and is not packaged with the program; "
            + "run this from the project's own folder, or give --rules DIR.";

    private DangerMatrixText() {}

    /** First the matrix of counts, then each danger in words, then what no danger uses. */
    public static List<String> lines(DangerMatrix matrix) {
        List<String> out = new ArrayList<>();
        if (matrix.knowsWays()) {
            counts(matrix, out);
        } else {
            out.add(Wrap.to(WIDTH, "", "", NO_WAYS));
        }
        matrix.rows().forEach(row -> entry(row, out));
        if (matrix.knowsWays()) {
            out.add("");
            matrix.untold().forEach(says -> out.add(Wrap.to(WIDTH, "", "  ", says)));
            matrix.unusedRedLines().forEach(option -> out.add("No danger is told by the option \"" + option + "\" of red-lines."));
            if (matrix.unusedRedLines().isEmpty()) {
                out.add("Every option of red-lines is told by a danger.");
            }
        }
        return out;
    }

    private static void counts(DangerMatrix matrix, List<String> out) {
        int name = matrix.rows().stream().mapToInt(r -> r.danger().id().length()).max().orElse(0) + GAP;
        out.add("In how many ways each danger is told, the worst first:");
        out.add("");
        out.add(" ".repeat(name) + "heat meanwhile" + matrix.tellings().stream().map(t -> " ".repeat(GAP) + t).collect(Collectors.joining()));
        for (DangerMatrix.DangerRow row : matrix.rows()) {
            out.add(String.format("%-" + name + "s%-14s", row.danger().id(), row.danger().heat().meanwhile().word())
                    + matrix.tellings().stream().map(t -> String.format("%" + (t.length() + GAP) + "s", count(row, t))).collect(Collectors.joining()));
        }
    }

    private static String count(DangerMatrix.DangerRow row, String telling) {
        long count = row.count(telling);
        return count == 0 ? "-" : Long.toString(count);
    }

    private static void entry(DangerMatrix.DangerRow row, List<String> out) {
        Danger d = row.danger();
        out.add("");
        out.add(d.id() + ": " + d.title());
        put("heat", List.of(d.heat().meanwhile().word() + ": " + String.join(", ", d.heat().sources())), out);
        put("who comes", List.of(d.who()), out);
        List<String> clears = clears(d);
        put("clears it", clears.isEmpty() ? List.of("nothing on site") : clears, out);
        put("over when", List.of(d.over()), out);
        d.emergency().ifPresent(word -> put("emergency", List.of(word), out));
        put("told by", row.told().stream().map(t -> t.by() + " (" + t.job() + ")").toList(), out);
    }

    /** What is done on site, then the causes whose repair clears it. */
    private static List<String> clears(Danger danger) {
        return Stream.concat(danger.clearing().stream().map(Danger.Clearing::says).distinct(),
                danger.answers().stream().map(cause -> "The repair of " + cause + ".")).toList();
    }

    private static void put(String label, List<String> values, List<String> out) {
        String first = String.format(LABEL, label);
        for (String value : values) {
            out.add(Wrap.to(WIDTH, first, REST, value));
            first = REST;
        }
    }

    /** The same for programs; {@code ways-known} is false where the ways are not at hand. */
    public static Map<String, Object> json(DangerMatrix matrix) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("ways-known", matrix.knowsWays());
        out.put("dangers", matrix.rows().stream().map(DangerMatrixText::json).toList());
        out.put("red-lines-no-danger-uses", matrix.knowsWays() ? matrix.unusedRedLines() : List.of());
        out.put("untold", matrix.untold());
        return out;
    }

    private static Map<String, Object> json(DangerMatrix.DangerRow row) {
        Danger d = row.danger();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", d.id());
        out.put("title", d.title());
        out.put("heat-meanwhile", d.heat().meanwhile().word());
        out.put("heat-sources", d.heat().sources());
        out.put("who", d.who());
        out.put("clears", clears(d));
        out.put("over", d.over());
        d.emergency().ifPresent(word -> out.put("emergency", word));
        out.put("ways", row.told().stream().map(t -> Map.of("by", t.by(), "telling", t.telling(), "job", t.job())).toList());
        return out;
    }
}
