package neutralpoint.job;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A radiator of the house, with what was read on it.
 *
 * @param name         the room or place, unique in the house
 * @param floor        ground, first, second, or unknown
 * @param leg          the branch of the pipework it hangs on, in the engineer's own word; empty when not traced
 * @param runMetres    length of pipe from the pump to it
 * @param body         type and size
 * @param valves       open, part-shut, shut, or unknown
 * @param temperatures surface readings
 */
public record Radiator(String name, String floor, String leg, OptionalDouble runMetres, Optional<RadiatorSize> body, String valves,
        Temperatures temperatures) {
    private static final String UNKNOWN = "unknown";
    public static final Set<String> FLOORS = Set.of("ground", "first", "second", UNKNOWN);
    public static final Set<String> VALVES = Set.of("open", "part-shut", "shut", UNKNOWN);

    /** A radiator of which only the place is known. */
    public Radiator(String name, String floor) {
        this(name, floor, "", OptionalDouble.empty(), Optional.empty(), UNKNOWN, Temperatures.NONE);
    }

    /** This radiator with what another table knew of it, where this one says nothing; the readings stay its own. */
    public Radiator completedBy(Radiator before) {
        return new Radiator(name, floor.equals(UNKNOWN) ? before.floor : floor, leg.isEmpty() ? before.leg : leg,
                runMetres.isPresent() ? runMetres : before.runMetres, body.or(before::body), valves.equals(UNKNOWN) ? before.valves : valves,
                temperatures);
    }

    public Radiator withTemperatures(Temperatures readings) {
        return new Radiator(name, floor, leg, runMetres, body, valves, readings);
    }
}
