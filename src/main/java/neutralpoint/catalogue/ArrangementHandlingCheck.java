package neutralpoint.catalogue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/** Every whole system says how it is handled, nothing unknown is handled, and all that is closed is put back. */
final class ArrangementHandlingCheck {
    private ArrangementHandlingCheck() {}

    static void check(Node.Items file, Catalogue catalogue) {
        Set<String> told = new HashSet<>();
        for (Node item : file.items()) {
            Node.Fields entry = item.asFields();
            requireKnown(entry, "for", "arrangement", catalogue.arrangements().keySet());
            requireKnown(entry, "source", "source", catalogue.sources().keySet());
            requirePairs(entry);
            told.add(entry.text("for"));
        }
        catalogue.systems().stream().map(ArrangementKind::id).filter(id -> !told.contains(id)).findFirst().ifPresent(id -> {
            throw new BadInput(file.where(), "the system \"" + id + "\" has no entry here; say how it is handled.");
        });
    }

    private static void requireKnown(Node.Fields entry, String field, String what, Set<String> valid) {
        String word = entry.text(field);
        if (!valid.contains(word)) {
            throw new BadInput(entry.get(field).where(), "\"" + word + "\" is not a known " + what + Nearest.hint(word, valid));
        }
    }

    private static void requirePairs(Node.Fields entry) {
        List<String> closed = entry.texts("isolate");
        List<String> putBack = entry.texts("put-back");
        if (closed.size() != putBack.size()) {
            throw new BadInput(entry.get("put-back").where(), "\"isolate\" has " + closed.size() + " lines and \"put-back\" "
                    + putBack.size() + "; what is closed is put back line for line.");
        }
    }
}
