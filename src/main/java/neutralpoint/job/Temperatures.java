package neutralpoint.job;

import java.util.OptionalDouble;

/**
 * Surface readings of one radiator with the heating hot and steady, in degrees Celsius; any of them may be missing.
 *
 * @param topCelsius        middle of the top edge
 * @param baseCelsius       middle of the bottom edge
 * @param flowTailCelsius   the pipe that brings the water
 * @param returnTailCelsius the pipe that takes it away
 */
public record Temperatures(OptionalDouble topCelsius, OptionalDouble baseCelsius, OptionalDouble flowTailCelsius,
        OptionalDouble returnTailCelsius) {

    public static final Temperatures NONE = new Temperatures(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

    public static Temperatures of(double top, double base, double flowTail, double returnTail) {
        return new Temperatures(OptionalDouble.of(top), OptionalDouble.of(base), OptionalDouble.of(flowTail),
                OptionalDouble.of(returnTail));
    }
}
