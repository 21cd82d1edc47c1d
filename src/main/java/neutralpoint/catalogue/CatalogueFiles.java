package neutralpoint.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Lookup;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/**
 * Loads the catalogue: from the YAML files people write, cross-checked with file and line, or from
 * the one file the build makes of them, which loads quickly.
 */
public final class CatalogueFiles {
    /** The compiled catalogue inside the program. */
    public static final String COMPILED = "/neutralpoint/catalogue.json";

    private static final String CARES = "handling-by-arrangement";
    private static final String PLAN_LISTS = "plan-lists";
    private static final String WORK_KINDS = "kinds-of-work";
    private static final List<String> SECTIONS = List.of("findings", "causes", "arrangements", "courses", "cautions", "sources",
            "methods", "handling", CARES, PLAN_LISTS, "closures", "emergencies", "dangers", WORK_KINDS, "competences");

    private CatalogueFiles() {}

    /** The catalogue built into the program. */
    public static Catalogue compiled() {
        try (InputStream in = CatalogueFiles.class.getResourceAsStream(COMPILED)) {
            if (in == null) {
                throw new IllegalStateException("the program was packaged without its catalogue");
            }
            Node.Fields all = Documents.json(COMPILED, in.readAllBytes()).asFields();
            Map<String, List<Node>> sections = new LinkedHashMap<>();
            SECTIONS.forEach(section -> sections.put(section, List.of(all.get(section))));
            return read(sections);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads and cross-checks {@code rules/catalogue}. */
    public static Catalogue fromFolder(Path folder) {
        Map<String, List<Node>> sections = nodes(folder);
        Catalogue catalogue = read(sections);
        crossCheck(sections, catalogue);
        return catalogue;
    }

    /** The catalogue's files as plain lists of entries, ready to be written as one compiled file. */
    public static Map<String, Object> compile(Path folder) {
        Map<String, Object> out = new LinkedHashMap<>();
        nodes(folder).forEach((section, files) -> {
            List<Object> entries = new ArrayList<>();
            for (Node file : files) {
                for (Node item : file.asItems().items()) {
                    entries.add(entry(section, item, subjectOf(file)));
                }
            }
            out.put(section, entries);
        });
        return out;
    }

    private static Object entry(String section, Node item, String subject) {
        Map<String, Object> fields = new LinkedHashMap<>();
        item.asFields().fields().forEach((name, value) -> fields.put(name, plain(value)));
        // The ways in which a danger can be told are for authors; the program at the door does without.
        fields.remove("ways");
        if (section.equals("causes")) {
            fields.put("subject", subject);
        }
        return fields;
    }

    private static Object plain(Node node) {
        if (node instanceof Node.Fields f) {
            Map<String, Object> out = new LinkedHashMap<>();
            f.fields().forEach((name, value) -> out.put(name, plain(value)));
            return out;
        }
        if (node instanceof Node.Items i) {
            return i.items().stream().map(CatalogueFiles::plain).toList();
        }
        if (node instanceof Node.Numeral n) {
            return n.value();
        }
        return node instanceof Node.Empty ? "" : node.asText();
    }

    private static Map<String, List<Node>> nodes(Path folder) {
        Map<String, List<Node>> sections = new LinkedHashMap<>();
        for (String section : SECTIONS) {
            List<Node> files = new ArrayList<>();
            for (Path file : yamlFiles(folder, section)) {
                files.add(Documents.readYaml(file));
            }
            sections.put(section, files);
        }
        return sections;
    }

    private static List<Path> yamlFiles(Path folder, String section) {
        Path single = folder.resolve(section + ".yaml");
        if (Files.exists(single)) {
            return List.of(single);
        }
        try (Stream<Path> files = Files.list(folder.resolve(section))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted(CatalogueFiles::doorstepFirst).toList();
        } catch (IOException e) {
            throw new BadInput(folder.resolve(section) + " could not be read; the catalogue keeps its " + section + " there.", e);
        }
    }

    /** Findings of the doorstep come first, so that lists follow the visit. */
    private static int doorstepFirst(Path a, Path b) {
        boolean first = a.endsWith("doorstep.yaml");
        boolean second = b.endsWith("doorstep.yaml");
        return first == second ? a.compareTo(b) : first ? -1 : 1;
    }

    private static String subjectOf(Node file) {
        return Path.of(file.where().file()).getFileName().toString().replace(".yaml", "");
    }

    private static Catalogue read(Map<String, List<Node>> sections) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        Map<String, Cause> causes = new LinkedHashMap<>();
        Map<String, ArrangementKind> arrangements = new LinkedHashMap<>();
        Map<String, Course> courses = new LinkedHashMap<>();
        Map<String, Caution> cautions = new LinkedHashMap<>();
        Map<String, Source> sources = new LinkedHashMap<>();
        Map<String, Method> methods = new LinkedHashMap<>();
        Map<String, Handling> handlings = new LinkedHashMap<>();
        Map<String, ArrangementHandling> cares = new LinkedHashMap<>();
        Map<String, ChecklistItem> planLines = new LinkedHashMap<>();
        Map<String, Closure> closures = new LinkedHashMap<>();
        Map<String, Emergency> emergencies = new LinkedHashMap<>();
        Map<String, Danger> dangers = new LinkedHashMap<>();
        Map<String, WorkKind> workKinds = new LinkedHashMap<>();
        Map<String, Competence> competences = new LinkedHashMap<>();
        Lookup.known(sections, "findings").forEach(f -> CatalogueReader.readAll(f, findings, CatalogueReader::finding));
        Lookup.known(sections, "causes").forEach(f ->
                CatalogueReader.readAll(f, causes, node -> CatalogueReader.cause(node, subjectOf(f))));
        Lookup.known(sections, "arrangements").forEach(f -> CatalogueReader.readAll(f, arrangements, CatalogueReader::arrangement));
        Lookup.known(sections, "courses").forEach(f -> CatalogueReader.readAll(f, courses, CatalogueReader::course));
        Lookup.known(sections, "cautions").forEach(f -> CatalogueReader.readAll(f, cautions, CatalogueReader::caution));
        Lookup.known(sections, "sources").forEach(f -> CatalogueReader.readAll(f, sources, CatalogueReader::source));
        Lookup.known(sections, "methods").forEach(f -> CatalogueReader.readAll(f, methods, CatalogueReader::method));
        Lookup.known(sections, "handling").forEach(f -> CatalogueReader.readAll(f, handlings, CatalogueReader::handling));
        Lookup.known(sections, CARES).forEach(f -> CatalogueReader.readAll(f, "for", cares, CatalogueReader::care));
        Lookup.known(sections, PLAN_LISTS).forEach(f -> CatalogueReader.readAll(f, planLines, CatalogueReader::planLine));
        Lookup.known(sections, "closures").forEach(f -> CatalogueReader.readAll(f, closures, ClosureReader::closure));
        Lookup.known(sections, "emergencies").forEach(f ->
                CatalogueReader.readAll(f, emergencies, node -> EmergencyReader.emergency(node, emergencies)));
        Lookup.known(sections, "dangers").forEach(f -> CatalogueReader.readAll(f, dangers, node -> DangerReader.danger(node, emergencies)));
        Lookup.known(sections, WORK_KINDS).forEach(f -> CatalogueReader.readAll(f, workKinds, CatalogueReader::workKind));
        Lookup.known(sections, "competences").forEach(f -> CatalogueReader.readAll(f, competences, CatalogueReader::competence));
        return new Catalogue(findings, causes, arrangements, courses, cautions, sources, methods, handlings, cares, planLines, closures,
                dangers, workKinds, competences, emergencies,
                RenameReader.read(entries(sections, "findings"), entries(sections, "causes"), entries(sections, "arrangements")));
    }

    private static void crossCheck(Map<String, List<Node>> sections, Catalogue catalogue) {
        for (Node.Fields f : entries(sections, "findings")) {
            refer(f, "caution", catalogue.cautions().keySet());
            refer(f, "only-on", catalogue.traits());
            f.find("ask-when").ifPresent(n -> checkAnswers(n.asFields(), catalogue));
        }
        for (Node.Fields f : entries(sections, "causes")) {
            refer(f, "course", catalogue.courses().keySet());
            refer(f, "only-on", catalogue.traits());
            refer(f, "answers", catalogue.finding(FindingId.COMPLAINT).optionIds());
            refer(f, "own-work", catalogue.courses().keySet());
            f.find("needs").ifPresent(n -> n.asItems().items().forEach(kind -> requireKnown(kind, "kind of work", catalogue.workKinds().keySet())));
        }
        for (Node.Fields f : entries(sections, "competences")) {
            refer(f, "source", catalogue.sources().keySet());
            checkShownBy(f.get("shown-by").asFields(), catalogue);
        }
        for (Node.Fields f : entries(sections, "methods")) {
            refer(f, "for", catalogue.courses().keySet());
            refer(f, "cautions", catalogue.cautions().keySet());
        }
        entries(sections, "cautions").forEach(f -> refer(f, "source", catalogue.sources().keySet()));
        entries(sections, "closures").forEach(f -> ClosureReader.check(f, catalogue));
        entries(sections, "emergencies").forEach(f -> EmergencyReader.check(f, catalogue));
        entries(sections, "dangers").forEach(f -> DangerReader.check(f, catalogue));
        for (Node.Fields f : entries(sections, PLAN_LISTS)) {
            refer(f, "source", catalogue.sources().keySet());
            f.find("when").map(Node::asFields).ifPresent(when -> {
                refer(when, "course", catalogue.courses().keySet());
                refer(when, "method", catalogue.methods().keySet());
                refer(when, "trait", catalogue.traits());
                refer(when, "without", catalogue.traits());
                refer(when, "cause", catalogue.causes().keySet());
                refer(when, "not-for", catalogue.causes().keySet());
                List.of("found", "unless").forEach(name -> when.find(name).ifPresent(n -> When.checkNamed(n.asFields(), catalogue)));
            });
        }
        Lookup.known(sections, CARES).forEach(f -> ArrangementHandlingCheck.check(f.asItems(), catalogue));
    }

    private static List<Node.Fields> entries(Map<String, List<Node>> sections, String section) {
        return Lookup.known(sections, section).stream().flatMap(f -> f.asItems().items().stream()).map(Node::asFields).toList();
    }

    static void refer(Node.Fields f, String name, java.util.Collection<String> valid) {
        f.find(name).ifPresent(value -> {
            List<Node> words = value instanceof Node.Items items ? items.items() : List.of(value);
            words.forEach(word -> requireKnown(word, name, valid));
        });
    }

    private static void requireKnown(Node word, String what, java.util.Collection<String> valid) {
        if (!valid.contains(word.asText())) {
            throw new BadInput(word.where(), "\"" + word.asText() + "\" is not a known " + what
                    + Nearest.hint(word.asText(), valid));
        }
    }

    private static void checkShownBy(Node.Fields shownBy, Catalogue catalogue) {
        shownBy.fields().forEach((id, answer) -> {
            requireFinding(shownBy, id, catalogue);
            requireKnown(answer, "answer of " + id, catalogue.finding(id).optionIds());
        });
    }

    private static void requireFinding(Node.Fields named, String id, Catalogue catalogue) {
        if (!catalogue.findings().containsKey(id)) {
            throw new BadInput(Lookup.known(named.names(), id), "\"" + id + "\" is not a known finding"
                    + Nearest.hint(id, catalogue.findings().keySet()));
        }
    }

    static void checkAnswers(Node.Fields when, Catalogue catalogue) {
        when.fields().forEach((id, answers) -> {
            requireFinding(when, id, catalogue);
            answers.asItems().items().forEach(answer ->
                    requireKnown(answer, "answer of " + id, catalogue.finding(id).optionIds()));
        });
    }
}
