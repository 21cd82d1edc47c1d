package neutralpoint.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The parts of a sketch in their places: what the flow passes before its first rung, the ladder of rungs with whatever
 * sits in the flow between them, and what the return passes after the last.
 *
 * @param flow   from the boiler upwards
 * @param ladder from the lowest rung upwards
 * @param back   from the boiler upwards
 */
record Layout(Frame frame, List<Stub> flow, List<Band> ladder, List<Stub> back) {

    static Layout of(Labels labels, Frame frame) {
        List<Part> order = labels.sketch().order();
        int last = Frame.lastBridge(order);
        int first = first(order);
        int between = frame.back() - frame.flow() - 3;
        boolean shared = last >= 0 && last < order.size() - 1 && first > 1;
        int room = shared ? between / 2 : between;
        List<Stub> flow = new ArrayList<>();
        List<Band> ladder = new ArrayList<>();
        List<Stub> back = new ArrayList<>();
        for (int i = 1; i < order.size(); i++) {
            Part part = order.get(i);
            if (part.bridges()) {
                List<Rung> rungs = new ArrayList<>(Rung.of(part, labels, frame, i == last, inlet(labels.sketch(), i),
                        valveOnRung(labels.sketch(), i)));
                Collections.reverse(rungs);
                ladder.addAll(rungs);
            } else if (!(part == Part.VALVE && valveOnRung(labels.sketch(), i + 1))) {
                boolean onReturn = last >= 0 && i > last;
                boolean inLadder = !onReturn && i > first;
                Stub stub = part == Part.VALVE && branchesFollow(labels.sketch())
                        ? Stub.valveOnEachBranch(labels, inLadder ? between : room)
                        : Stub.of(part, labels, onReturn, inLadder ? between : room);
                if (inLadder) {
                    ladder.add(stub);
                } else {
                    (onReturn ? back : flow).add(stub);
                }
            }
        }
        Collections.reverse(back);
        return new Layout(frame, List.copyOf(flow), List.copyOf(ladder), List.copyOf(back));
    }

    private static int first(List<Part> order) {
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i).bridges()) {
                return i;
            }
        }
        return order.size();
    }

    /** True where a single valve sits on the pipe to the cylinder, and so is drawn at the end of that rung. */
    private static boolean valveOnRung(Sketch sketch, int rung) {
        List<Part> order = sketch.order();
        boolean beforeCylinder = rung < order.size() && order.get(rung) == Part.CYLINDER && order.get(rung - 1) == Part.VALVE;
        return beforeCylinder && (sketch.isThreePort() || sketch.features().contains("single-zone-valve")
                && sketch.features().contains("gravity-hot-water") && !sketch.hasValveOnEachBranch());
    }

    private static Rung.Inlet inlet(Sketch sketch, int rung) {
        if (valveOnRung(sketch, rung)) {
            return sketch.isThreePort() ? Rung.Inlet.THREE_PORT : Rung.Inlet.TWO_PORT;
        }
        boolean valved = branchesFollow(sketch) && rung > sketch.order().indexOf(Part.VALVE)
                && isBranch(sketch.order().get(rung));
        return valved ? Rung.Inlet.TWO_PORT : Rung.Inlet.PLAIN;
    }

    private static boolean branchesFollow(Sketch sketch) {
        List<Part> order = sketch.order();
        return sketch.hasValveOnEachBranch() && order.contains(Part.VALVE)
                && order.subList(order.indexOf(Part.VALVE), order.size()).stream().anyMatch(Layout::isBranch);
    }

    private static boolean isBranch(Part part) {
        return part == Part.CYLINDER || part == Part.RADIATORS || part == Part.MIXING_SET;
    }

    int ladderHeight() {
        return ladder.isEmpty() ? 1 : height(ladder);
    }

    /** Rows of the pipes below the lowest rung, which flow and return share. */
    int commonHeight() {
        return Math.max(1, Math.max(height(flow), height(back)));
    }

    private static int height(List<? extends Band> bands) {
        return bands.stream().mapToInt(Band::height).sum();
    }
}
