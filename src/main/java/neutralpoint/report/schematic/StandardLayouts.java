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
import neutralpoint.catalogue.Ids.ArrangementId;

/** The order in which water usually meets the parts of each system; common practice, no source. */
final class StandardLayouts {
    private StandardLayouts() {}

    static List<Component> of(String system, Set<String> features) {
        List<Component> order = new ArrayList<>(plain(system));
        if (features.contains(ArrangementId.THERMAL_STORE)) {
            storeForCylinder(order);
        }
        if (features.contains(ArrangementId.UNDER_FLOOR_ZONES) && order.contains(RADIATORS)) {
            order.add(order.indexOf(RADIATORS), MIXING_SET);
        }
        if (features.contains(ArrangementId.GRAVITY_HOT_WATER)) {
            cylinderBeforePump(order, features);
        }
        boolean valved = features.stream().anyMatch(Set.of(ArrangementId.Y_PLAN, ArrangementId.S_PLAN, ArrangementId.W_PLAN, ArrangementId.SINGLE_ZONE_VALVE)::contains);
        if (valved && !order.contains(VALVE) && order.contains(RADIATORS)) {
            order.add(order.indexOf(order.contains(MIXING_SET) ? MIXING_SET : RADIATORS), VALVE);
        }
        return List.copyOf(order);
    }

    private static List<Component> plain(String system) {
        return switch (system) {
            case ArrangementId.OPEN_VENTED_SEPARATE, ArrangementId.OPEN_VENTED_CLOSE_COUPLED ->
                    List.of(BOILER, VENT_TEE, FEED_TEE, PUMP, VALVE, CYLINDER, RADIATORS);
            case ArrangementId.OPEN_VENTED_COMBINED -> List.of(BOILER, COMBINED_TEE, PUMP, VALVE, CYLINDER, RADIATORS);
            case ArrangementId.SEALED_SEPARATE -> List.of(BOILER, SAFETY_VALVE, GAUGE, VESSEL_TEE, PUMP, BYPASS, VALVE, CYLINDER,
                    RADIATORS, FILL_POINT, FILTER);
            case ArrangementId.SYSTEM_BOILER -> List.of(BOILER, SAFETY_VALVE, BYPASS, VALVE, CYLINDER, RADIATORS, FILL_POINT, FILTER,
                    VESSEL_TEE, GAUGE, PUMP);
            case ArrangementId.COMBINATION_BOILER -> List.of(BOILER, SAFETY_VALVE, BYPASS, RADIATORS, FILTER, FILL_POINT, VESSEL_TEE,
                    GAUGE, PUMP);
            case ArrangementId.CONVERTED_TO_SEALED -> List.of(BOILER, SAFETY_VALVE, GAUGE, VESSEL_TEE, PUMP, VALVE, CYLINDER, RADIATORS,
                    FILL_POINT);
            case ArrangementId.SINGLE_FEED_CYLINDER, ArrangementId.DIRECT_CYLINDER -> List.of(BOILER, CYLINDER, PUMP, RADIATORS);
            case ArrangementId.SOLID_FUEL -> List.of(BOILER, VENT_TEE, CYLINDER, PUMP, RADIATORS, FEED_TEE);
            case ArrangementId.HEAT_PUMP_SYSTEM -> List.of(BOILER, SAFETY_VALVE, VALVE, CYLINDER, RADIATORS, FILL_POINT, VESSEL_TEE,
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
            if (features.contains(ArrangementId.SINGLE_ZONE_VALVE)) {
                order.add(order.indexOf(CYLINDER), VALVE);
            }
            if (order.remove(FEED_TEE)) {
                order.add(FEED_TEE);
            }
        }
    }
}
