package neutralpoint.workings;

import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;

/** How an estimate is written: no finer than anybody can measure it. */
public final class EstimateFormat {
    private EstimateFormat() {}

    /** The likeliest with its unit, and the ends where they differ. */
    public static String range(Estimate value, String unit) {
        String spread = value.low() == value.high() ? "" : " (" + Decimals.coarse(value.low()) + " to " + Decimals.coarse(value.high()) + ")";
        String of = unit.equals("litres") && value.likely() == 1 ? "litre" : unit;
        return Decimals.coarse(value.likely()) + (of.isEmpty() ? "" : " " + of) + spread;
    }
}
