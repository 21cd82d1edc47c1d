package neutralpoint.report.schematic;

import java.util.List;
import neutralpoint.catalogue.Component;

/**
 * A part that sits in the flow or the return pipe or hangs from it, with its words beside it.
 *
 * @param signs    its rows of signs, from the pipe outwards to the right
 * @param anchor   the row of signs that joins the pipe, and where the words begin
 * @param across   how many signs lie on the far side of the pipe
 * @param lead     columns from the pipe to the words
 */
record InlinePart(Component part, List<String> signs, int anchor, int across, int lead, List<String> words, boolean onReturn)
        implements RowBlock {

    static InlinePart of(Component part, Labels labels, boolean onReturn, int room) {
        Schematic sketch = labels.sketch();
        boolean neutral = sketch.neutralPoint().filter(part::equals).isPresent();
        String tee = neutral ? "◆" : "●";
        return switch (part) {
            case PUMP -> stub(part, List.of(onReturn ? "(▼)" : "(▲)"), 0, 1, 4, labels, onReturn, room);
            case FILTER -> stub(part, List.of("[≡]"), 0, 1, 4, labels, onReturn, room);
            case VESSEL_TEE -> stub(part, List.of("  ╭──╮", tee + "─┤≈≈│", "  ╰──╯"), 1, 0, 7, labels, onReturn, room);
            case SAFETY_VALVE -> stub(part, List.of("●─▷◁►"), 0, 0, 6, labels, onReturn, room);
            case GAUGE -> stub(part, List.of("●─(╱)"), 0, 0, 6, labels, onReturn, room);
            case FILL_POINT -> stub(part, List.of("●─▷◁╌▷◁"), 0, 0, 8, labels, onReturn, room);
            case VALVE -> valve(labels, onReturn, room);
            default -> stub(part, List.of(tee), 0, 0, 3, labels, onReturn, room);
        };
    }

    private static InlinePart valve(Labels labels, boolean onReturn, int room) {
        List<String> signs = labels.sketch().isThreePort() ? List.of("▽", "●◁", "△") : List.of("▽", "△");
        return stub(Component.VALVE, signs, signs.size() - 2, 0, 3, labels, onReturn, room);
    }

    /** Only words: each branch that follows has a valve of its own. */
    static InlinePart valveOnEachBranch(Labels labels, int room) {
        List<String> words = labels.of(Component.VALVE, labels.inFull() ? " ▷◁, one on each branch" : " ▷◁, one a branch", room - 3);
        return new InlinePart(Component.VALVE, List.of("│"), 0, 0, 3, words, false);
    }

    private static InlinePart stub(Component part, List<String> signs, int anchor, int across, int lead, Labels labels,
            boolean onReturn, int room) {
        return new InlinePart(part, signs, anchor, across, lead, labels.of(part, "", room - lead), onReturn);
    }

    @Override
    public int height() {
        return Math.max(signs.size(), anchor + words.size()) + 1;
    }

    void draw(Canvas canvas, int row, int pipe) {
        for (int i = 0; i < signs.size(); i++) {
            String sign = onReturn ? mirrored(signs.get(i)) : signs.get(i);
            String drawn = sign.strip();
            int skipped = onReturn ? 0 : sign.indexOf(drawn);
            int left = onReturn ? pipe + across - sign.length() + 1 : pipe - across + skipped;
            canvas.put(row + i, left, drawn);
        }
        for (int i = 0; i < words.size(); i++) {
            String line = words.get(i);
            canvas.put(row + anchor + i, onReturn ? pipe - lead - line.length() + 1 : pipe + lead, line);
        }
    }

    private static String mirrored(String signs) {
        StringBuilder out = new StringBuilder();
        for (char sign : new StringBuilder(signs).reverse().toString().toCharArray()) {
            int at = "╭╮╰╯├┤►◄▷◁()[]".indexOf(sign);
            out.append(at < 0 ? sign : "╮╭╯╰┤├◄►◁▷)(][".charAt(at));
        }
        return out.toString();
    }
}
