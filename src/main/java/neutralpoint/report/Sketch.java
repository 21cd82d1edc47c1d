package neutralpoint.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
public record Sketch(String system, Set<String> features, List<Part> order, List<String> floors,
        Map<Part, String> figures, Set<Part> unknown) {
    private static final int LONGEST_FIGURE = 60;
    private static final int LONGEST_FLOOR = 16;
    private static final int MOST_FLOORS = 4;

    /**
     * @throws IllegalArgumentException if the boiler is not first, a part is there twice, a combined tee stands beside
     *         a separate feed or vent tee, or words are too long or hold a control character
     */
    public Sketch {
        features = Set.copyOf(features);
        order = List.copyOf(order);
        floors = List.copyOf(floors);
        figures = Map.copyOf(figures);
        unknown = Set.copyOf(unknown);
        require(!order.isEmpty() && order.get(0) == Part.BOILER, "the order " + order + " must begin with the boiler.");
        require(new HashSet<>(order).size() == order.size(), "the order " + order + " must hold each part once.");
        require(!order.contains(Part.COMBINED_TEE) || !order.contains(Part.FEED_TEE) && !order.contains(Part.VENT_TEE),
                "the order " + order + " must hold a combined tee or separate tees, not both.");
        require(floors.size() <= MOST_FLOORS, "there are " + floors.size() + " floors; at most 4 can be drawn.");
        requireWords(floors, LONGEST_FLOOR);
        requireWords(figures.values(), LONGEST_FIGURE);
    }

    /**
     * The usual order of parts for a system, "common practice, no source" except that boiler, vent, feed, pump is the
     * textbook order.
     *
     * @throws IllegalArgumentException if the system is not one of the catalogue's whole systems
     */
    public static Sketch usual(String system, Set<String> features) {
        List<Part> order = UsualOrder.of(system, features);
        boolean close = system.equals("open-vented-close-coupled")
                && order.indexOf(Part.FEED_TEE) == order.indexOf(Part.VENT_TEE) + 1;
        return new Sketch(system, features, order, List.of("first floor", "ground floor"),
                close ? Map.of(Part.FEED_TEE, "150 mm apart or less") : Map.of(), Set.of());
    }

    public Sketch withFigures(Map<Part, String> more) {
        return new Sketch(system, features, order, floors, more, unknown);
    }

    public Sketch withUnknown(Set<Part> notSeen) {
        return new Sketch(system, features, order, floors, figures, notSeen);
    }

    public Sketch withOrder(List<Part> other) {
        return new Sketch(system, features, other, floors, figures, unknown);
    }

    /** Where the pump can neither raise nor lower the pressure: the open feed, or on a sealed system the vessel. */
    public Optional<Part> neutralPoint() {
        List<Part> first = new ArrayList<>(List.of(Part.FEED_TEE, Part.COMBINED_TEE));
        if (sharesTank()) {
            first.add(Part.CYLINDER);
        }
        first.add(Part.VESSEL_TEE);
        return first.stream().filter(order::contains).findFirst();
    }

    /** True where the heating fills from the tank that feeds the taps. */
    boolean sharesTank() {
        return system.equals("single-feed-cylinder") || system.equals("direct-cylinder");
    }

    boolean isThreePort() {
        return features.contains("y-plan") || features.contains("w-plan");
    }

    boolean hasValveOnEachBranch() {
        return !isThreePort() && features.contains("s-plan");
    }

    /** True for a part that sits inside the boiler's case in such a system. */
    boolean inCase(Part part) {
        boolean cased = features.contains("parts-in-boiler-case") || system.equals("system-boiler")
                || system.equals("combination-boiler");
        return cased && Set.of(Part.PUMP, Part.VESSEL_TEE, Part.SAFETY_VALVE, Part.GAUGE).contains(part);
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
