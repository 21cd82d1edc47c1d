package neutralpoint.report;

import java.util.HashSet;
import java.util.Set;
import neutralpoint.catalogue.Caution;

/** The cautions of one document: each stands in full where it is first said and is named shortly after that. */
final class CautionOnce {
    private final Set<String> said = new HashSet<>();

    String say(Caution caution) {
        return said.add(caution.id()) ? caution.text() : caution.inShort() + ", as above";
    }

    boolean isSaid(Caution caution) {
        return said.contains(caution.id());
    }
}
