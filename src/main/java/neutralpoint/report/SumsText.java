package neutralpoint.report;

import neutralpoint.report.chart.PressurePlot;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workings.Calculation;
import neutralpoint.workings.VesselWorkings;

/** The arithmetic behind everything worked out from the readings, line by line, and the pressure plot where there is one. */
public final class SumsText {
    private SumsText() {}

    /** Each line with its end; one sentence when there was nothing to work with. */
    public static String of(Assessment a, DisplayOptions look) {
        if (a.workedOut().isEmpty()) {
            return Wrap.to(look.width(), "", "", "Nothing has been worked out: there are no readings yet, or too few.") + "\n";
        }
        StringBuilder out = new StringBuilder();
        for (Calculation w : a.workedOut()) {
            out.append(Wrap.to(look.width(), "", "      ", String.format("%-4s  %s", w.grade().word(), w.says()))).append('\n');
            w.sums().forEach(sum -> out.append(Wrap.to(look.width(), "      ", "        ", sum)).append('\n'));
        }
        VesselWorkings.line(a.job()).ifPresent(line -> out.append('\n').append(PressurePlot.of(line, look)));
        return out.toString();
    }
}
