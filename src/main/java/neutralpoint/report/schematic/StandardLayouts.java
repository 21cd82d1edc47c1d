package neutralpoint.report.schematic;

import static neutralpoint.report.schematic.Component.BOILER;
import static neutralpoint.report.schematic.Component.BYPASS;
import static neutralpoint.report.schematic.Component.COMBINED_TEE;
import static neutralpoint.report.schematic.Component.CYLINDER;
import static neutralpoint.report.schematic.Component.FEED_TEE;
import static neutralpoint.report.schematic.Component.FILL_POINT;
import static neutralpoint.report.schematic.Component.FILTER;
import static neutralpoint.report.schematic.Component.GAUGE;
import static neutralpoint.report.schematic.Component.MIXING_SET;
import static neutralpoint.report.schematic.Component.PUMP;
import static neutralpoint.report.schematic.Component.RADIATORS;
import static neutralpoint.report.schematic.Component.SAFETY_VALVE;
import static neutralpoint.report.schematic.Component.STORE;
import static neutralpoint.report.schematic.Component.VALVE;
import static neutralpoint.report.schematic.Component.VENT_TEE;
import static neutralpoint.report.schematic.Component.VESSEL_TEE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The order in which water usually meets the parts of each system; common practice, no source. */
final class StandardLayouts {
    private StandardLayouts() {}

    static List<Component> of(String system, Set<String> features) {
        List<Component> order = new ArrayList<>(plain(system));
        if (features.contains("thermal-store")) {
            storeForCylinder(order);
        }
        if (features.contains("under-floor-zones") && order.contains(RADIATORS)) {
            order.add(order.indexOf(RADIATORS), MIXING_SET);
        }
        if (features.contains("gravity-hot-water")) {
            cylinderBeforePump(order, features);
        }
        boolean valved = features.stream().anyMatch(Set.of("y-plan", "s-plan", "w-plan", "single-zone-valve")::contains);
        if (valved && !order.contains(VALVE) && order.contains(RADIATORS)) {
            order.add(order.indexOf(order.contains(MIXING_SET) ? MIXING_SET : RADIATORS), VALVE);
        }
        return List.copyOf(order);
    }

    private static List<Component> plain(String system) {
        return switch (system) {
            case "open-vented-separate", "open-vented-close-coupled" ->
                    List.of(BOILER, VENT_TEE, FEED_TEE, PUMP, VALVE, CYLINDER, RADIATORS);
            case "open-vented-combined" -> List.of(BOILER, COMBINED_TEE, PUMP, VALVE, CYLINDER, RADIATORS);
            case "sealed-separate" -> List.of(BOILER, SAFETY_VALVE, GAUGE, VESSEL_TEE, PUMP, BYPASS, VALVE, CYLINDER,
                    RADIATORS, FILL_POINT, FILTER);
            case "system-boiler" -> List.of(BOILER, SAFETY_VALVE, BYPASS, VALVE, CYLINDER, RADIATORS, FILL_POINT, FILTER,
                    VESSEL_TEE, GAUGE, PUMP);
            case "combination-boiler" -> List.of(BOILER, SAFETY_VALVE, BYPASS, RADIATORS, FILTER, FILL_POINT, VESSEL_TEE,
                    GAUGE, PUMP);
            case "converted-to-sealed" -> List.of(BOILER, SAFETY_VALVE, GAUGE, VESSEL_TEE, PUMP, VALVE, CYLINDER, RADIATORS,
                    FILL_POINT);
            case "single-feed-cylinder", "direct-cylinder" -> List.of(BOILER, CYLINDER, PUMP, RADIATORS);
            case "solid-fuel" -> List.of(BOILER, VENT_TEE, CYLINDER, PUMP, RADIATORS, FEED_TEE);
            case "heat-pump-system" -> List.of(BOILER, SAFETY_VALVE, VALVE, CYLINDER, RADIATORS, FILL_POINT, VESSEL_TEE,
                    GAUGE, PUMP, FILTER);
            default -> throw new IllegalArgumentException("\"" + system + "\" must be one of the catalogue's whole systems.");
        };
    }

    private static void storeForCylinder(List<Component> order) {
        order.remove(CYLINDER);
        order.remove(VALVE);
        order.add(order.contains(RADIATORS) ? order.indexOf(RADIATORS) : order.size(), STORE);
    }

    /** The pair to the cylinder leaves before the pump; the feed then usually joins the return. */
    private static void cylinderBeforePump(List<Component> order, Set<String> features) {
        if (order.contains(CYLINDER) && order.indexOf(PUMP) < order.indexOf(CYLINDER)) {
            order.remove(VALVE);
            order.remove(CYLINDER);
            order.add(order.indexOf(PUMP), CYLINDER);
            if (features.contains("single-zone-valve")) {
                order.add(order.indexOf(CYLINDER), VALVE);
            }
            if (order.remove(FEED_TEE)) {
                order.add(FEED_TEE);
            }
        }
    }
}
