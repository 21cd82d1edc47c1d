package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;

/**
 * What is known of one system's pipes, ready to be drawn.
 *
 * @param system   the whole system, by its id in the catalogue
 * @param features ids of the features it has
 * @param order    the parts in the order water meets them, from the boiler's flow round to its return; the boiler first
 * @param floors   floors that have radiators, the highest first, at most four; none if they are not known
 * @param figures  words or a reading to print beside a part, at most 60 characters
 * @param unknown  parts that belong here but have not been seen
 */
public record Schematic(String system, Set<String> features, List<Component> order, List<String> floors,
        Map<Component, String> figures, Set<Component> unknown) {
    private static final int LONGEST_FIGURE = 60;
    private static final int LONGEST_FLOOR = 16;
    private static final int MOST_FLOORS = 4;

    /**
     * @throws IllegalArgumentException if the boiler is not first, a part is there twice, a combined tee stands beside
     *         a separate feed or vent tee, or words are too long or hold a control character
     */
    public Schematic {
        features = Set.copyOf(features);
        order = List.copyOf(order);
        floors = List.copyOf(floors);
        figures = Map.copyOf(figures);
        unknown = Set.copyOf(unknown);
        require(!order.isEmpty() && order.get(0) == Component.BOILER, "the order " + order + " must begin with the boiler.");
        require(new HashSet<>(order).size() == order.size(), "the order " + order + " must hold each part once.");
        require(!order.contains(Component.COMBINED_TEE) || !order.contains(Component.FEED_TEE) && !order.contains(Component.VENT_TEE),
                "the order " + order + " must hold a combined tee or separate tees, not both.");
        require(floors.size() <= MOST_FLOORS, "there are " + floors.size() + " floors; at most 4 can be drawn.");
        requireWords(floors, LONGEST_FLOOR);
        requireWords(figures.values(), LONGEST_FIGURE);
    }

    /**
     * The usual order of parts for a system, "common practice, no source" except that boiler, vent, feed, pump is the
     * textbook order.
     *
     * @throws IllegalArgumentException if it is a feature and no whole system
     */
    public static Schematic usual(ArrangementKind system, Set<String> features) {
        List<Component> order = StandardLayouts.of(system, features);
        boolean close = system.id().equals(ArrangementId.OPEN_VENTED_CLOSE_COUPLED)
                && order.indexOf(Component.FEED_TEE) == order.indexOf(Component.VENT_TEE) + 1;
        return new Schematic(system.id(), features, order, List.of("first floor", "ground floor"),
                close ? Map.of(Component.FEED_TEE, "150 mm apart or less") : Map.of(), Set.of());
    }

    public Schematic withFigures(Map<Component, String> more) {
        return new Schematic(system, features, order, floors, more, unknown);
    }

    public Schematic withUnknown(Set<Component> notSeen) {
        return new Schematic(system, features, order, floors, figures, notSeen);
    }

    public Schematic withOrder(List<Component> other) {
        return new Schematic(system, features, other, floors, figures, unknown);
    }

    /** Where the pump can neither raise nor lower the pressure: the open feed, or on a sealed system the vessel. */
    public Optional<Component> neutralPoint() {
        List<Component> first = new ArrayList<>(List.of(Component.FEED_TEE, Component.COMBINED_TEE));
        if (sharesTank()) {
            first.add(Component.CYLINDER);
        }
        first.add(Component.VESSEL_TEE);
        return first.stream().filter(order::contains).findFirst();
    }

    /** True where the heating fills from the tank that feeds the taps. */
    boolean sharesTank() {
        return system.equals(ArrangementId.SINGLE_FEED_CYLINDER) || system.equals(ArrangementId.DIRECT_CYLINDER);
    }

    boolean isThreePort() {
        return features.contains(ArrangementId.Y_PLAN) || features.contains(ArrangementId.W_PLAN);
    }

    boolean hasValveOnEachBranch() {
        return !isThreePort() && features.contains(ArrangementId.S_PLAN);
    }

    /** True for a part that sits inside the boiler's case in such a system. */
    boolean inCase(Component part) {
        boolean cased = features.contains(ArrangementId.PARTS_IN_BOILER_CASE) || system.equals(ArrangementId.SYSTEM_BOILER)
                || system.equals(ArrangementId.COMBINATION_BOILER);
        return cased && Set.of(Component.PUMP, Component.VESSEL_TEE, Component.SAFETY_VALVE, Component.GAUGE).contains(part);
    }

    private static void requireWords(Collection<String> all, int longest) {
        for (String words : all) {
            require(!words.isBlank() && words.length() <= longest && words.chars().noneMatch(Character::isISOControl),
                    "the words \"" + words.replaceAll("\\p{Cntrl}", "?") + "\" must be 1 to " + longest
                            + " characters on one line.");
        }
    }

    private static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }
}
