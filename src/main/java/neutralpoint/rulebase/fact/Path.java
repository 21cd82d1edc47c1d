package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * What one sign says of where water may go: the way of relief from the heat source to the air, the tap water beside
 * the heating water, or what fills the heating.
 *
 * @param path  relief, waters or filling
 * @param state how bad it is
 * @param part  where it is shut or shared: see {@link ReliefPath} and {@link TapWater}; empty for a doubt
 */
public record Path(String path, State state, String part, List<Seen> from) {
    /** From best to worst. Open or apart is never concluded: it is what is left when nothing speaks against it. */
    public enum State { DOUBTFUL, SHUT, SHARED }

    /** The way from the heat source to the air is closed, or there is none. */
    public static Path shut(String path, Seen... from) {
        return new Path(path, State.SHUT, "", List.of(from));
    }

    /** The tap water and the heating water are one water, or meet. */
    public static Path shared(String path, Seen... from) {
        return new Path(path, State.SHARED, "", List.of(from));
    }

    /** One look settles it, and the rule's look says which. */
    public static Path doubtful(String path, Seen... from) {
        return new Path(path, State.DOUBTFUL, "", List.of(from));
    }

    /** Where it is shut or shared. */
    public Path at(String part) {
        return new Path(path, state, part, from);
    }
}
