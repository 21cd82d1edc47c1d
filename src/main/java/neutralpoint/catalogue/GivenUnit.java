package neutralpoint.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Where;

/** A reading given in a unit of its own, brought to the unit its finding is catalogued with. */
final class GivenUnit {
    private static final int SIGNIFICANT = 3;

    private GivenUnit() {}

    /**
     * The value in the finding's unit: as it stands if only the spelling differs, otherwise converted and rounded to
     * three figures, or to whole units where that is finer. A unit that cannot be is refused with one sentence.
     */
    static double inUnitOf(Finding finding, double value, String unit, Where where) {
        if (Units.plain(unit).equals(Units.plain(finding.unit())) || !Double.isFinite(value)) {
            return value;
        }
        double converted = Units.convert(value, unit, finding.unit())
                .orElseThrow(() -> new BadInput(where, "\"" + finding.id() + "\" is read in " + finding.unit() + ", "
                        + wrong(finding, unit)));
        return converted == value ? value : rounded(converted);
    }

    private static String wrong(Finding finding, String unit) {
        List<String> alike = Units.alike(finding.unit());
        String right = "give it in " + (alike.isEmpty() ? finding.unit() : String.join(", ", alike)) + ".";
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
