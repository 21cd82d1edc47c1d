package neutralpoint;

import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import neutralpoint.job.Temperatures;

/** Radiators on the ground floor, each with what a test says of it. */
public final class Radiators {
    private static final String FLOOR = "ground";

    private Radiators() {}

    /** Read in °C at top and base and at both tails. */
    public static Radiator read(String name, double top, double base, double flowTail, double returnTail) {
        return new Radiator(name, FLOOR).withTemperatures(Temperatures.of(top, base, flowTail, returnTail));
    }

    /** Tails boxed in. */
    public static Radiator face(String name, double top, double base) {
        return new Radiator(name, FLOOR).withTemperatures(
                new Temperatures(OptionalDouble.of(top), OptionalDouble.of(base), OptionalDouble.empty(), OptionalDouble.empty()));
    }

    /** Not read, of a type and a size in mm. */
    public static Radiator sized(String name, String type, int height, int length) {
        return sized(new Radiator(name, FLOOR), type, height, length);
    }

    public static Radiator sized(Radiator r, String type, int height, int length) {
        return new Radiator(r.name(), r.floor(), r.leg(), r.runMetres(), Optional.of(new RadiatorSize(type, height, length)), r.valves(),
                r.temperatures());
    }

    /** At the end of so many metres of pipe from the pump. */
    public static Radiator atRun(Radiator r, double metres) {
        return new Radiator(r.name(), r.floor(), r.leg(), OptionalDouble.of(metres), r.body(), r.valves(), r.temperatures());
    }

    public static Radiator withValves(Radiator r, String valves) {
        return new Radiator(r.name(), r.floor(), r.leg(), r.runMetres(), r.body(), valves, r.temperatures());
    }
}
