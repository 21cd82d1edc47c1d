package neutralpoint.workings;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * Gauge pressure against water temperature on a sealed system.
 *
 * @param expectedBar what a sound vessel would show at a temperature; empty where no air would be left in it
 */
public record PressureLine(double coldCelsius, double coldBar, double hotCelsius, double hotBar, double safetyValveBar,
        DoubleFunction<OptionalDouble> expectedBar) {}
