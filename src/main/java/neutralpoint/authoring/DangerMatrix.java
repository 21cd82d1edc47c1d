package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.Node;

/** Every danger with every way in which it is told, and what could tell of danger and is used by none. */
public final class DangerMatrix {
    /** Lists of a job file that may tell of danger. */
    private static final List<String> LISTS = List.of("radiators", "gauge", "emergencies");

    private final Catalogue catalogue;
    private final List<RuleText> stops;

    /**
     * @param rules the rules as written; without them, and without a catalogue read from its folder, ways are not known
     */
    public DangerMatrix(Catalogue catalogue, List<RuleText> rules) {
        this.catalogue = catalogue;
        this.stops = rules.stream().filter(r -> r.folder().equals("stop")).toList();
    }

    /** Each danger, the worst first, as fields. */
    public List<Map<String, Object>> dangers() {
        return catalogue.dangers().values().stream().map(this::row).toList();
    }

    private Map<String, Object> row(Danger d) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", d.id());
        row.put("title", d.title());
        row.put("heatMeanwhile", d.heat().meanwhile().word());
        row.put("who", d.who());
        row.put("clears", clears(d));
        row.put("over", d.over());
        d.emergency().ifPresent(e -> row.put("emergency", e));
        if (!d.ways().isEmpty()) {
            row.put("ways", d.ways().stream().map(DangerMatrix::way).toList());
        }
        return row;
    }

    private static Map<String, Object> way(Danger.Way way) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("by", way.by());
        fields.put("tells", told(way.job()));
        return fields;
    }

    /** What is done on site, and whether a rule leaves it to somebody else. */
    private List<String> clears(Danger d) {
        List<String> clears = new ArrayList<>();
        d.clearing().forEach(c -> clears.add(c.says()));
        if (stops.stream().anyMatch(r -> r.conclusion().call().equals("Stop.refer") && r.conclusion().ids().get(0).equals(d.id()))
                || d.clearing().isEmpty()) {
            clears.add("referred: " + d.who());
        }
        return clears;
    }

    /** The dangers as text, one paragraph each. */
    public String text() {
        return catalogue.dangers().values().stream().map(this::paragraph).collect(Collectors.joining("\n"));
    }

    private String paragraph(Danger d) {
        StringBuilder out = new StringBuilder(d.id() + ": " + d.title() + "\n");
        out.append("  heat meanwhile  ").append(d.heat().meanwhile().word()).append(": ").append(String.join(", ", d.heat().sources())).append('\n');
        out.append("  who must come   ").append(d.who()).append('\n');
        clears(d).forEach(c -> out.append("  what clears it  ").append(c).append('\n'));
        out.append("  over when       ").append(d.over()).append('\n');
        d.ways().forEach(w -> out.append("  told by         ").append(w.by()).append(": ").append(told(w.job())).append('\n'));
        return out.toString();
    }

    /** What might tell of a danger and is used by none, a line each; for a catalogue that was read from its folder. */
    public List<String> untold() {
        List<Node.Fields> jobs = catalogue.dangers().values().stream().flatMap(d -> d.ways().stream()).map(w -> w.job().asFields()).toList();
        Set<String> found = jobs.stream().flatMap(j -> j.find("findings").stream()).flatMap(f -> f.asFields().fields().keySet().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> lookedAt = stops.stream().flatMap(r -> RuleIds.findings(r).stream()).collect(Collectors.toCollection(LinkedHashSet::new));
        List<String> untold = new ArrayList<>();
        redLines(jobs).forEach(id -> untold.add("red line " + id));
        measured().stream().filter(id -> !found.contains(id)).forEach(id -> untold.add("number " + id + ", though a stop rule holds it against a limit"));
        LISTS.stream().filter(list -> jobs.stream().noneMatch(j -> j.has(list))).forEach(list -> untold.add("list " + list));
        catalogue.findings().values().stream().filter(Finding::workedOut).map(Finding::id)
                .filter(id -> !lookedAt.contains(id) && !found.contains(id)).forEach(id -> untold.add("sum " + id));
        return untold;
    }

    private List<String> redLines(List<Node.Fields> jobs) {
        Set<String> ticked = jobs.stream().flatMap(j -> j.find("findings").stream()).flatMap(f -> f.asFields().find(Catalogue.RED_LINES).stream())
                .flatMap(n -> n.asTexts().stream()).collect(Collectors.toSet());
        return catalogue.finding(Catalogue.RED_LINES).optionIds().stream().filter(id -> !ticked.contains(id)).toList();
    }

    /** Numbers that a stop rule holds against a limit. */
    private Set<String> measured() {
        return stops.stream().flatMap(r -> r.patterns().stream()).filter(p -> p.fact().equals("Measured"))
                .flatMap(p -> RuleIds.of(p, "finding").stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A job file in one line, without fields that hold nothing. */
    private static String told(Node job) {
        return job.asFields().fields().entrySet().stream().filter(e -> !inWords(e.getValue()).isEmpty())
                .map(e -> e.getKey().equals("findings") ? inWords(e.getValue()) : e.getKey() + " " + inWords(e.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String inWords(Node node) {
        if (node instanceof Node.Fields f) {
            return f.fields().entrySet().stream().map(e -> e.getKey() + " " + inWords(e.getValue())).collect(Collectors.joining(", "));
        }
        return node instanceof Node.Items i ? i.items().stream().map(DangerMatrix::inWords).collect(Collectors.joining(" + ")) : node.asText();
    }
}
