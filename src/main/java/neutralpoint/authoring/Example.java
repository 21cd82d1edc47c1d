package neutralpoint.authoring;

import java.util.stream.Collectors;
import neutralpoint.document.Node;

/**
 * A small call-out that fires a rule, or one near it that does not.
 *
 * @param derived true when it follows from the rule's condition, false when its author wrote it
 */
public record Example(String rule, boolean fires, boolean derived, Node.Fields given) {

    /** What is given, on one line, as it would be written. */
    public String text() {
        return text(given).replaceAll("^\\{|}$", "");
    }

    private static String text(Node node) {
        if (node instanceof Node.Fields f) {
            return f.fields().entrySet().stream().map(e -> e.getKey() + ": " + text(e.getValue())).collect(Collectors.joining(", ", "{", "}"));
        }
        return node instanceof Node.Items i ? i.items().stream().map(Example::text).collect(Collectors.joining(", ", "[", "]")) : node.asText();
    }
}
