package neutralpoint.report.schematic;

import static neutralpoint.catalogue.Component.CYLINDER;
import static neutralpoint.catalogue.Component.FEED_TEE;
import static neutralpoint.catalogue.Component.MIXING_SET;
import static neutralpoint.catalogue.Component.PUMP;
import static neutralpoint.catalogue.Component.RADIATORS;
import static neutralpoint.catalogue.Component.STORE;
import static neutralpoint.catalogue.Component.VALVE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;

/** The order in which water usually meets the parts of a system: as catalogued, changed by its features; common practice, no source. */
final class StandardLayouts {
    private StandardLayouts() {}

    /** @throws IllegalArgumentException for what is no whole system */
    static List<Component> of(ArrangementKind system, Set<String> features) {
        if (system.feature()) {
            throw new IllegalArgumentException("\"" + system.id() + "\" must be a whole system.");
        }
        List<Component> order = new ArrayList<>(system.order());
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
