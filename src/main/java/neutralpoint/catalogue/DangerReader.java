package neutralpoint.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/** Turns entries of the catalogue of dangers into dangers, and holds what they name against the rest. */
final class DangerReader {
    private static final Set<String> SPEEDS = Set.of("at-once", "within-hours", "in-days");
    private static final Map<String, Danger.HeatMeanwhile> HEAT = Arrays.stream(Danger.HeatMeanwhile.values())
            .collect(Collectors.toMap(Danger.HeatMeanwhile::word, Function.identity()));
    private static final Set<String> OF_ACT = Set.of("do", "done", "when", "unless");
    private static final Set<String> OF_CLEARING = Set.of("do", "done", "tools", "minutes", "first", "when", "unless");

    private DangerReader() {}

    static Danger danger(Node node, Map<String, Emergency> emergencies) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "means", "hurts", "speed", "house-is-left", "now", "never", "who", "clearing", "answers", "over", "ask",
                "heat", "cautions", "emergency", "source", "ways"));
        Node.Fields heat = f.get("heat").asFields().only(Set.of("meanwhile", "sources"));
        return new Danger(CatalogueReader.id(f), f.text("title"), f.text("means"), f.text("hurts"),
                CatalogueReader.oneOf(f, "speed", SPEEDS), f.findText("house-is-left").orElse("no").equals("yes"),
                now(f, emergencies), f.texts("never"),
                f.text("who"), items(f, "clearing").stream().map(DangerReader::clearing).toList(),
                f.texts("answers"), f.text("over"), f.texts("ask"),
                new Danger.Heat(CatalogueReader.oneOf(heat, "meanwhile", HEAT), heat.texts("sources")),
                f.texts("cautions"), f.findText("emergency"), f.text("source"), items(f, "ways").stream().map(DangerReader::way).toList());
    }

    private static List<Danger.Act> now(Node.Fields f, Map<String, Emergency> emergencies) {
        some(f, "now");
        return EmergencyReader.acts(f, "now", emergencies);
    }

    static Danger.Act act(Node node) {
        Node.Fields f = node.asFields().only(OF_ACT);
        return new Danger.Act(f.text("do"), f.text("done"), When.of(f));
    }

    private static Danger.Clearing clearing(Node node) {
        Node.Fields f = node.asFields().only(OF_CLEARING);
        return new Danger.Clearing(f.text("do"), f.text("done"), f.findText("tools").orElse("none"), f.get("minutes").asNumber(),
                f.find("first").map(n -> n.asText().equals("yes")).orElse(false), When.of(f));
    }

    private static Danger.Way way(Node node) {
        Node.Fields f = node.asFields().only(Set.of("by", "job"));
        return new Danger.Way(f.text("by"), f.get("job"));
    }

    private static List<Node> items(Node.Fields f, String name) {
        return f.find(name).map(n -> n.asItems().items()).orElse(List.of());
    }

    private static List<Node> some(Node.Fields f, String name) {
        List<Node> items = items(f, name);
        if (items.isEmpty()) {
            throw new BadInput(f.where(), "the danger \"" + f.text("id") + "\" needs \"" + name + "\" with at least one line.");
        }
        return items;
    }

    /** Refuses the first finding, answer, trait, caution or source that is not catalogued. */
    static void check(Node.Fields f, Catalogue catalogue) {
        some(f, "ways");
        CatalogueFiles.refer(f, "source", catalogue.sources().keySet());
        CatalogueFiles.refer(f, "cautions", catalogue.cautions().keySet());
        CatalogueFiles.refer(f, "answers", catalogue.causes().keySet());
        CatalogueFiles.refer(f, "ask", catalogue.findings().keySet());
        List<Node> lines = new ArrayList<>(items(f, "now"));
        lines.addAll(items(f, "clearing"));
        for (Node line : lines) {
            When.check(line.asFields(), catalogue);
        }
        CatalogueFiles.refer(f, "emergency", catalogue.emergencies().keySet());
    }
}
