package neutralpoint.hydronics.emitter;

import java.util.OptionalDouble;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.water.Water;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;

/**
 * Warming a whole system from cold: what its water and metal take, and how long a source of heat needs while the
 * radiators already give some of it to the rooms. Arguments outside their range are refused with
 * {@link IllegalArgumentException}.
 */
public final class HeatUp {
    private static final double KILOJOULES_PER_KILOWATT_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;
    private static final double LITRES_PER_CUBIC_METRE = 1000;
    /** A source only just above what the radiators give is taken not to get there. Judgement, no source. */
    private static final double LEAST_SURPLUS = 1.05;

    private HeatUp() {}

    /**
     * Heat to warm the water and the metal around it: mass x heat capacity x rise, the water's own figures (IAPWS-IF97),
     * and the metal as a share of the water.
     *
     * @param litres      water content when cold, 0 to 5000
     * @param metalShare  what the metal takes over what the water takes, 0 to 2
     * @param fromCelsius 0 to 100
     * @param toCelsius   from the first to 110
     */
    public static double kilowattHours(double litres, double metalShare, double fromCelsius, double toCelsius) {
        checkRise(fromCelsius, toCelsius);
        double kilograms = Bounds.within("The content in litres", litres, 0, 5000) / LITRES_PER_CUBIC_METRE
                * Water.densityKgPerCubicMetre(fromCelsius, Water.USUAL_BAR_ABSOLUTE);
        double capacity = Water.heatCapacityKilojoulesPerKgKelvin((fromCelsius + toCelsius) / 2, Water.USUAL_BAR_ABSOLUTE);
        return kilograms * capacity * (toCelsius - fromCelsius) * (1 + Bounds.within("The metal's share", metalShare, 0, 2))
                / KILOJOULES_PER_KILOWATT_HOUR;
    }

    /**
     * Time to warm up: the heat for each kelvin over what is left of the power at that temperature, summed over the
     * rise. Radiators give the rooms nothing until they are warmer than these, then by the EN 442 law.
     *
     * @param kilowattHours     heat to put in, 0 to 1000
     * @param kilowatts         power of the source, above 0 to 200
     * @param ratedKilowatts    output of all radiators at 50 K over the room, 0 to 10 000
     * @param fromCelsius       0 to 100
     * @param toCelsius         from the first to 110
     * @param roomCelsius       0 to 40
     * @return empty when the radiators give away as much as the source brings before it gets there
     */
    public static OptionalDouble minutes(double kilowattHours, double kilowatts, double ratedKilowatts, double fromCelsius,
            double toCelsius, double roomCelsius) {
        checkRise(fromCelsius, toCelsius);
        Bounds.within("The heat in kilowatt hours", kilowattHours, 0, 1000);
        Bounds.above("The power in kilowatts", kilowatts, 0, 200);
        Bounds.within("The radiators' output in kilowatts", ratedKilowatts, 0, 10_000);
        Bounds.within("The room in degrees C", roomCelsius, 0, 40);
        if (kilowatts < LEAST_SURPLUS * givenToRooms(ratedKilowatts, toCelsius, roomCelsius)) {
            return OptionalDouble.empty();
        }
        if (toCelsius == fromCelsius) {
            return OptionalDouble.of(0);
        }
        double hours = kilowattHours / (toCelsius - fromCelsius) * new IterativeLegendreGaussIntegrator(8, 1e-6, 1e-9)
                .integrate(100_000, t -> 1 / (kilowatts - givenToRooms(ratedKilowatts, t, roomCelsius)), fromCelsius, toCelsius);
        return OptionalDouble.of(hours * MINUTES_PER_HOUR);
    }

    private static double givenToRooms(double ratedKilowatts, double celsius, double roomCelsius) {
        return ratedKilowatts * HeatOutput.factor(Math.max(0, celsius - roomCelsius), HeatOutput.USUAL_EXPONENT);
    }

    private static void checkRise(double fromCelsius, double toCelsius) {
        Bounds.within("The start in degrees C", fromCelsius, 0, 100);
        Bounds.within("The end in degrees C", toCelsius, fromCelsius, 110);
    }
}
