package neutralpoint.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/** Turns entries of the catalogue of emergencies into emergencies, and puts their steps into the lists that call for them. */
final class EmergencyReader {
    private static final Map<String, Emergency.Reopen> REOPEN = Map.of("now", Emergency.Reopen.NOW, "before-heat", Emergency.Reopen.BEFORE_HEAT);
    private static final String SHUT = "shut";
    private static final String CALL = "call";
    private static final Set<String> OF_REFERENCE = Set.of(SHUT, CALL, "when", "unless");

    private EmergencyReader() {}

    /** Reads an entry; it may call for the steps of one that stands before it. */
    static Emergency emergency(Node node, Map<String, Emergency> before) {
        Node.Fields f = node.asFields().only(Set.of("id", "say", "words", "tells", SHUT, CALL, "reopen", "source"));
        return new Emergency(CatalogueReader.id(f), f.text("say"), f.texts("words"), f.get("tells").asItems().items().stream().map(EmergencyReader::tells).toList(), acts(f, SHUT, before),
                acts(f, CALL, before), CatalogueReader.oneOf(f, "reopen", REOPEN), f.text("source"));
    }

    private static Emergency.Tells tells(Node node) {
        Node.Fields f = node.asFields().only(Set.of("danger", "by", "when", "unless"));
        return new Emergency.Tells(f.text("danger"), When.answers(f, "by"), When.of(f));
    }

    /** The steps of a list; where a line only says shut or call, those of that emergency. */
    static List<Danger.Act> acts(Node.Fields f, String name, Map<String, Emergency> known) {
        List<Danger.Act> acts = new ArrayList<>();
        for (Node line : f.find(name).map(n -> n.asItems().items()).orElse(List.of())) {
            if (line.asFields().has(SHUT) || line.asFields().has(CALL)) {
                acts.addAll(called(line.asFields().only(OF_REFERENCE), known));
            } else {
                acts.add(DangerReader.act(line));
            }
        }
        return List.copyOf(acts);
    }

    private static List<Danger.Act> called(Node.Fields line, Map<String, Emergency> known) {
        String list = line.has(SHUT) ? SHUT : CALL;
        String id = line.text(list);
        if (!known.containsKey(id)) {
            throw new BadInput(line.get(list).where(), "\"" + id + "\" is not a known emergency" + Nearest.hint(id, known.keySet()));
        }
        When also = When.of(line);
        List<Danger.Act> acts = list.equals(SHUT) ? known.get(id).shut() : known.get(id).call();
        return acts.stream().map(a -> new Danger.Act(a.says(), a.proves(), a.when().and(also))).toList();
    }

    /** Refuses the first word of an entry that is not catalogued, and a danger that does not go with the emergency that tells it. */
    static void check(Node.Fields f, Catalogue catalogue) {
        CatalogueFiles.refer(f, "source", catalogue.sources().keySet());
        List<Node> lines = new ArrayList<>(f.get("tells").asItems().items());
        List.of(SHUT, CALL).forEach(name -> f.find(name).ifPresent(n -> lines.addAll(n.asItems().items())));
        lines.forEach(line -> When.check(line.asFields(), catalogue));
        f.get("tells").asItems().items().forEach(told -> checkTold(told.asFields(), f.text("id"), catalogue));
        catalogue.dangers().values().stream().filter(d -> d.emergency().filter(f.text("id")::equals).isPresent())
                .filter(d -> catalogue.emergency(f.text("id")).tells().stream().noneMatch(t -> t.danger().equals(d.id()))).findFirst()
                .ifPresent(d -> {
                    throw new BadInput(f.get("tells").where(), "the danger \"" + d.id() + "\" says \"emergency: " + f.text("id")
                            + "\", and no line here tells it.");
                });
    }

    private static void checkTold(Node.Fields told, String emergency, Catalogue catalogue) {
        CatalogueFiles.refer(told, "danger", catalogue.dangers().keySet());
        if (catalogue.danger(told.text("danger")).emergency().filter(emergency::equals).isEmpty()) {
            throw new BadInput(told.get("danger").where(), "the danger \"" + told.text("danger") + "\" does not say \"emergency: " + emergency + "\".");
        }
        if (!When.of(told).isOfFindings()) {
            throw new BadInput(told.where(), "what an emergency tells hangs on findings alone; the system is weighed only afterwards.");
        }
        Node.Fields by = told.get("by").asFields();
        CatalogueFiles.checkAnswers(by, catalogue);
        by.names().forEach((finding, where) -> {
            if (catalogue.finding(finding).type() != AnswerType.SEVERAL_OF) {
                throw new BadInput(where, "\"" + finding + "\" takes one answer only; an emergency tells a finding that takes several.");
            }
        });
    }
}
