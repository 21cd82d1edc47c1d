package neutralpoint.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import neutralpoint.document.Csv;
import neutralpoint.rulebase.Assessment;

/** What many homes come to together: the homes with a danger by name, and counts of everything else. */
public final class Tally {
    private static final List<String> HEADINGS = List.of("what", "id", "title", "homes");
    /** So many homes or courses are named on the screen; the file has them all. */
    private static final int NAMED = 5;

    private final Map<String, Map<Titled, Integer>> counts = new LinkedHashMap<>();
    private final List<Titled> stopped = new ArrayList<>();
    private int homes;
    private int refused;

    /** Something that is counted. */
    public record Titled(String id, String title) {}

    /** What of one assessment is counted, so that the assessment itself need not be kept. */
    public record TalliedHome(String job, List<Titled> dangers, Titled course, Titled chief, Titled arrangement) {

        public static TalliedHome of(Assessment a) {
            return new TalliedHome(a.job().id(), a.stops().stream().map(s -> new Titled(s.id(), s.title())).toList(),
                    new Titled(a.verdict().course().id(), a.verdict().course().title()),
                    a.verdict().chief().map(c -> new Titled(c.id(), c.cause().title())).orElse(new Titled("", "no cause stands out")),
                    known(a.arrangement()));
        }

        private static Titled known(Assessment.RecognisedSystem system) {
            return system.status().equals("settled") || system.status().equals("likely")
                    ? new Titled(system.id(), system.title()) : new Titled("", "not clear yet");
        }
    }

    public void add(TalliedHome line) {
        homes++;
        if (!line.dangers().isEmpty()) {
            stopped.add(new Titled(line.job(), line.dangers().stream().map(Titled::title).collect(Collectors.joining("; "))));
        }
        line.dangers().forEach(d -> count("danger", d));
        count("course", line.course());
        count("chief cause", line.chief());
        count("arrangement", line.arrangement());
    }

    /** One line that could not be used. */
    public void refuse() {
        refused++;
    }

    private void count(String what, Titled entry) {
        counts.computeIfAbsent(what, w -> new TreeMap<>(Comparator.comparing(Titled::id))).merge(entry, 1, Integer::sum);
    }

    private List<Map.Entry<Titled, Integer>> mostFirst(String what) {
        return counts.getOrDefault(what, Map.of()).entrySet().stream()
                .sorted(Map.Entry.<Titled, Integer>comparingByValue().reversed().thenComparing(e -> e.getKey().id())).toList();
    }

    /** As a table: the homes where work stops, in the order they were read, then the counts, most first. */
    public String csv() {
        List<List<String>> rows = new ArrayList<>();
        stopped.forEach(s -> rows.add(List.of("home with a stop", s.id(), s.title(), "1")));
        for (String what : List.of("danger", "course", "chief cause", "arrangement")) {
            mostFirst(what).forEach(e -> rows.add(List.of(what, e.getKey().id(), e.getKey().title(), String.valueOf(e.getValue()))));
        }
        return Csv.write(HEADINGS, rows);
    }

    /** As a few lines, what cannot wait first. */
    public String text() {
        StringBuilder out = new StringBuilder();
        if (!stopped.isEmpty()) {
            out.append("Work stops in ").append(number(stopped.size(), "home")).append(": ")
                    .append(stopped.stream().limit(NAMED).map(s -> s.id() + " (" + s.title() + ")").collect(Collectors.joining(", ")))
                    .append(stopped.size() > NAMED ? " and " + (stopped.size() - NAMED) + " more" : "").append(".\n");
        }
        out.append("Judged ").append(number(homes, "home"));
        out.append(refused == 0 ? ".\n" : "; " + number(refused, "line") + " could not be used.\n");
        if (homes > 0) {
            out.append("Courses: ").append(mostFirst("course").stream().limit(NAMED)
                    .map(e -> e.getKey().title().toLowerCase(Locale.ROOT) + " " + e.getValue()).collect(Collectors.joining(", "))).append(".\n");
        }
        return out.toString();
    }

    private static String number(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
