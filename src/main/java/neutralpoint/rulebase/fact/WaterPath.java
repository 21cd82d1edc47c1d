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
public record WaterPath(String path, PathState state, String part, List<Sign> from) {
    /** From best to worst. Open or apart is never concluded: it is what is left when nothing speaks against it. */
    public enum PathState { DOUBTFUL, SHUT, SHARED }

    /** The way from the heat source to the air is closed, or there is none. */
    public static WaterPath shut(String path, Sign... from) {
        return new WaterPath(path, PathState.SHUT, "", List.of(from));
    }

    /** The tap water and the heating water are one water, or meet. */
    public static WaterPath shared(String path, Sign... from) {
        return new WaterPath(path, PathState.SHARED, "", List.of(from));
    }

    /** One look settles it, and the rule's look says which. */
    public static WaterPath doubtful(String path, Sign... from) {
        return new WaterPath(path, PathState.DOUBTFUL, "", List.of(from));
    }

    /** Where it is shut or shared. */
    public WaterPath at(String part) {
        return new WaterPath(path, state, part, from);
    }
}
