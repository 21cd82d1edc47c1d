package neutralpoint.report.schematic;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A sheet of characters that is drawn on once: nothing may be put over something else. A pipe that passes another
 * is the one exception, and the one that stands keeps its sign.
 */
final class Canvas {
    private static final char BLANK = 0;
    private static final Map<Character, Character> PLAIN = Map.ofEntries(
            Map.entry('─', '-'), Map.entry('│', '|'), Map.entry('╌', '.'), Map.entry('┄', '-'), Map.entry('╭', '.'), Map.entry('╮', '.'),
            Map.entry('╰', '\''), Map.entry('╯', '\''), Map.entry('├', '+'), Map.entry('┤', '+'), Map.entry('┬', '+'),
            Map.entry('┴', '+'), Map.entry('●', 'o'), Map.entry('◆', '#'), Map.entry('▲', '^'), Map.entry('▼', 'v'),
            Map.entry('►', '>'), Map.entry('◄', '<'), Map.entry('▷', '>'), Map.entry('◁', '<'), Map.entry('▽', 'v'),
            Map.entry('△', '^'), Map.entry('≈', '~'), Map.entry('≡', '='), Map.entry('╱', '/'), Map.entry('╲', '\\'),
            Map.entry('║', '|'), Map.entry('▪', '*'));

    private final char[][] cells;

    Canvas(int rows, int columns) {
        cells = new char[rows][columns];
    }

    /** Puts a text with its left end at a row and column, its blanks included. */
    void put(int row, int column, String text) {
        for (int i = 0; i < text.length(); i++) {
            set(row, column + i, text.charAt(i));
        }
    }

    /** A level pipe between two columns, both included; it passes behind pipes that stand. */
    void level(int row, int from, int to) {
        for (int column = Math.min(from, to); column <= Math.max(from, to); column++) {
            if (at(row, column) != '│') {
                set(row, column, '─');
            }
        }
    }

    /** A standing pipe between two rows, both included, through whatever already stands in it. */
    void standing(int column, int from, int to) {
        for (int row = from; row <= to; row++) {
            if (at(row, column) == BLANK) {
                set(row, column, '│');
            }
        }
    }

    /** Dots across the sheet wherever nothing stands. */
    void dotted(int row) {
        for (int column = 0; column < cells[row].length; column++) {
            if (cells[row][column] == BLANK) {
                cells[row][column] = '╌';
            }
        }
    }

    private char at(int row, int column) {
        if (row < 0 || row >= cells.length || column < 0 || column >= cells[row].length) {
            throw new IllegalStateException("row " + row + ", column " + column + " is off the sheet");
        }
        return cells[row][column];
    }

    private void set(int row, int column, char sign) {
        if (at(row, column) != BLANK) {
            throw new IllegalStateException("'" + sign + "' would cover '" + cells[row][column] + "' at row " + row
                    + ", column " + column + " of\n" + text());
        }
        cells[row][column] = sign;
    }

    String text() {
        return IntStream.range(0, cells.length)
                .mapToObj(row -> new String(cells[row]).replace(BLANK, ' ').stripTrailing() + "\n")
                .collect(Collectors.joining());
    }

    /** The same drawing, sign for sign, in plain characters. */
    static String plain(String drawing) {
        return drawing.chars().mapToObj(c -> String.valueOf(PLAIN.getOrDefault((char) c, (char) c)))
                .collect(Collectors.joining());
    }
}
