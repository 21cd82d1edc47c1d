package neutralpoint.catalogue;

import java.util.Map;
import java.util.Set;

/**
 * Something a remedy may need of the person who does it.
 *
 * @param title   what that person is, after "somebody": "registered for gas work"
 * @param by      registration (by law), certificate, or competence (knowledge and equipment without a register)
 * @param shownBy the answers that show it, by finding; the first finding decides, and shows by another answer that it is lacking
 * @param referTo who does it otherwise: "a registered gas engineer"
 * @param source  where it is laid down
 */
public record Competence(String id, String title, String by, Map<String, String> shownBy, String referTo, String source) {
    static final String NO_PAPER = "competence";
    static final Set<String> CLASSES = Set.of("registration", "certificate", NO_PAPER);

    /** The finding whose answer decides whether somebody has it. */
    public String decidedBy() {
        return shownBy.keySet().iterator().next();
    }
}
