package neutralpoint.workplan;

import neutralpoint.hydronics.Range;
import neutralpoint.workings.Figures;

/** How the figures of a plan are written. */
final class Said {
    private Said() {}

    static String range(Range value, String unit) {
        String spread = value.low() == value.high() ? ""
                : " (" + Figures.shown(value.low()) + " to " + Figures.shown(value.high()) + ")";
        return Figures.shown(value.likely()) + (unit.isEmpty() ? "" : " " + unit) + spread;
    }
}
