package neutralpoint.hydronics.expansion;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import neutralpoint.hydronics.Bounds;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * How fast a sealed system loses water, from gauge readings taken at whatever temperature the water had. A gauge falls
 * as water cools, with nothing lost; so each reading is first carried, through Boyle's law in the vessel, to what it would
 * have been at the coolest of the readings. A straight line through those gives the rate.
 *
 * @param lossBarPerDay      fall of the cold pressure; negative when it rises, as with a filling loop letting by
 * @param marginBarPerDay    half the width of the 95 % confidence interval; empty for two readings, which say nothing
 *                           about their own scatter
 * @param lossLitresPerDay   the same as water, by the vessel's give at the mean cold pressure
 * @param referenceCelsius   temperature of the coolest reading
 */
public record LeakRate(double lossBarPerDay, OptionalDouble marginBarPerDay, double lossLitresPerDay,
        double referenceCelsius) {
    private static final double LEAST_SPAN_HOURS = 0.1;
    private static final double SIGNIFICANCE = 0.05;
    /** Water shrinks a little from 0 to 4 °C. */
    private static final double LEAST_EXPANSION = -0.001;

    /**
     * The rate by least squares.
     *
     * @param vessel            as it is, with the charge it has
     * @param systemLitres      content of the system, 1 to 5000
     * @param readings          at least two, in any order, spanning at least 0.1 hours
     * @param expansionFraction gain of water from the first temperature to the second, never lower, both in °C;
     *                          -0.001 to 0.1
     * @throws IllegalArgumentException for too few readings or too short a span, and for a reading that would leave the
     *                                  vessel without water at the coolest temperature: there the gauge no longer tells
     *                                  what is lost
     */
    public static LeakRate of(Vessel vessel, double systemLitres, List<TimedPressure> readings,
            DoubleBinaryOperator expansionFraction) {
        if (readings.size() < 2) {
            throw new IllegalArgumentException("readings are " + readings.size() + " but must be at least 2.");
        }
        double spanHours = readings.stream().mapToDouble(TimedPressure::hours).max().orElseThrow()
                - readings.stream().mapToDouble(TimedPressure::hours).min().orElseThrow();
        if (spanHours < LEAST_SPAN_HOURS) {
            throw new IllegalArgumentException("readings span " + tenths(spanHours) + " hours but must span at least "
                    + LEAST_SPAN_HOURS + ".");
        }
        double coolest = readings.stream().mapToDouble(TimedPressure::waterCelsius).min().orElseThrow();
        SimpleRegression line = new SimpleRegression();
        double sumBar = 0;
        for (TimedPressure r : readings) {
            double gain = Bounds.within("expansionFraction", expansionFraction.applyAsDouble(coolest, r.waterCelsius()),
                    LEAST_EXPANSION, 0.1);
            double bar = cooledBar(vessel, r, Bounds.within("systemLitres", systemLitres, 1, 5000) * gain);
            sumBar += bar;
            line.addData(r.hours() / 24, bar);
        }
        double loss = -line.getSlope();
        double litresPerBar = vessel.litresPerBar(sumBar / readings.size(), Vessel.ATMOSPHERE_BAR);
        return new LeakRate(loss, margin(line), loss * litresPerBar, coolest);
    }

    /** True when the pressure falls beyond the doubt of the readings' scatter. */
    public boolean isLosing() {
        return marginBarPerDay.isPresent() && lossBarPerDay > marginBarPerDay.getAsDouble();
    }

    /** True when the pressure rises beyond the doubt of the readings' scatter. */
    public boolean isGaining() {
        return marginBarPerDay.isPresent() && -lossBarPerDay > marginBarPerDay.getAsDouble();
    }

    /** What the gauge would show once the water has cooled and given back so many litres. */
    private static double cooledBar(Vessel vessel, TimedPressure reading, double gainLitres) {
        double water = vessel.waterLitres(reading.bar(), Vessel.ATMOSPHERE_BAR) - gainLitres;
        if (reading.bar() < vessel.preChargeBar() || water < 0) {
            throw new IllegalArgumentException("the reading of " + reading.bar() + " bar at " + tenths(reading.hours())
                    + " hours leaves the vessel without water when cool but must leave some.");
        }
        return vessel.absoluteChargeBar(Vessel.ATMOSPHERE_BAR) * vessel.litres() / (vessel.litres() - water)
                - Vessel.ATMOSPHERE_BAR;
    }

    private static OptionalDouble margin(SimpleRegression line) {
        return line.getN() > 2 ? OptionalDouble.of(line.getSlopeConfidenceInterval(SIGNIFICANCE)) : OptionalDouble.empty();
    }

    private static String tenths(double hours) {
        return String.format(Locale.ROOT, "%.1f", hours);
    }
}
