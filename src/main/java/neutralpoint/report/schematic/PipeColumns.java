package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import neutralpoint.catalogue.Component;

/**
 * Where the pipes of a drawing stand: the flow rises on the left, the return falls on the right, and outside each of
 * them a lane for every pipe that climbs to the loft. The pipe that starts lowest has the outermost lane, so that no
 * lane has to cross another.
 *
 * @param left  parts with a lane on the flow's side, outermost first
 * @param right parts with a lane on the return's side, outermost first
 */
record PipeColumns(int width, List<Component> left, List<Component> right) {

    static PipeColumns of(Schematic sketch, int width) {
        List<Component> left = new ArrayList<>();
        List<Component> right = new ArrayList<>();
        int turn = lastBridge(sketch.order());
        for (Component part : sketch.order()) {
            if (climbs(part) || part == Component.CYLINDER && sketch.sharesTank()) {
                (turn >= 0 && sketch.order().indexOf(part) > turn ? right : left).add(part);
            }
        }
        Collections.reverse(right);
        return new PipeColumns(width, List.copyOf(left), List.copyOf(right));
    }

    /** The place in the order of the last part that joins flow and return; -1 if none does. */
    static int lastBridge(List<Component> order) {
        int last = -1;
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i).bridges()) {
                last = i;
            }
        }
        return last;
    }

    private static boolean climbs(Component part) {
        return part == Component.VENT_TEE || part == Component.FEED_TEE || part == Component.COMBINED_TEE;
    }

    boolean hasLoft() {
        return !left.isEmpty() || !right.isEmpty();
    }

    int flow() {
        return 2 + 2 * left.size();
    }

    int back() {
        return width - 3 - 2 * right.size();
    }

    int middle() {
        return (flow() + back()) / 2;
    }

    /** Left end of radiators, cylinder and whatever else stands between flow and return. */
    int body() {
        return middle() + 1;
    }

    int lane(Component part) {
        return left.contains(part) ? 1 + 2 * left.indexOf(part) : width - 2 - 2 * right.indexOf(part);
    }
}
