package neutralpoint.report;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Moment;
import neutralpoint.report.text.Wrap;
import neutralpoint.rulebase.Assessment;

/** How many of an assessment's cautions are shown with it: a few that people will read, or all of them. */
public enum CautionView {
    /** The first few, where the rest can be asked for by a word. */
    AT_A_PROMPT("type \"cautions\" to read all."),
    /** The first few, where the rest are printed by an option. */
    FROM_FILES("\"assess --cautions\" prints all."),
    /** All, by the moment they belong to. */
    ALL("");

    /** More than this many besides a stop's own are not read at a first look. */
    private static final int BESIDES_THE_STOPS = 2;

    private final String forTheRest;

    CautionView(String forTheRest) {
        this.forTheRest = forTheRest;
    }

    /** What goes under the verdict; a stop's own cautions stand with the stop, and only all of them are repeated here. Empty if there is none. */
    public String of(Assessment a, int width) {
        return String.join("\n", this == ALL ? all(a, width) : few(a, width));
    }

    private List<String> few(Assessment a, int width) {
        List<Caution> others = a.cautions().stream().filter(c -> !a.stopCautions().contains(c)).toList();
        List<Caution> first = others.stream().filter(c -> c.moment() == Moment.BEFORE).limit(BESIDES_THE_STOPS).toList();
        List<String> lines = new ArrayList<>(first.stream().map(c -> line(c, width)).toList());
        int rest = others.size() - first.size();
        if (rest > 0) {
            lines.add(Wrap.to(width, "", "  ", "- " + rest + " more: " + forTheRest));
        }
        return lines;
    }

    private static List<String> all(Assessment a, int width) {
        List<String> lines = new ArrayList<>();
        for (Moment moment : Moment.values()) {
            List<Caution> now = a.cautions().stream().filter(c -> c.moment() == moment).toList();
            if (!now.isEmpty()) {
                lines.add(title(moment));
                now.forEach(c -> lines.add(line(c, width)));
            }
        }
        return lines;
    }

    /** The words a group of cautions stands under. */
    static String title(Moment moment) {
        return switch (moment) {
            case BEFORE -> "Before you touch anything";
            case DURING -> "While you work";
            case LEAVING -> "Before you leave";
        };
    }

    /** A caution whole: what to mind, and who has the last word on it. */
    static String whole(Caution c) {
        return c.text() + " (" + c.authority() + ")";
    }

    private static String line(Caution c, int width) {
        return Wrap.to(width, "", "  ", "- " + whole(c));
    }
}
