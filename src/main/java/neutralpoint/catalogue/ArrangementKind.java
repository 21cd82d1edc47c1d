package neutralpoint.catalogue;

import java.util.List;

/**
 * A kind of system, or a feature that several kinds can have.
 *
 * @param feature true for a feature, false for a whole system
 * @param knownBy what it is recognised by
 * @param means   what it changes
 * @param traits  what rules may rely on
 */
public record ArrangementKind(String id, String title, boolean feature, String knownBy, String means,
        int priorDecibans, List<String> traits) {

    /** By its id, which nothing else has: this is looked up many times in one assessment. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
