package neutralpoint.report.chart;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import neutralpoint.document.Decimals;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import neutralpoint.workings.PressureLine;

/**
 * Gauge pressure against water temperature on a sealed system: what is expected, what was read cold and hot, and where
 * the safety valve opens. At most 60 columns wide and 16 lines high, with two sentences below that say the same.
 */
public final class PressurePlot {
    private static final int WIDEST = 60;
    /** Rows of the field, one for each step of pressure and one for none. */
    private static final int STEPS = 10;
    /** The figure of pressure and the axis. */
    private static final int MARGIN = 5;
    private static final double LEAST_TOP_BAR = 4;
    private static final double MOST_TOP_BAR = 6;

    private static final char EXPECTED = '·';
    private static final char SAFETY_VALVE = '─';
    private static final char COLD = '○';
    private static final char HOT = '●';
    private static final char AXIS = '│';
    private static final char FLOOR = '└';

    private final PressureLine line;
    private final int columns;
    private final double lowCelsius;
    private final double highCelsius;
    private final double topBar;

    private PressurePlot(PressureLine line, int width) {
        this.line = line;
        columns = Math.min(width, WIDEST) - MARGIN;
        lowCelsius = Math.floor(line.coldCelsius() / 10) * 10;
        highCelsius = Math.max(lowCelsius + 20, Math.ceil(line.hotCelsius() / 10) * 10);
        double highest = Math.max(Math.max(line.coldBar(), line.hotBar()), line.safetyValveBar());
        topBar = Math.min(MOST_TOP_BAR, Math.max(LEAST_TOP_BAR, Math.ceil(highest)));
    }

    /** The plot with its legend, and the two sentences. */
    public static String of(PressureLine line, DisplayOptions look) {
        PressurePlot plot = new PressurePlot(line, look.width());
        String drawing = plot.drawing();
        return (look.colour() ? coloured(drawing) : plain(drawing)) + summary(line, look.width());
    }

    private String drawing() {
        char[][] field = new char[STEPS + 1][columns];
        for (char[] row : field) {
            Arrays.fill(row, ' ');
        }
        Arrays.fill(field[row(line.safetyValveBar())], SAFETY_VALVE);
        for (int column = column(line.coldCelsius()); column <= column(line.hotCelsius()); column++) {
            OptionalDouble bar = line.expectedBar().apply(celsius(column));
            if (bar.isPresent() && bar.getAsDouble() <= topBar) {
                field[row(bar.getAsDouble())][column] = EXPECTED;
            }
        }
        field[row(line.coldBar())][column(line.coldCelsius())] = COLD;
        field[row(line.hotBar())][column(line.hotCelsius())] = HOT;
        StringBuilder out = new StringBuilder("bar, by the gauge\n");
        for (int step = STEPS; step >= 0; step--) {
            String figure = step % (STEPS / 2) == 0 ? String.format(Locale.ROOT, "%3.1f", topBar * step / STEPS) : "   ";
            out.append((figure + " " + AXIS + new String(field[STEPS - step])).stripTrailing()).append('\n');
        }
        return out.append("    ").append(FLOOR).append(String.valueOf(SAFETY_VALVE).repeat(columns)).append('\n')
                .append(temperatures()).append('\n').append(legend()).append('\n').toString();
    }

    /** Figures under the axis, with the unit at its end. */
    private String temperatures() {
        String low = String.valueOf(Math.round(lowCelsius));
        String middle = String.valueOf(Math.round((lowCelsius + highCelsius) / 2));
        String high = Math.round(highCelsius) + " °C water";
        int half = MARGIN + columns / 2 - 1;
        String left = " ".repeat(MARGIN) + low;
        left += " ".repeat(half - left.length()) + middle;
        return left + " ".repeat(MARGIN + columns - left.length() - high.length()) + high;
    }

    private String legend() {
        String words = COLD + " cold  " + HOT + " hot  " + EXPECTED + " expected  " + SAFETY_VALVE + " safety valve";
        return columns < words.length() ? words.replace("  ", " ") : " ".repeat(MARGIN) + words;
    }

    private int row(double bar) {
        return STEPS - (int) Math.round(Math.max(0, Math.min(topBar, bar)) / topBar * STEPS);
    }

    private int column(double celsius) {
        return (int) Math.round((celsius - lowCelsius) / (highCelsius - lowCelsius) * (columns - 1));
    }

    private double celsius(int column) {
        return lowCelsius + (highCelsius - lowCelsius) * column / (columns - 1);
    }

    private static String plain(String drawing) {
        return drawing.replace(COLD, 'o').replace(HOT, '@').replace(EXPECTED, '.').replace(SAFETY_VALVE, '-').replace(AXIS, '|')
                .replace(FLOOR, '+').replace("°", "");
    }

    private static String coloured(String drawing) {
        return drawing.chars().mapToObj(c -> switch ((char) c) {
            case COLD -> sign(c, 34);
            case HOT -> sign(c, 31);
            case EXPECTED -> sign(c, 32);
            default -> String.valueOf((char) c);
        }).collect(Collectors.joining());
    }

    private static String sign(int sign, int colour) {
        return "\u001b[" + colour + "m" + (char) sign + "\u001b[0m";
    }

    private static String summary(PressureLine line, int width) {
        OptionalDouble expected = line.expectedBar().apply(line.hotCelsius());
        double margin = line.safetyValveBar() - line.hotBar();
        String hot = "Cold " + Decimals.shown(line.coldBar()) + " bar at " + Decimals.shown(line.coldCelsius()) + " C; hot " + Decimals.shown(line.hotBar())
                + " bar at " + Math.round(line.hotCelsius()) + " C"
                + (expected.isPresent() ? ", expected " + Decimals.shown(expected.getAsDouble()) + "." : "; no air left.");
        String valve = "Safety valve " + Decimals.shown(line.safetyValveBar()) + " bar, " + Decimals.shown(Math.abs(margin))
                + (margin >= 0 ? " bar over the hot reading." : " bar under the hot reading.");
        return Wrap.to(width, "", "", hot) + "\n" + Wrap.to(width, "", "", valve) + "\n";
    }
}
