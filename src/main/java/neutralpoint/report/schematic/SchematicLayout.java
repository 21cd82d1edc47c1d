package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;

/**
 * The parts of a sketch in their places: what the flow passes before its first rung, the ladder of rungs with whatever
 * sits in the flow between them, and what the return passes after the last.
 *
 * @param flow   from the boiler upwards
 * @param ladder from the lowest rung upwards
 * @param back   from the boiler upwards
 */
record SchematicLayout(PipeColumns frame, List<InlinePart> flow, List<RowBlock> ladder, List<InlinePart> back) {

    static SchematicLayout of(Labels labels, PipeColumns frame) {
        List<Component> order = labels.sketch().order();
        int last = PipeColumns.lastBridge(order);
        int first = first(order);
        int between = frame.back() - frame.flow() - 3;
        boolean shared = last >= 0 && last < order.size() - 1 && first > 1;
        int room = shared ? between / 2 : between;
        List<InlinePart> flow = new ArrayList<>();
        List<RowBlock> ladder = new ArrayList<>();
        List<InlinePart> back = new ArrayList<>();
        for (int i = 1; i < order.size(); i++) {
            Component part = order.get(i);
            if (part.bridges()) {
                List<Branch> rungs = new ArrayList<>(Branch.of(part, labels, frame, i == last, inlet(labels.sketch(), i),
                        valveOnRung(labels.sketch(), i)));
                Collections.reverse(rungs);
                ladder.addAll(rungs);
            } else if (!(part == Component.VALVE && valveOnRung(labels.sketch(), i + 1))) {
                boolean onReturn = last >= 0 && i > last;
                boolean inLadder = !onReturn && i > first;
                InlinePart stub = part == Component.VALVE && branchesFollow(labels.sketch())
                        ? InlinePart.valveOnEachBranch(labels, inLadder ? between : room)
                        : InlinePart.of(part, labels, onReturn, inLadder ? between : room);
                if (inLadder) {
                    ladder.add(stub);
                } else {
                    (onReturn ? back : flow).add(stub);
                }
            }
        }
        Collections.reverse(back);
        return new SchematicLayout(frame, List.copyOf(flow), List.copyOf(ladder), List.copyOf(back));
    }

    private static int first(List<Component> order) {
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i).bridges()) {
                return i;
            }
        }
        return order.size();
    }

    /** True where a single valve sits on the pipe to the cylinder, and so is drawn at the end of that rung. */
    private static boolean valveOnRung(Schematic sketch, int rung) {
        List<Component> order = sketch.order();
        boolean beforeCylinder = rung < order.size() && order.get(rung) == Component.CYLINDER && order.get(rung - 1) == Component.VALVE;
        return beforeCylinder && (sketch.isThreePort() || sketch.features().contains(ArrangementId.SINGLE_ZONE_VALVE)
                && sketch.features().contains(ArrangementId.GRAVITY_HOT_WATER) && !sketch.hasValveOnEachBranch());
    }

    private static Branch.Inlet inlet(Schematic sketch, int rung) {
        if (valveOnRung(sketch, rung)) {
            return sketch.isThreePort() ? Branch.Inlet.THREE_PORT : Branch.Inlet.TWO_PORT;
        }
        boolean valved = branchesFollow(sketch) && rung > sketch.order().indexOf(Component.VALVE)
                && isBranch(sketch.order().get(rung));
        return valved ? Branch.Inlet.TWO_PORT : Branch.Inlet.PLAIN;
    }

    private static boolean branchesFollow(Schematic sketch) {
        List<Component> order = sketch.order();
        return sketch.hasValveOnEachBranch() && order.contains(Component.VALVE)
                && order.subList(order.indexOf(Component.VALVE), order.size()).stream().anyMatch(SchematicLayout::isBranch);
    }

    private static boolean isBranch(Component part) {
        return part == Component.CYLINDER || part == Component.RADIATORS || part == Component.MIXING_SET;
    }

    int ladderHeight() {
        return ladder.isEmpty() ? 1 : height(ladder);
    }

    /** Rows of the pipes below the lowest rung, which flow and return share. */
    int commonHeight() {
        return Math.max(1, Math.max(height(flow), height(back)));
    }

    private static int height(List<? extends RowBlock> bands) {
        return bands.stream().mapToInt(RowBlock::height).sum();
    }
}
