package neutralpoint.report;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.workings.SurveyedRadiator;

/** The table of radiators as text, in degrees Celsius, with what the readings of each say. */
public final class RadiatorSheet {
    /** All but the name: floor, four temperatures and the longest state, with the gaps between. */
    private static final String COLUMNS = " %-7s %5s %5s %5s %6s  %s";
    private static final int BESIDE_NAME = 44;
    private static final int SHORTEST_NAME = 4;
    private static final int LONGEST_NAME = 30;

    private RadiatorSheet() {}

    /**
     * A heading and a row for each radiator; a name too long for its column has a line of its own.
     *
     * @param width in columns; under 48 the rows are longer than it
     */
    public static String of(Job job, int width) {
        int longest = job.radiators().stream().mapToInt(r -> r.name().length()).max().orElse(0);
        int name = Math.max(SHORTEST_NAME, Math.min(Math.min(longest, LONGEST_NAME), width - BESIDE_NAME));
        Map<String, String> states = SurveyedRadiator.of(job).stream()
                .collect(Collectors.toMap(SurveyedRadiator::name, SurveyedRadiator::stateShown));
        StringBuilder out = new StringBuilder(row("name", name, "floor", "top", "base", "flow", "return", "state"));
        job.radiators().forEach(r -> out.append(row(r, name, width, states.getOrDefault(r.name(), ""))));
        return out.toString();
    }

    private static String row(Radiator r, int name, int width, String state) {
        Temperatures t = r.temperatures();
        boolean fits = r.name().length() <= name;
        return (fits ? "" : Wrap.to(width, "", "", r.name()) + "\n") + row(fits ? r.name() : "", name,
                r.floor().equals("unknown") ? "-" : r.floor(), shown(t.topCelsius()), shown(t.baseCelsius()),
                shown(t.flowTailCelsius()), shown(t.returnTailCelsius()), state);
    }

    private static String row(String name, int column, Object... cells) {
        return (name + " ".repeat(column - name.length()) + String.format(COLUMNS, cells)).stripTrailing() + "\n";
    }

    private static String shown(OptionalDouble celsius) {
        return celsius.isEmpty() ? "-" : String.format(Locale.ROOT, "%.1f", celsius.getAsDouble()).replaceAll("\\.0$", "");
    }
}
