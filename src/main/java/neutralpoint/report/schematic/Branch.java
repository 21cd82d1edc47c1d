package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;

/**
 * A part through which water passes from flow to return, on a pipe between the two.
 *
 * @param words    what is said above its pipe
 * @param body     its rows of signs
 * @param pipe     the row of the body that lies in the pipe
 * @param top      true for the highest rung, where flow and return turn
 * @param inlet    the valve at its flow end
 * @param below    what is said of that valve, under the pipe
 */
record Branch(Component part, List<String> words, List<String> body, int pipe, boolean top, Inlet inlet, List<String> below)
        implements RowBlock {

    /** What stands where the rung leaves the flow pipe. */
    enum Inlet { PLAIN, TWO_PORT, THREE_PORT }

    /** The rungs of one part: radiators have one for each floor. */
    static List<Branch> of(Component part, Labels labels, PipeColumns frame, boolean top, Inlet inlet, boolean namesValve) {
        Schematic sketch = labels.sketch();
        int beside = frame.body() - frame.flow() - 5;
        int whole = frame.back() - frame.flow() - 6;
        List<String> below = namesValve ? labels.of(Component.VALVE, "", beside) : List.of();
        if (part == Component.STORE) {
            return List.of(new Branch(part, List.of(), store(labels, frame), 0, top, inlet, below));
        }
        if (part != Component.RADIATORS) {
            List<String> body = body(part, sketch);
            List<String> words = new ArrayList<>(labels.of(part, "", body.size() > 1 ? beside : whole));
            if (part == Component.MIXING_SET) {
                words.add("under-floor loops");
            }
            if (part == Component.CYLINDER && sketch.sharesTank()) {
                words.add("vent from its top");
            }
            Branch rung = new Branch(part, List.copyOf(words), body, body.size() == 1 ? 0 : part == Component.MIXING_SET ? 1 : 2,
                    top, inlet, below);
            return part == Component.CYLINDER && sketch.system().equals(ArrangementId.SOLID_FUEL) ? List.of(rung, heatLeak()) : List.of(rung);
        }
        List<Branch> floors = new ArrayList<>();
        List<String> body = body(part, sketch);
        int room = body.size() > 1 ? beside : whole;
        List<String> names = sketch.floors().isEmpty() ? List.of("") : sketch.floors();
        for (String floor : names) {
            boolean first = floors.isEmpty();
            List<String> words = first ? labels.of(part, floor.isEmpty() ? "" : ", " + floor, room) : List.of(floor);
            floors.add(new Branch(part, words, body, body.size() - 1, top && first, inlet, List.of()));
        }
        return List.copyOf(floors);
    }

    /** What takes the heat of a fire when nothing else does. */
    private static Branch heatLeak() {
        return new Branch(Component.CYLINDER, List.of("heat-leak radiator, no valves"), List.of("[║║║║]"), 0, false, Inlet.PLAIN,
                List.of());
    }

    private static List<String> body(Component part, Schematic sketch) {
        return switch (part) {
            case CYLINDER -> cylinder(sketch);
            case MIXING_SET -> List.of("       ╭╮╭╮╭╮", "[mix]──╯╰╯╰╯╰");
            case RADIATORS -> {
                if (sketch.features().contains(ArrangementId.ONE_PIPE_LOOP)) {
                    yield List.of("╭[║║║║]╮ ╭[║║║║]╮", "●──────●─●──────●");
                }
                yield List.of(sketch.features().contains(ArrangementId.MICROBORE) ? "[M]╌[║║║║║║]╌[M]" : "[║║║║║║║║║║]");
            }
            default -> List.of("▷◁");
        };
    }

    private static List<String> cylinder(Schematic sketch) {
        boolean direct = sketch.system().equals(ArrangementId.DIRECT_CYLINDER);
        boolean bubble = sketch.system().equals(ArrangementId.SINGLE_FEED_CYLINDER);
        boolean neutral = sketch.neutralPoint().filter(p -> p == Component.CYLINDER).isPresent();
        List<String> rows = new ArrayList<>(List.of("╭────────────╮", "│ tap water  ├─► taps"));
        rows.add(direct ? "┤≈≈ no coil ≈├" : "┤╱╲╱╲╱╲╱╲╱╲╱╲├");
        if (sketch.sharesTank()) {
            rows.add(bubble ? "│ air bubble │" : "│            │");
            rows.add((neutral ? "◆" : "┤") + "≈≈≈≈≈≈≈≈≈≈≈≈│");
        }
        rows.add("╰────────────╯");
        return List.copyOf(rows);
    }

    /** A store stands between the boiler and all that is above it. */
    private static List<String> store(Labels labels, PipeColumns frame) {
        int inside = frame.back() - frame.flow() + 1;
        List<String> rows = new ArrayList<>();
        for (String line : labels.of(Component.STORE, "", inside - 2)) {
            int before = (inside - line.length()) / 2;
            rows.add("│" + " ".repeat(before) + line + " ".repeat(inside - before - line.length()) + "│");
        }
        rows.add("│" + "≈".repeat(inside) + "│");
        return List.copyOf(rows);
    }

    private int above() {
        return part == Component.STORE ? 0 : Math.max(words.size(), pipe);
    }

    /** Rows from the top of the rung to its pipe. */
    int pipeRow() {
        return above();
    }

    @Override
    public int height() {
        if (part == Component.STORE) {
            return body.size() + 2;
        }
        int under = Math.max(body.size() - 1 - pipe, below.isEmpty() ? 0 : belowFrom() + below.size() - 1);
        return above() + 1 + Math.max(under, inlet == Inlet.THREE_PORT ? 1 : 0) + 1;
    }

    /** Rows from the pipe to the words on its valve; a cylinder's own cold feed passes above them. */
    private int belowFrom() {
        return body.size() > 5 ? 3 : 1;
    }

    /** Rows from the pipe to the row where the cold feed enters a cylinder that shares its tank. */
    static int feedBelowPipe() {
        return 2;
    }

    void draw(Canvas canvas, int row, PipeColumns frame) {
        if (part == Component.STORE) {
            drawStore(canvas, row, frame);
            return;
        }
        int line = row + above();
        for (int i = 0; i < words.size(); i++) {
            canvas.put(line - words.size() + i, frame.flow() + 3, words.get(i));
        }
        for (int i = 0; i < body.size(); i++) {
            String signs = body.get(i).strip();
            canvas.put(line - pipe + i, frame.body() + body.get(i).indexOf(signs), signs);
        }
        for (int i = 0; i < below.size(); i++) {
            canvas.put(line + belowFrom() + i, frame.flow() + 3, below.get(i));
        }
        canvas.put(line, frame.back(), top ? "╮" : "┤");
        int from = drawInlet(canvas, line, frame.flow());
        canvas.level(line, from, frame.body() - 1);
        canvas.level(line, frame.body() + body.get(pipe).length(), frame.back() - 1);
    }

    private int drawInlet(Canvas canvas, int line, int flow) {
        if (inlet == Inlet.THREE_PORT) {
            if (!top) {
                canvas.put(line - 1, flow, "▽");
            }
            canvas.put(line, flow, "●◁");
            canvas.put(line + 1, flow, "△");
            return flow + 2;
        }
        canvas.put(line, flow, top ? "╭" : "├");
        if (inlet == Inlet.TWO_PORT) {
            canvas.put(line, flow + 1, "──▷◁");
            return flow + 5;
        }
        return flow + 1;
    }

    private void drawStore(Canvas canvas, int row, PipeColumns frame) {
        String lid = "─".repeat(frame.back() - frame.flow() - 1);
        String up = top ? "─" : "┴";
        canvas.put(row, frame.flow() - 1, "╭" + up + lid + up + "╮");
        for (int i = 0; i < body.size(); i++) {
            canvas.put(row + 1 + i, frame.flow() - 1, body.get(i));
        }
        canvas.put(row + 1 + body.size(), frame.flow() - 1, "╰┬" + lid + "┬╯");
    }
}
