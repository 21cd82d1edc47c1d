package neutralpoint.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import neutralpoint.workings.SurveyedRadiator;

/**
 * The radiators of a house as they were read, floor by floor: from top to base and from flow tail to return tail, in
 * whole degrees Celsius. With colour each is a strip between its figures, without it the same in words.
 */
public final class HeatStrip {
    /** All of a line of strips but name and strips: indent, four figures, gaps and the longest state. */
    private static final int BESIDE_STRIPS = 32;
    /** Under this width a name stands on a line of its own. */
    private static final int ROOM_FOR_NAME = 56;
    private static final int LONGEST_NAME = 13;
    private static final int LONGEST_FACE = 16;
    private static final String INDENT = "  ";
    /** Top, base, tails and state. */
    private static final int WORDS = 4;

    private final DisplayOptions look;
    private final int nameColumn;
    private final int face;
    private final int tails;
    private final Map<String, String> states;
    private final int[] wordColumns;

    private HeatStrip(Job job, DisplayOptions look) {
        this.look = look;
        nameColumn = look.width() < ROOM_FOR_NAME ? 0
                : job.radiators().stream().mapToInt(r -> r.name().length()).filter(length -> length <= LONGEST_NAME).max().orElse(0);
        int room = look.width() - BESIDE_STRIPS - nameColumn;
        face = Math.min(LONGEST_FACE, Math.max(1, room * 2 / 3));
        tails = Math.min(LONGEST_FACE / 2, Math.max(1, room - face));
        states = SurveyedRadiator.of(job).stream()
                .collect(Collectors.toMap(SurveyedRadiator::name, SurveyedRadiator::stateShown));
        List<List<String>> words = job.radiators().stream().map(this::words).toList();
        wordColumns = IntStream.range(0, WORDS).map(i -> words.stream().mapToInt(w -> w.get(i).length()).max().orElse(0)).toArray();
    }

    /** Every radiator with a temperature, each line with its end; empty when none has one. */
    public static String of(Job job, DisplayOptions look) {
        List<Radiator> read = job.radiators().stream().filter(HeatStrip::isRead).toList();
        if (read.isEmpty()) {
            return "";
        }
        HeatStrip strips = new HeatStrip(job.withRadiators(read), look);
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, List<Radiator>> floor : Floors.of(read).entrySet()) {
            lines.add(floor.getKey());
            floor.getValue().forEach(r -> lines.add(strips.line(r)));
        }
        if (look.colour()) {
            lines.add(0, strips.headings());
            lines.add(INDENT + TemperatureBand.legend(look.width() < ROOM_FOR_NAME ? "\n" + INDENT : INDENT));
        }
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static boolean isRead(Radiator r) {
        Temperatures t = r.temperatures();
        return Stream.of(t.topCelsius(), t.baseCelsius(), t.flowTailCelsius(), t.returnTailCelsius()).anyMatch(OptionalDouble::isPresent);
    }

    private String line(Radiator r) {
        String rest = look.colour() ? strips(r) : inColumns(words(r));
        return r.name().length() <= nameColumn
                ? (INDENT + padded(r.name(), nameColumn) + rest).stripTrailing()
                : Wrap.to(look.width(), INDENT, INDENT, r.name()) + "\n" + (INDENT + " ".repeat(nameColumn) + rest).stripTrailing();
    }

    private String headings() {
        String heads = String.format("  %s top%" + (face + 5) + "s  flow%" + (tails + 4) + "s", " ".repeat(nameColumn), "base", "return");
        return tails < 3 ? INDENT + "top to base, flow to return" : heads;
    }

    private String strips(Radiator r) {
        Temperatures t = r.temperatures();
        return " " + figure(t.topCelsius()) + " " + strip(t.topCelsius(), t.baseCelsius(), face) + " " + figure(t.baseCelsius())
                + "  " + figure(t.flowTailCelsius()) + " " + strip(t.flowTailCelsius(), t.returnTailCelsius(), tails) + " "
                + figure(t.returnTailCelsius()) + "  " + states.getOrDefault(r.name(), "");
    }

    private static String strip(OptionalDouble from, OptionalDouble to, int cells) {
        return from.isPresent() && to.isPresent() ? TemperatureBand.strip(from.getAsDouble(), to.getAsDouble(), cells) : " ".repeat(cells);
    }

    private static String figure(OptionalDouble celsius) {
        return String.format("%3s", shown(celsius));
    }

    private List<String> words(Radiator r) {
        Temperatures t = r.temperatures();
        return List.of(word("top", t.topCelsius()), word("base", t.baseCelsius()), tails(t), states.getOrDefault(r.name(), ""));
    }

    /** In columns where they fit, otherwise one after the other. */
    private String inColumns(List<String> words) {
        int width = INDENT.length() * (WORDS + 1) + nameColumn + IntStream.of(wordColumns).sum();
        if (width > look.width()) {
            String together = words.stream().filter(w -> !w.isEmpty()).collect(Collectors.joining(" ", "  ", ""));
            return Wrap.to(look.width() - nameColumn - INDENT.length(), "", INDENT + INDENT + " ".repeat(nameColumn), together);
        }
        return IntStream.range(0, WORDS).mapToObj(i -> INDENT + padded(words.get(i), wordColumns[i])).collect(Collectors.joining());
    }

    private static String tails(Temperatures t) {
        if (t.flowTailCelsius().isPresent() && t.returnTailCelsius().isPresent()) {
            return "tails " + shown(t.flowTailCelsius()) + "/" + shown(t.returnTailCelsius());
        }
        return word("flow tail", t.flowTailCelsius()) + word("return tail", t.returnTailCelsius());
    }

    private static String word(String what, OptionalDouble celsius) {
        return celsius.isPresent() ? what + " " + shown(celsius) : "";
    }

    private static String shown(OptionalDouble celsius) {
        return celsius.isPresent() ? String.valueOf(Math.round(celsius.getAsDouble())) : "-";
    }

    private static String padded(String name, int width) {
        return name + " ".repeat(Math.max(0, width - name.length()));
    }
}
