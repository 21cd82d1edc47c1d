package neutralpoint.hydronics;

/**
 * One look at the pressure gauge.
 *
 * @param hours        since any start, 0 to 10 000
 * @param bar          gauge pressure, 0 to 10
 * @param waterCelsius mean temperature of the system's water then, 0 to 110
 */
public record GaugeReading(double hours, double bar, double waterCelsius) {
    /** Refuses a value outside its range with an IllegalArgumentException. */
    public GaugeReading {
        InRange.closed("hours", hours, 0, 10_000);
        InRange.closed("bar", bar, 0, 10);
        InRange.closed("waterCelsius", waterCelsius, 0, 110);
    }
}
