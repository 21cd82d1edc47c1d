package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/**
 * One look at the pressure gauge.
 *
 * @param hours        since any start, 0 to 10 000
 * @param bar          gauge pressure, 0 to 10
 * @param waterCelsius mean temperature of the system's water then, 0 to 110
 */
public record TimedPressure(double hours, double bar, double waterCelsius) {
    /** Refuses a value outside its range with an IllegalArgumentException. */
    public TimedPressure {
        Bounds.within("hours", hours, 0, 10_000);
        Bounds.within("bar", bar, 0, 10);
        Bounds.within("waterCelsius", waterCelsius, 0, 110);
    }
}
