package neutralpoint.report;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.catalogue.Danger;
import neutralpoint.rulebase.Assessment;

/** A danger that stands, as the lines that every page shows of it; made from its catalogue entry and from nothing else. */
public final class StopLines {
    private StopLines() {}

    /** What stands, what to do now, what never to do, who must come, and why; each line is one to be wrapped with its own indent. */
    public static List<String> of(Assessment.StopFound stop) {
        List<String> lines = new ArrayList<>(List.of(title(stop), "Now:"));
        for (int i = 0; i < stop.now().size(); i++) {
            lines.add(String.format("%3d  %s", i + 1, stop.now().get(i).says()));
        }
        lines.addAll(rest(stop));
        lines.add("Because: " + stop.because());
        return lines;
    }

    public static String title(Assessment.StopFound stop) {
        return "STOP: " + stop.title();
    }

    /** What goes with what to do now: never to be done, and who must come. */
    static List<String> rest(Assessment.StopFound stop) {
        List<String> lines = new ArrayList<>(never(stop.danger()));
        lines.add(who(stop.danger()));
        return lines;
    }

    static List<String> never(Danger danger) {
        return danger.never().stream().map(n -> "Never: " + n).toList();
    }

    static String who(Danger danger) {
        return "Who must come: " + danger.who() + ".";
    }
}
