package neutralpoint.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.document.BadInput;
import neutralpoint.document.Lookup;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/** Turns catalogue files into the typed catalogue; the shape of every entry is checked here. */
final class CatalogueReader {
    private static final Map<String, Integer> PRIORS =
            Map.of("common", -8, "ordinary", -12, "uncommon", -16, "rare", -20);
    private static final Set<String> PLACES = Set.of("doorstep", "boiler", "pump", "airing-cupboard", "loft",
            "radiators", "water", "instruments", "outside");
    private static final Set<String> INTRUSIVE = Set.of("hands-off", "hands-on", "opens-water", "takes-apart");
    private static final String ID = "[a-z0-9]+(-[a-z0-9]+)*";

    private CatalogueReader() {}

    static Finding finding(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "ask", "how", "answer", "options", "unit", "range", "place",
                "minutes", "tools", "intrusive", "caution", "only-on", "ask-when", "family", "words", "worked-out", "not-below", "was"));
        String id = id(f);
        AnswerType type = AnswerType.of(oneOf(f, "answer", AnswerType.words()));
        List<Double> range = f.find("range").map(n -> n.asItems().items().stream().map(Node::asNumber).toList())
                .orElse(List.of());
        if (type == AnswerType.NUMBER && (range.size() != 2 || !f.has("unit"))) {
            throw new BadInput(f.where(), "the number \"" + id + "\" needs a unit and a range of two numbers.");
        }
        return new Finding(id, f.text("ask"), f.text("how"), type, options(f, type), f.findText("unit").orElse(""),
                range.isEmpty() ? 0 : range.get(0), range.isEmpty() ? 0 : range.get(1),
                oneOf(f, "place", PLACES), (int) f.get("minutes").asNumber(), f.texts("tools"),
                oneOf(f, "intrusive", INTRUSIVE), cautions(f), f.texts("only-on"), askWhen(f),
                f.findText("family").orElse(id), f.texts("words"), f.findText("worked-out").orElse("no").equals("yes"),
                f.findText("not-below"));
    }

    /** One caution to read first, or several. */
    private static List<String> cautions(Node.Fields f) {
        return f.find("caution").map(n -> n instanceof Node.Items ? n.asTexts() : List.of(n.asText())).orElse(List.of());
    }

    private static List<Option> options(Node.Fields f, AnswerType type) {
        if (type == AnswerType.YES_NO) {
            return List.of(new Option("yes", "yes", 1), new Option("no", "no", 1));
        }
        if (type == AnswerType.NUMBER) {
            return List.of();
        }
        List<Option> options = new ArrayList<>();
        for (Node item : f.get("options").asItems().items()) {
            Node.Fields o = item.asFields().only(Set.of("id", "say", "usual", "was"));
            options.add(new Option(id(o), o.text("say"), o.find("usual").map(Node::asNumber).orElse(1.0)));
        }
        return List.copyOf(options);
    }

    private static Map<String, List<String>> askWhen(Node.Fields f) {
        Map<String, List<String>> when = new LinkedHashMap<>();
        f.find("ask-when").ifPresent(n -> n.asFields().fields().forEach((id, answers) ->
                when.put(id, answers.asTexts())));
        return when;
    }

    static Cause cause(Node node, String subject) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "said-as", "means", "prior", "only-on", "course", "phase", "work",
                "answers", "no-deciding-test", "own-work", "needs", "subject", "was"));
        return new Cause(id(f), f.text("title"), f.findText("said-as").orElseGet(() -> inSentence(f.text("title"))), f.text("means"), prior(f), f.texts("only-on"), f.text("course"),
                f.findText("own-work"), f.texts("needs"), Phase.of(oneOf(f, "phase", Phase.words())), f.text("work"), f.texts("answers"),
                f.findText("no-deciding-test").orElse(""), f.findText("subject").orElse(subject));
    }

    private static String inSentence(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    static ArrangementKind arrangement(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "kind", "known-by", "means", "prior", "traits", "order", "was"));
        boolean feature = oneOf(f, "kind", Set.of("system", "feature")).equals("feature");
        return new ArrangementKind(id(f), f.text("title"), feature, f.text("known-by"), f.text("means"), prior(f), f.texts("traits"),
                feature ? noOrder(f) : order(f));
    }

    private static List<Component> noOrder(Node.Fields f) {
        f.find("order").ifPresent(n -> {
            throw new BadInput(n.where(), "only a whole system has an \"order\" of its parts; \"" + id(f) + "\" is a feature.");
        });
        return List.of();
    }

    private static List<Component> order(Node.Fields f) {
        List<Component> order = allOf(f, "order", Component.words()).stream().map(Component::of).toList();
        boolean oneKindOfTee = !order.contains(Component.COMBINED_TEE)
                || !order.contains(Component.FEED_TEE) && !order.contains(Component.VENT_TEE);
        if (order.isEmpty() || order.get(0) != Component.BOILER || Set.copyOf(order).size() < order.size() || !oneKindOfTee) {
            throw new BadInput(f.get("order").where(), "\"order\" begins with the boiler, names each part once, and has a combined tee or "
                    + "separate tees, not both.");
        }
        return order;
    }

    static Course course(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "means", "wet", "opens-water", "cleanses", "repairs"));
        boolean wet = f.text("wet").equals("yes");
        boolean opensWater = f.findText("opens-water").orElse("no").equals("yes");
        if (opensWater && !wet) {
            throw new BadInput(f.get("opens-water").where(), "a course that opens the water is wet; \"" + id(f) + "\" is not.");
        }
        return new Course(id(f), f.text("title"), f.text("means"), wet, opensWater,
                f.findText("cleanses").orElse("no").equals("yes"), f.findText("repairs").orElse("no").equals("yes"));
    }

    static WorkKind workKind(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "means"));
        return new WorkKind(id(f), f.text("means"));
    }

    static Competence competence(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "class", "shown-by", "refer-to", "source"));
        Map<String, String> shownBy = new LinkedHashMap<>();
        f.get("shown-by").asFields().fields().forEach((finding, answer) -> shownBy.put(finding, answer.asText()));
        if (shownBy.isEmpty()) {
            throw new BadInput(f.get("shown-by").where(), "\"shown-by\" needs at least one finding with the answer that shows it.");
        }
        return new Competence(id(f), f.text("title"), oneOf(f, "class", Competence.CLASSES), shownBy, f.text("refer-to"), f.text("source"));
    }

    static Method method(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "means", "for", "does", "prior", "cautions"));
        Set<WaterWork> does = allOf(f, "does", WaterWork.words()).stream().map(WaterWork::of).collect(Collectors.toUnmodifiableSet());
        return new Method(id(f), f.text("title"), f.text("means"), f.texts("for"), does, prior(f), f.texts("cautions"));
    }

    static Handling handling(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "means"));
        return new Handling(id(f), f.text("title"), f.text("means"));
    }

    static ArrangementHandling care(Node node) {
        Node.Fields f = node.asFields().only(Set.of("for", "isolate", "connect", "fill", "never-close", "level", "put-back",
                "because", "source"));
        return new ArrangementHandling(f.text("for"), lines(f, "isolate"), lines(f, "connect"), lines(f, "fill"),
                lines(f, "never-close"), lines(f, "level"), lines(f, "put-back"), f.text("because"), f.text("source"));
    }

    static ChecklistItem planLine(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "list", "says", "when", "source"));
        Node.Fields when = f.find("when").map(Node::asFields).orElse(Node.noFields(f.where()))
                .only(Set.of("course", "method", "trait", "without", "found", "unless", "heat", "cause", "not-for"));
        return new ChecklistItem(id(f), oneOf(f, "list", ChecklistItem.LISTS), f.text("says"), when.texts("course"), when.texts("method"),
                when.texts("trait"), when.texts("without"), when.texts("cause"), when.texts("not-for"),
                new When(When.answers(when, "found"), When.answers(when, "unless")),
                when.has("heat") && oneOf(when, "heat", Set.of("on")).equals("on"), f.text("source"));
    }

    private static List<String> lines(Node.Fields f, String name) {
        List<String> lines = f.get(name).asTexts();
        if (lines.isEmpty()) {
            throw new BadInput(f.get(name).where(), "\"" + name + "\" needs at least one line.");
        }
        return List.copyOf(lines);
    }

    static Caution caution(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "text", "authority", "harm", "moment", "source"));
        return new Caution(id(f), f.text("text"), f.text("authority"), Harm.of(oneOf(f, "harm", Harm.words())),
                Moment.of(oneOf(f, "moment", Moment.words())), f.text("source"));
    }

    static Source source(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "address", "note"));
        return new Source(id(f), f.text("title"), f.findText("address").orElse(""), f.findText("note").orElse(""));
    }

    /** Reads the entries of one file into the map, refusing an id that is already there. */
    static <T> void readAll(Node file, Map<String, T> into, Function<Node, T> read) {
        readAll(file, "id", into, read);
    }

    /** Reads the entries of one file into the map by the field that names each, refusing a name that is already there. */
    static <T> void readAll(Node file, String naming, Map<String, T> into, Function<Node, T> read) {
        for (Node item : file.asItems().items()) {
            String id = item.asFields().text(naming);
            if (into.putIfAbsent(id, read.apply(item)) != null) {
                throw new BadInput(item.where(), "\"" + id + "\" is catalogued twice; ids are unique.");
            }
        }
    }

    static String id(Node.Fields f) {
        String id = f.text("id");
        if (!id.matches(ID)) {
            throw new BadInput(f.get("id").where(), "\"" + id + "\" is not a plain kebab-case id.");
        }
        return id;
    }

    private static int prior(Node.Fields f) {
        return oneOf(f, "prior", PRIORS);
    }

    /** What the word stands for. */
    static <T> T oneOf(Node.Fields f, String name, Map<String, T> meanings) {
        return Lookup.known(meanings, oneOf(f, name, meanings.keySet()));
    }

    /** A list that must be there, each of its words a valid one. */
    private static List<String> allOf(Node.Fields f, String name, java.util.Collection<String> valid) {
        f.get(name).asItems();
        CatalogueFiles.refer(f, name, valid);
        return f.texts(name);
    }

    static String oneOf(Node.Fields f, String name, java.util.Collection<String> valid) {
        String word = f.text(name);
        if (!valid.contains(word)) {
            throw new BadInput(f.get(name).where(), "\"" + word + "\" is not a valid \"" + name + "\"" + Nearest.hint(word, valid));
        }
        return word;
    }
}
