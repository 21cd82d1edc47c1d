package neutralpoint.report;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import neutralpoint.document.Decimals;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.report.text.Wrap;
import neutralpoint.workings.SurveyedRadiator;

/** The table of radiators as text, in degrees Celsius, with what the readings of each say. */
public final class RadiatorSheet {
    private static final String FIGURES = " %5s %5s %5s %6s  %s";
    private static final String FLOOR = " %-7s";
    /** All but the name, with the longest state. */
    private static final int BESIDE_NAME = 44;
    /** Under this width name and floor stand on a line above the figures. */
    private static final int ROOM_FOR_NAME = 50;
    private static final int SHORTEST_NAME = 4;
    private static final int LONGEST_NAME = 30;

    private final int width;
    private final int name;
    private final Map<String, String> states;

    private RadiatorSheet(Job job, int width) {
        this.width = width;
        int longest = job.radiators().stream().mapToInt(r -> r.name().length()).max().orElse(0);
        name = Math.max(SHORTEST_NAME, Math.min(Math.min(longest, LONGEST_NAME), width - BESIDE_NAME));
        states = SurveyedRadiator.of(job).stream()
                .collect(Collectors.toMap(SurveyedRadiator::name, SurveyedRadiator::stateShown));
    }

    /**
     * A heading and a row for each radiator, each line with its end; a name too long for its column has a line of its own.
     *
     * @param width in columns, 39 or more
     */
    public static String of(Job job, int width) {
        RadiatorSheet sheet = new RadiatorSheet(job, width);
        return sheet.row("name", "floor", "top", "base", "flow", "return", "state")
                + job.radiators().stream().map(sheet::row).collect(Collectors.joining());
    }

    private String row(Radiator r) {
        Temperatures t = r.temperatures();
        return row(r.name(), r.floor().equals("unknown") ? "-" : r.floor(), shown(t.topCelsius()), shown(t.baseCelsius()),
                shown(t.flowTailCelsius()), shown(t.returnTailCelsius()), states.getOrDefault(r.name(), ""));
    }

    private String row(String place, String floor, Object... figures) {
        String rest = String.format(FIGURES, figures).stripTrailing() + "\n";
        if (width < ROOM_FOR_NAME) {
            return Wrap.to(width, "", "", place + ", " + floor) + "\n" + rest;
        }
        boolean fits = place.length() <= name;
        String first = fits ? place : "";
        return (fits ? "" : Wrap.to(width, "", "", place) + "\n") + first + " ".repeat(name - first.length())
                + String.format(FLOOR, floor) + rest;
    }

    private static String shown(OptionalDouble celsius) {
        return celsius.isEmpty() ? "-" : Decimals.to(1, celsius.getAsDouble());
    }
}
