package neutralpoint.job;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/**
 * A number as it was written, with the unit that stood beside it.
 *
 * @param unit as written; empty when the number stood alone
 */
public record Quantity(double value, String unit) {
    private static final Pattern WRITTEN = Pattern.compile("([-+]?\\d+(?:[.,]\\d+)?)\\s*(.*)");

    /**
     * @param what   what the number is, for the message
     * @param wanted the unit it is wanted in, for the message
     */
    public static Quantity of(Node node, String what, String wanted) {
        if (node instanceof Node.Number n) {
            return new Quantity(n.value(), "");
        }
        Matcher m = WRITTEN.matcher(node instanceof Node.Text t ? t.text().strip() : "");
        if (!m.matches()) {
            throw new BadInput(node.where(), "\"" + what + "\" takes a number" + (wanted.isEmpty() ? "" : " in " + wanted)
                    + ", not " + (node instanceof Node.Text t ? "\"" + t.text() + "\"" : node.kind()) + ".");
        }
        return new Quantity(Double.parseDouble(m.group(1).replace(',', '.')), m.group(2).strip());
    }

    /** A number without decimals that say nothing. */
    public static String shown(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
