package neutralpoint.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/**
 * A number as it was written, with the unit that stood beside it. A flow may be written as it is found with a jug and a
 * watch: "2 litres in 9 s".
 *
 * @param unit as written; empty when the number stood alone
 */
public record Quantity(double value, String unit) {
    private static final Pattern WRITTEN = Pattern.compile("([-+]?\\d+(?:[.,]\\d+)?)\\s*(.*)");
    private static final Pattern TIMED = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?)\\s*([^\\s\\d]\\S*)\\s+in\\s+(\\d+(?:[.,]\\d+)?)\\s*(s|secs?|seconds?|min|mins|minutes?)\\.?",
            Pattern.CASE_INSENSITIVE);
    private static final double SECONDS_PER_MINUTE = 60;
    /** Finer than any jug and watch. */
    private static final MathContext FIGURES = new MathContext(4);

    /**
     * @param what   what the number is, for the message
     * @param wanted the unit it is wanted in, for the message
     */
    public static Quantity of(Node node, String what, String wanted) {
        if (node instanceof Node.Numeral n) {
            return new Quantity(n.value(), "");
        }
        String written = node instanceof Node.Text t ? t.text().strip() : "";
        Matcher timed = TIMED.matcher(written);
        if (timed.matches()) {
            return timed(timed, node, what);
        }
        Matcher m = WRITTEN.matcher(written);
        if (!m.matches()) {
            throw new BadInput(node.where(), "\"" + what + "\" takes a number" + (wanted.isEmpty() ? "" : " in " + wanted)
                    + ", not " + (node instanceof Node.Text t ? "\"" + t.text() + "\"" : node.kind()) + ".");
        }
        return new Quantity(number(m.group(1)), m.group(2).strip());
    }

    /** A measure of water over the time it took, as litres a second. */
    private static Quantity timed(Matcher m, Node node, String what) {
        OptionalDouble litres = Units.convert(number(m.group(1)), m.group(2), "litres");
        if (litres.isEmpty()) {
            throw new BadInput(node.where(), "\"" + what + "\" timed with a jug takes a measure of water such as \"2 litres in 9 s\", and "
                    + m.group(2) + " is none; give it in " + String.join(", ", Units.alike("litres")) + ".");
        }
        double seconds = number(m.group(3)) * (m.group(4).toLowerCase(Locale.ROOT).startsWith("m") ? SECONDS_PER_MINUTE : 1);
        if (seconds == 0) {
            throw new BadInput(node.where(), "\"" + what + "\" was timed over no time at all; give the seconds the jug took to fill.");
        }
        return new Quantity(new BigDecimal(litres.getAsDouble() / seconds).round(FIGURES).doubleValue(), "l/s");
    }

    private static double number(String written) {
        return Double.parseDouble(written.replace(',', '.'));
    }
}
