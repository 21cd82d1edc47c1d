package neutralpoint.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.rulebase.Assessment;

/** What an assessed job knows of its pipes: the usual order of its system, changed by what was seen. */
final class SketchOf {
    private SketchOf() {}

    static Sketch of(Assessment a) {
        Sketch usual = Sketch.usual(a.arrangement().id(), Set.copyOf(a.arrangement().features()));
        Job job = a.job();
        Sketch seen = new Sketch(usual.system(), usual.features(), there(order(usual.order(), job), job), floors(usual, job), Map.of(),
                unknown(usual, job));
        Map<Part, String> figures = new HashMap<>(usual.order().equals(seen.order()) ? usual.figures() : Map.of());
        figures(job, figures);
        figures.keySet().retainAll(seen.order());
        return seen.withFigures(figures);
    }

    private static String one(Job job, String finding) {
        return job.answer(finding).map(x -> x instanceof Answer.One o ? o.choice() : "").orElse("");
    }

    /** Feed, vent and pump in the order that was seen. */
    private static List<Part> order(List<Part> usual, Job job) {
        if (!usual.containsAll(List.of(Part.VENT_TEE, Part.FEED_TEE, Part.PUMP))) {
            return usual;
        }
        return switch (one(job, "feed-and-vent-layout")) {
            case "close-before-pump" -> replaced(usual, List.of(Part.VENT_TEE, Part.FEED_TEE, Part.PUMP));
            case "pump-pushes-at-vent" -> replaced(usual, List.of(Part.PUMP, Part.VENT_TEE), List.of(Part.FEED_TEE));
            case "apart-pump-draws-at-vent" -> replaced(usual, List.of(Part.VENT_TEE, Part.PUMP), List.of(Part.FEED_TEE));
            case "throttle-between" -> replaced(usual, List.of(Part.VENT_TEE, Part.PUMP), List.of(Part.FEED_TEE));
            default -> usual;
        };
    }

    /** No vessel where none was found. */
    private static List<Part> there(List<Part> order, Job job) {
        return one(job, "pump-and-vessel-place").equals("pump-no-vessel")
                ? order.stream().filter(part -> part != Part.VESSEL_TEE).toList() : order;
    }

    private static List<Part> replaced(List<Part> usual, List<Part> afterBoiler) {
        return replaced(usual, afterBoiler, List.of());
    }

    private static List<Part> replaced(List<Part> usual, List<Part> afterBoiler, List<Part> onReturn) {
        List<Part> order = new ArrayList<>(usual);
        order.removeAll(afterBoiler);
        order.removeAll(onReturn);
        order.addAll(1, afterBoiler);
        order.addAll(onReturn);
        return order;
    }

    private static List<String> floors(Sketch usual, Job job) {
        Set<String> floors = new TreeSet<>(job.radiators().stream().map(Radiator::floor).filter(f -> !f.equals("unknown")).toList());
        return floors.isEmpty() ? usual.floors()
                : List.of("second", "first", "ground").stream().filter(floors::contains).map(f -> f + " floor").toList();
    }

    private static Set<Part> unknown(Sketch usual, Job job) {
        Set<Part> unknown = new TreeSet<>();
        if (one(job, "feed-and-vent-layout").isEmpty() && one(job, "feed-and-vent-join").isEmpty()) {
            List.of(Part.VENT_TEE, Part.FEED_TEE, Part.COMBINED_TEE).stream().filter(usual.order()::contains).forEach(unknown::add);
        }
        return unknown;
    }

    private static void figures(Job job, Map<Part, String> figures) {
        put(job, "pump-head-m", Part.PUMP, "%s m head", figures);
        put(job, "vent-rise-mm", Part.VENT_TEE, "vent %s mm above the water", figures);
        put(job, "vent-rise-mm", Part.COMBINED_TEE, "vent %s mm above the water", figures);
        put(job, "pressure-cold-bar", Part.GAUGE, "%s bar cold", figures);
        put(job, "vessel-size-litres", Part.VESSEL_TEE, "%s litres", figures);
        put(job, "boiler-output-kw", Part.BOILER, "%s kW", figures);
    }

    private static void put(Job job, String finding, Part part, String words, Map<Part, String> figures) {
        if (job.answer(finding).orElse(null) instanceof Answer.Reading r) {
            figures.put(part, String.format(words, neutralpoint.job.Quantity.shown(r.value())));
        }
    }
}
