package neutralpoint.job;

import java.time.LocalDateTime;

/**
 * The pressure gauge, read at some time.
 *
 * @param bar          gauge pressure, 0 to 6
 * @param waterCelsius temperature of the water then, 0 to 110
 */
public record GaugeReading(LocalDateTime at, double bar, double waterCelsius) {}
