package neutralpoint.job;

import java.util.List;

/**
 * What a radiator is and how large.
 *
 * @param type              one of {@link #TYPES}; panels are numbered as in EN 442: first digit panels, second rows of fins
 * @param heightMillimetres 100 to 2500
 * @param lengthMillimetres 100 to 6000
 */
public record RadiatorSize(String type, int heightMillimetres, int lengthMillimetres) {
    public static final List<String> TYPES = List.of("type-10", "type-11", "type-20", "type-21", "type-22", "type-33",
            "column-2", "column-3", "column-4", "old-single-panel", "old-double-panel", "towel-rail");
}
