package neutralpoint.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A value read from a JSON or YAML file, with the line it stands on. */
public sealed interface Node permits Node.Text, Node.Numeral, Node.Flag, Node.Empty, Node.Items, Node.Fields {

    Where where();

    /** A string. */
    record Text(Where where, String text) implements Node {}

    /** A number, with the digits as they were written. */
    record Numeral(Where where, double value, String written) implements Node {}

    /** true or false. */
    record Flag(Where where, boolean value) implements Node {}

    /** null, or nothing at all. */
    record Empty(Where where) implements Node {}

    /** A list. */
    record Items(Where where, List<Node> items) implements Node {}

    /** Named fields in the order they were written. */
    record Fields(Where where, Map<String, Node> fields, Map<String, Where> names) implements Node {

        public Optional<Node> find(String name) {
            return Optional.ofNullable(fields.get(name));
        }

        public boolean has(String name) {
            return fields.containsKey(name);
        }

        public Node get(String name) {
            return find(name).orElseThrow(() -> new BadInput(where, "\"" + name + "\" is missing here."));
        }

        public String text(String name) {
            return get(name).asText();
        }

        public Optional<String> findText(String name) {
            return find(name).map(Node::asText);
        }

        public List<String> texts(String name) {
            return find(name).map(Node::asTexts).orElse(List.of());
        }

        /** Refuses any field that is not one of the given names, suggesting the nearest. */
        public Fields only(Set<String> known) {
            names.forEach((name, place) -> {
                if (!known.contains(name)) {
                    throw new BadInput(place, "\"" + name + "\" is not a field known here" + Nearest.hint(name, known));
                }
            });
            return this;
        }
    }

    /** The words of a string or a number; anything else is refused. */
    default String asText() {
        if (this instanceof Text t) {
            return t.text();
        }
        if (this instanceof Numeral n) {
            return n.written();
        }
        if (this instanceof Flag f) {
            return f.value() ? "yes" : "no";
        }
        throw new BadInput(where(), "a word or sentence belongs here, not " + kind() + ".");
    }

    default double asNumber() {
        if (this instanceof Numeral n) {
            return n.value();
        }
        throw new BadInput(where(), "a number belongs here, not " + kind() + ".");
    }

    default List<String> asTexts() {
        return asItems().items().stream().map(Node::asText).toList();
    }

    default Items asItems() {
        if (this instanceof Items i) {
            return i;
        }
        throw new BadInput(where(), "a list belongs here, not " + kind() + ".");
    }

    default Fields asFields() {
        if (this instanceof Fields f) {
            return f;
        }
        throw new BadInput(where(), "named fields belong here, not " + kind() + ".");
    }

    /** What sort of value this is, for messages. */
    default String kind() {
        if (this instanceof Text) {
            return "text";
        }
        if (this instanceof Numeral) {
            return "a number";
        }
        if (this instanceof Flag) {
            return "true or false";
        }
        if (this instanceof Items) {
            return "a list";
        }
        return this instanceof Fields ? "a set of named fields" : "nothing";
    }

    /** An empty, ordered set of fields. */
    static Fields noFields(Where where) {
        return new Fields(where, new LinkedHashMap<>(), new LinkedHashMap<>());
    }
}
