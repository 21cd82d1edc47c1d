package neutralpoint.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import neutralpoint.document.BadInput;
import neutralpoint.document.Decimals;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;
import neutralpoint.document.Where;

/** A reading given in a unit of its own, brought to the unit it is kept in. */
public final class UnitConversion {
    private static final int SIGNIFICANT = 3;

    private UnitConversion() {}

    /**
     * The quantity in the wanted unit: as it stands if it has none or only the spelling differs, otherwise converted
     * and rounded to three figures, or to whole units where that is finer. A unit that cannot be is refused with one
     * sentence.
     *
     * @param what what is read, for the message
     */
    public static double in(String wanted, Quantity q, String what, Where where) {
        double value = q.value();
        if (q.unit().isEmpty() || Units.plain(q.unit()).equals(Units.plain(wanted)) || !Double.isFinite(value)) {
            return value;
        }
        double converted = Units.convert(value, q.unit(), wanted)
                .orElseThrow(() -> new BadInput(where, "\"" + what + "\" is read in " + wanted + ", " + wrong(wanted, q.unit())));
        return converted == value ? value : rounded(converted);
    }

    /** The figure of a field in the wanted unit; refuses one that does not lie between the two, both included. */
    static double plausible(Node node, String what, String wanted, double lowest, double highest) {
        double value = in(wanted, Quantity.of(node, what, wanted), what, node.where());
        if (value < lowest || value > highest) {
            throw new BadInput(node.where(), "\"" + what + "\" cannot be " + Decimals.given(value) + " " + wanted
                    + "; a plausible figure lies between " + Decimals.given(lowest) + " and " + Decimals.given(highest) + ".");
        }
        return value;
    }

    private static String wrong(String wanted, String unit) {
        List<String> alike = Units.alike(wanted);
        String right = "give it in " + (alike.isEmpty() ? wanted : String.join(", ", alike)) + ".";
        return Units.kind(unit)
                .map(kind -> "not in " + unit + ", which measures " + kind.words() + "; " + right)
                .orElseGet(() -> "and \"" + unit + "\" is not a unit known here; "
                        + Nearest.to(unit, alike).map(near -> "did you mean \"" + near + "\"? Otherwise ").orElse("")
                        + right);
    }

    private static double rounded(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal three = exact.round(new MathContext(SIGNIFICANT, RoundingMode.HALF_UP));
        return (three.scale() < 0 ? exact.setScale(0, RoundingMode.HALF_UP) : three).doubleValue();
    }
}
