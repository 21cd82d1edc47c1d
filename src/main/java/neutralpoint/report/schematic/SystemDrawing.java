package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;

/**
 * A labelled line diagram of a heating system. The boiler stands at the bottom, its flow rises on the left and its
 * return falls on the right; radiators and cylinder are rungs between the two, and the loft is at the top.
 */
public final class SystemDrawing {
    /** The narrowest and the widest drawing, in columns. */
    public static final int NARROWEST = 60;
    public static final int WIDEST = 120;

    private static final int ROOM_FOR_FULL_NAMES = 80;

    private SystemDrawing() {}

    /**
     * The drawing, with what the neutral point means for this system in words below it.
     *
     * @param width in columns, 60 to 120; no line is longer
     * @param plain true for plain characters only, sign for sign the same drawing
     * @throws IllegalArgumentException if the width is out of range
     */
    public static String of(Schematic sketch, int width, boolean plain) {
        if (width < NARROWEST || width > WIDEST) {
            throw new IllegalArgumentException("the width " + width + " must be from 60 to 120 columns.");
        }
        String drawing = picture(sketch, width) + "\n" + NeutralPointNotes.of(labels(sketch, width), width);
        return plain ? Canvas.plain(drawing) : drawing;
    }

    static Labels labels(Schematic sketch, int width) {
        return new Labels(sketch, width >= ROOM_FOR_FULL_NAMES);
    }

    /** The drawing without the words below it. */
    static String picture(Schematic sketch, int width) {
        Labels labels = labels(sketch, width);
        PipeColumns frame = PipeColumns.of(sketch, width);
        SchematicLayout layout = SchematicLayout.of(labels, frame);
        Loft loft = new Loft(frame, labels);
        List<String> boiler = boilerWords(labels, frame);
        int ladderTop = loft.height();
        int commonTop = ladderTop + layout.ladderHeight();
        int boilerTop = commonTop + layout.commonHeight();
        Canvas canvas = new Canvas(boilerTop + boiler.size() + 1, width);
        Map<Component, Integer> rows = new EnumMap<>(Component.class);
        int top = drawLadder(canvas, layout, ladderTop, rows);
        drawStubs(canvas, layout.flow(), boilerTop, frame.flow(), rows);
        drawStubs(canvas, layout.back(), boilerTop, frame.back(), rows);
        drawBoiler(canvas, boiler, boilerTop, frame);
        canvas.standing(frame.flow(), top, boilerTop);
        canvas.standing(frame.back(), top, boilerTop);
        loft.draw(canvas, rows);
        return canvas.text();
    }

    /** Draws the rungs and what lies between them from the top down; the answer is the row of the highest pipe. */
    private static int drawLadder(Canvas canvas, SchematicLayout layout, int from, Map<Component, Integer> rows) {
        PipeColumns frame = layout.frame();
        if (layout.ladder().isEmpty()) {
            canvas.put(from, frame.flow(), "╭");
            canvas.put(from, frame.back(), "╮");
            canvas.level(from, frame.flow() + 1, frame.back() - 1);
            return from;
        }
        int row = from;
        int top = -1;
        List<RowBlock> downwards = new ArrayList<>(layout.ladder());
        Collections.reverse(downwards);
        for (RowBlock band : downwards) {
            if (band instanceof Branch rung) {
                rung.draw(canvas, row, frame);
                rows.put(rung.part(), row + rung.pipeRow() + Branch.feedBelowPipe());
                top = top < 0 ? row + rung.pipeRow() : top;
            } else if (band instanceof InlinePart stub) {
                stub.draw(canvas, row, frame.flow());
                rows.put(stub.part(), row + stub.anchor());
            }
            row += band.height();
        }
        return top;
    }

    private static void drawStubs(Canvas canvas, List<InlinePart> upwards, int bottom, int pipe, Map<Component, Integer> rows) {
        int row = bottom;
        for (InlinePart stub : upwards) {
            row -= stub.height();
            stub.draw(canvas, row, pipe);
            rows.put(stub.part(), row + stub.anchor());
        }
    }

    private static List<String> boilerWords(Labels labels, PipeColumns frame) {
        List<String> words = new ArrayList<>(labels.of(Component.BOILER, "", frame.back() - frame.flow() - 14));
        if (labels.sketch().system().equals(ArrangementId.COMBINATION_BOILER)) {
            words.add("diverter and plate inside");
        }
        return words;
    }

    private static void drawBoiler(Canvas canvas, List<String> words, int row, PipeColumns frame) {
        int inside = 2 + Math.max(14, words.stream().mapToInt(String::length).max().orElse(0));
        int left = frame.middle() - inside / 2 - 1;
        int right = left + inside + 1;
        canvas.put(row - 1, left, "╭" + "─".repeat(inside) + "╮");
        for (int i = 0; i < words.size(); i++) {
            int before = (inside - words.get(i).length()) / 2;
            String text = " ".repeat(before) + words.get(i) + " ".repeat(inside - before - words.get(i).length());
            canvas.put(row + i, left, (i == 0 ? "┤" : "│") + text + (i == 0 ? "├" : "│"));
        }
        canvas.put(row + words.size(), left, "╰" + "─".repeat(inside) + "╯");
        canvas.put(row, frame.flow(), "╰──◄");
        canvas.level(row, frame.flow() + 4, left - 1);
        canvas.put(row, frame.back() - 3, "◄──╯");
        canvas.level(row, right + 1, frame.back() - 4);
    }
}
