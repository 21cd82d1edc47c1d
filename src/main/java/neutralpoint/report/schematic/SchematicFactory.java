package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.rulebase.Assessment;

/** What an assessed job knows of its pipes: the usual order of its system, changed by what was seen. */
public final class SchematicFactory {
    private SchematicFactory() {}

    public static Schematic of(Assessment a, Catalogue catalogue) {
        Schematic usual = Schematic.usual(catalogue.arrangement(a.arrangement().id()), Set.copyOf(a.arrangement().features()));
        Job job = a.job();
        Schematic seen = new Schematic(usual.system(), usual.features(), there(order(usual.order(), job), job), floors(usual, job), Map.of(),
                unknown(usual, job));
        Map<Component, String> figures = new HashMap<>(usual.order().equals(seen.order()) ? usual.figures() : Map.of());
        figures(job, figures);
        figures.keySet().retainAll(seen.order());
        return seen.withFigures(figures);
    }

    private static String one(Job job, String finding) {
        return job.answer(finding).map(x -> x instanceof Answer.One o ? o.choice() : "").orElse("");
    }

    /** Feed, vent and pump in the order that was seen. */
    private static List<Component> order(List<Component> usual, Job job) {
        if (!usual.containsAll(List.of(Component.VENT_TEE, Component.FEED_TEE, Component.PUMP))) {
            return usual;
        }
        return switch (one(job, FindingId.FEED_AND_VENT_LAYOUT)) {
            case "close-before-pump" -> replaced(usual, List.of(Component.VENT_TEE, Component.FEED_TEE, Component.PUMP));
            case "pump-pushes-at-vent" -> replaced(usual, List.of(Component.PUMP, Component.VENT_TEE), List.of(Component.FEED_TEE));
            case "apart-pump-draws-at-vent" -> replaced(usual, List.of(Component.VENT_TEE, Component.PUMP), List.of(Component.FEED_TEE));
            case "throttle-between" -> replaced(usual, List.of(Component.VENT_TEE, Component.PUMP), List.of(Component.FEED_TEE));
            default -> usual;
        };
    }

    /** No vessel where none was found. */
    private static List<Component> there(List<Component> order, Job job) {
        return one(job, FindingId.PUMP_AND_VESSEL_PLACE).equals("pump-no-vessel")
                ? order.stream().filter(part -> part != Component.VESSEL_TEE).toList() : order;
    }

    private static List<Component> replaced(List<Component> usual, List<Component> afterBoiler) {
        return replaced(usual, afterBoiler, List.of());
    }

    private static List<Component> replaced(List<Component> usual, List<Component> afterBoiler, List<Component> onReturn) {
        List<Component> order = new ArrayList<>(usual);
        order.removeAll(afterBoiler);
        order.removeAll(onReturn);
        order.addAll(1, afterBoiler);
        order.addAll(onReturn);
        return order;
    }

    private static List<String> floors(Schematic usual, Job job) {
        Set<String> floors = new TreeSet<>(job.radiators().stream().map(Radiator::floor).filter(f -> !f.equals("unknown")).toList());
        return floors.isEmpty() ? usual.floors()
                : List.of("second", "first", "ground").stream().filter(floors::contains).map(f -> f + " floor").toList();
    }

    private static Set<Component> unknown(Schematic usual, Job job) {
        Set<Component> unknown = new TreeSet<>();
        if (one(job, FindingId.FEED_AND_VENT_LAYOUT).isEmpty() && one(job, FindingId.FEED_AND_VENT_JOIN).isEmpty()) {
            List.of(Component.VENT_TEE, Component.FEED_TEE, Component.COMBINED_TEE).stream().filter(usual.order()::contains).forEach(unknown::add);
        }
        return unknown;
    }

    private static void figures(Job job, Map<Component, String> figures) {
        put(job, FindingId.PUMP_HEAD_M, Component.PUMP, "%s m head", figures);
        put(job, FindingId.VENT_RISE_MM, Component.VENT_TEE, "vent %s mm above the water", figures);
        put(job, FindingId.VENT_RISE_MM, Component.COMBINED_TEE, "vent %s mm above the water", figures);
        put(job, FindingId.PRESSURE_COLD_BAR, Component.GAUGE, "%s bar cold", figures);
        put(job, FindingId.VESSEL_SIZE_LITRES, Component.VESSEL_TEE, "%s litres", figures);
        put(job, FindingId.BOILER_OUTPUT_KW, Component.BOILER, "%s kW", figures);
    }

    private static void put(Job job, String finding, Component part, String words, Map<Component, String> figures) {
        if (job.answer(finding).orElse(null) instanceof Answer.Reading r) {
            figures.put(part, String.format(words, Decimals.given(r.value())));
        }
    }
}
