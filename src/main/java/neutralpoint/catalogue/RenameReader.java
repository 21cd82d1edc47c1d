package neutralpoint.catalogue;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/** Reads what entries were called before; an old id that is taken is refused. */
final class RenameReader {
    private static final String WAS = "was";

    private RenameReader() {}

    static Renames read(Collection<Node.Fields> findings, Collection<Node.Fields> causes, Collection<Node.Fields> arrangements) {
        Map<String, Map<String, String>> options = new HashMap<>();
        findings.forEach(f -> f.find("options").ifPresent(list -> {
            Map<String, String> old = old(list.asItems().items().stream().map(Node::asFields).toList());
            if (!old.isEmpty()) {
                options.put(f.text("id"), old);
            }
        }));
        return new Renames(old(findings), options, old(causes), old(arrangements));
    }

    private static Map<String, String> old(Collection<Node.Fields> entries) {
        Map<String, String> old = new HashMap<>();
        List<Node.Fields> renamed = entries.stream().filter(f -> f.has(WAS)).toList();
        if (renamed.isEmpty()) {
            return old;
        }
        Collection<String> living = entries.stream().map(f -> f.text("id")).collect(Collectors.toSet());
        for (Node.Fields f : renamed) {
            for (Node was : f.get(WAS).asItems().items()) {
                if (living.contains(was.asText()) || old.putIfAbsent(was.asText(), f.text("id")) != null) {
                    throw new BadInput(was.where(), "\"" + was.asText() + "\" cannot be what \"" + f.text("id")
                            + "\" was: it stands for another entry.");
                }
            }
        }
        return old;
    }
}
