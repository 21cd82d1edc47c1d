package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import neutralpoint.catalogue.Component;
import neutralpoint.document.Lookup;

/** The cistern in the loft, the vent looped over it and the feed from its base. */
record Loft(PipeColumns frame, Labels labels) {
    private static final int BASE = 4;

    int height() {
        return frame.hasLoft() ? BASE + 2 + Math.max(1, Math.max(feeds(frame.left()).size(), feeds(frame.right()).size())) : 0;
    }

    private static List<Component> feeds(List<Component> lanes) {
        return lanes.stream().filter(part -> part != Component.VENT_TEE).toList();
    }

    private static boolean vents(Component part) {
        return part == Component.VENT_TEE || part == Component.COMBINED_TEE;
    }

    /**
     * @param rows the row where each climbing pipe leaves the flow or return
     */
    void draw(Canvas canvas, Map<Component, Integer> rows) {
        if (!frame.hasLoft()) {
            return;
        }
        drawCistern(canvas);
        List<Component> all = new ArrayList<>(frame.left());
        all.addAll(frame.right());
        all.forEach(part -> drawLane(canvas, part, Lookup.known(rows, part)));
        all.forEach(part -> drawFoot(canvas, part, Lookup.known(rows, part)));
        all.stream().filter(Loft::vents).forEach(part -> drawLoop(canvas, part));
        all.stream().filter(part -> part != Component.VENT_TEE).forEach(part -> drawFeed(canvas, part));
        canvas.put(height() - 1, frame.middle() - 5, " loft floor ");
        canvas.dotted(height() - 1);
    }

    private int half() {
        return labels.inFull() ? 14 : 10;
    }

    private String cistern() {
        return labels.sketch().sharesTank() ? "cold-water cistern"
                : labels.inFull() ? "feed & expansion cistern" : "F & E cistern";
    }

    private void drawCistern(Canvas canvas) {
        int left = frame.middle() - half();
        int inside = 2 * half() - 1;
        canvas.put(1, left, "│");
        canvas.put(1, left + inside + 1, "│");
        canvas.put(2, left, "│" + "≈".repeat(inside) + "│");
        int before = (inside - cistern().length()) / 2;
        canvas.put(3, left, "│" + " ".repeat(before) + cistern() + " ".repeat(inside - before - cistern().length()) + "│");
        StringBuilder base = new StringBuilder("╰" + "─".repeat(inside) + "╯");
        feeds(frame.left()).forEach(part -> base.setCharAt(outlet(part) - left, '┬'));
        feeds(frame.right()).forEach(part -> base.setCharAt(outlet(part) - left, '┬'));
        canvas.put(BASE, left, base.toString());
    }

    /** The column where a feed leaves the cistern's base. */
    private int outlet(Component part) {
        return frame.left().contains(part) ? frame.middle() - 7 + 3 * feeds(frame.left()).indexOf(part)
                : frame.middle() + 7 - 3 * feeds(frame.right()).indexOf(part);
    }

    /** The row where a feed runs level; an outer lane turns in above an inner one. */
    private int levelRow(Component part) {
        return BASE + 1 + Math.max(feeds(frame.left()).indexOf(part), feeds(frame.right()).indexOf(part));
    }

    private void drawLane(Canvas canvas, Component part, int foot) {
        boolean left = frame.left().contains(part);
        int lane = frame.lane(part);
        int head = vents(part) ? 0 : levelRow(part);
        canvas.put(head, lane, left ? "╭" : "╮");
        if (part == Component.COMBINED_TEE) {
            canvas.put(levelRow(part), lane, left ? "├" : "┤");
        }
        canvas.put(foot, lane, left ? "╰" : "╯");
        canvas.standing(lane, head, foot);
    }

    private void drawFoot(Canvas canvas, Component part, int foot) {
        if (part == Component.CYLINDER) {
            canvas.level(foot, frame.lane(part) + 1, frame.body() - 1);
        } else if (frame.left().contains(part)) {
            canvas.level(foot, frame.lane(part) + 1, frame.flow() - 1);
        } else {
            canvas.level(foot, frame.back() + 1, frame.lane(part) - 1);
        }
    }

    private void drawLoop(Canvas canvas, Component part) {
        boolean left = frame.left().contains(part);
        int lane = frame.lane(part);
        int end = frame.middle() + (left ? -4 : 4);
        canvas.put(0, end, left ? "╮" : "╭");
        canvas.put(1, end, "▼");
        labelled(canvas, 0, left ? lane + 1 : end + 1, left ? end - 1 : lane - 1, " open vent ");
    }

    private void drawFeed(Canvas canvas, Component part) {
        boolean left = frame.left().contains(part);
        int lane = frame.lane(part);
        int row = levelRow(part);
        canvas.put(row, outlet(part), left ? "╯" : "╰");
        canvas.standing(outlet(part), BASE + 1, row);
        labelled(canvas, row, left ? lane + 1 : outlet(part) + 1, left ? outlet(part) - 1 : lane - 1, " cold feed ");
    }

    /** A level pipe with its name in the middle. */
    private static void labelled(Canvas canvas, int row, int from, int to, String name) {
        int at = (from + to + 1 - name.length()) / 2;
        canvas.put(row, at, name);
        canvas.level(row, from, at - 1);
        canvas.level(row, at + name.length(), to);
    }
}
