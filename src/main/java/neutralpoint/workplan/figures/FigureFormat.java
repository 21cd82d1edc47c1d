package neutralpoint.workplan.figures;

import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.Readings;

/** How the figures of a plan are written: no finer than anybody can measure them. */
public final class FigureFormat {
    private static final double WHOLE_FROM = 100;
    private static final double TENTHS_FROM = 10;

    private FigureFormat() {}

    public static String range(Estimate value, String unit) {
        String spread = value.low() == value.high() ? "" : " (" + number(value.low()) + " to " + number(value.high()) + ")";
        String of = unit.equals("litres") && value.likely() == 1 ? "litre" : unit;
        return number(value.likely()) + (of.isEmpty() ? "" : " " + of) + spread;
    }

    /** Hundreds in whole numbers, tens to a tenth, less to a hundredth. */
    static String number(double value) {
        double perUnit = value >= WHOLE_FROM ? 1 : value >= TENTHS_FROM ? 10 : 100;
        return Readings.shown(Math.round(value * perUnit) / perUnit);
    }
}
