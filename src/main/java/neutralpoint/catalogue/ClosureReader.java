package neutralpoint.catalogue;

import java.util.Optional;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/** Turns entries of the catalogue of closures into closures. */
final class ClosureReader {
    private static final Set<String> OPENED = Set.of("by-hand", "when-cold");

    private ClosureReader() {}

    static Closure closure(Node node) {
        Node.Fields f = node.asFields().only(Set.of("id", "title", "relief", "place", "opened", "when", "unless", "shut-when"));
        boolean relief = CatalogueReader.oneOf(f, "relief", Set.of("yes", "no")).equals("yes");
        if (relief && !f.has("place")) {
            throw new BadInput(f.where(), "the closure \"" + f.text("id") + "\" gives relief, so it says its \"place\" and how it is \"opened\".");
        }
        return new Closure(CatalogueReader.id(f), f.text("title"), relief, relief ? Optional.of(reopening(f)) : Optional.empty());
    }

    private static Closure.Reopening reopening(Node.Fields f) {
        return new Closure.Reopening(f.text("place"), CatalogueReader.oneOf(f, "opened", OPENED).equals("by-hand"), When.of(f),
                When.answers(f, "shut-when"));
    }

    static void check(Node.Fields f, Catalogue catalogue) {
        When.check(f, catalogue);
        f.find("shut-when").ifPresent(n -> CatalogueFiles.checkAnswers(n.asFields(), catalogue));
    }
}
