package neutralpoint.catalogue;

import java.util.List;

/**
 * A kind of system, or a feature that several kinds can have.
 *
 * @param feature true for a feature, false for a whole system
 * @param knownBy what it is recognised by
 * @param means   what it changes
 * @param traits  what rules may rely on
 * @param order   the parts of a whole system as water usually meets them, from the boiler round to its return; empty for a feature
 */
public record ArrangementKind(String id, String title, boolean feature, String knownBy, String means,
        int priorDecibans, List<String> traits, List<Component> order) {

    /** By its id, which nothing else has: this is looked up many times in one assessment. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
