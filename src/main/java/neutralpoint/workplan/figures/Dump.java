package neutralpoint.workplan.figures;

import java.util.Optional;

/**
 * One radiator run to the drain until it is clear.
 *
 * @param minutes empty where the supply gives next to nothing
 */
public record Dump(String radiator, Figure litres, Optional<Figure> minutes) {}
