package neutralpoint.hydronics.emitter;

import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.water.HeatCarried;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * What a radiator gives to its room, by EN 442: the output at 50 K times (difference to the room / 50) to the power of
 * the radiator's exponent. The rating regime is flow 75, return 65, room 20 degrees C.
 */
public final class HeatOutput {
    /** The exponent to use where a radiator's own is not known (EN 442; published records run 1.22 to 1.33). */
    public static final double USUAL_EXPONENT = 1.3;

    private static final double RATED_KELVIN = 50;
    /** Logarithmic mean at 75/65/20: 10 / ln(55/45) = 49.83 K. */
    private static final double RATED_LOG_KELVIN = logDeltaTKelvin(75, 65, 20);

    private HeatOutput() {}

    /**
     * Output as a share of the output at 50 K.
     *
     * @param deltaTKelvin mean water over room, 0 to 110
     * @param exponent     1 to 1.6
     */
    public static double factor(double deltaTKelvin, double exponent) {
        Bounds.within("The difference to the room in kelvin", deltaTKelvin, 0, 110);
        return Math.pow(deltaTKelvin / RATED_KELVIN, checkedExponent(exponent));
    }

    /**
     * Arithmetic mean of flow and return, over the room: what EN 442 ratings go by. Right while return over room is
     * more than 0.7 of flow over room (from memory); below that the logarithmic mean is nearer.
     *
     * @param flowCelsius   from the return to 110
     * @param returnCelsius from the room to the flow
     * @param roomCelsius   -5 to 40
     */
    public static double deltaTKelvin(double flowCelsius, double returnCelsius, double roomCelsius) {
        checkFalling(flowCelsius, returnCelsius, roomCelsius);
        return (flowCelsius + returnCelsius) / 2 - roomCelsius;
    }

    /** Logarithmic mean over the room, for the same temperatures; nothing when the return is as cool as the room. */
    public static double logDeltaTKelvin(double flowCelsius, double returnCelsius, double roomCelsius) {
        checkFalling(flowCelsius, returnCelsius, roomCelsius);
        double drop = flowCelsius - returnCelsius;
        double least = returnCelsius - roomCelsius;
        if (drop == 0 || least == 0) {
            return least;
        }
        // log1p keeps the figure whole as the drop goes to nothing, where ln(a/b) would lose it.
        return drop / Math.log1p(drop / least);
    }

    /**
     * Output in watts by the arithmetic mean.
     *
     * @param heightMillimetres 100 to 2500
     * @param lengthMillimetres 100 to 6000
     */
    public static Estimate watts(RadiatorType type, double heightMillimetres, double lengthMillimetres, double flowCelsius,
            double returnCelsius, double roomCelsius) {
        return WaterContent.radiatorWattsAt50Kelvin(type, heightMillimetres, lengthMillimetres)
                .times(factor(deltaTKelvin(flowCelsius, returnCelsius, roomCelsius), type.exponent()));
    }

    /**
     * The return temperature at which a radiator gives up just what its flow brings: heat given by the logarithmic mean
     * equals heat carried by water near 65 degrees C.
     *
     * @param wattsAt50Kelvin     10 to 20 000
     * @param exponent            1 to 1.6
     * @param flowCelsius         more than 1 K above the room, to 110
     * @param roomCelsius         -5 to 40
     * @param flowLitresPerMinute 0.001 to 100
     * @return between room and flow, to a millionth of a kelvin
     */
    public static double returnCelsius(double wattsAt50Kelvin, double exponent, double flowCelsius, double roomCelsius,
            double flowLitresPerMinute) {
        Bounds.within("The output at 50 K in watts", wattsAt50Kelvin, 10, 20_000);
        Bounds.within("The flow in litres per minute", flowLitresPerMinute, 0.001, 100);
        checkedExponent(exponent);
        Bounds.within("The room in degrees C", roomCelsius, -5, 40);
        Bounds.within("The flow in degrees C", flowCelsius, roomCelsius + 1, 110);
        // A return at the room's temperature would give nothing, at the flow's bring nothing: one balance lies between.
        return new BrentSolver(1e-12, 1e-7, 1e-12).solve(1000,
                t -> wattsAt50Kelvin * logFactor(flowCelsius, t, roomCelsius, exponent)
                        - HeatCarried.watts(flowLitresPerMinute, flowCelsius - t), roomCelsius, flowCelsius);
    }

    private static double logFactor(double flowCelsius, double returnCelsius, double roomCelsius, double exponent) {
        return Math.pow(logDeltaTKelvin(flowCelsius, returnCelsius, roomCelsius) / RATED_LOG_KELVIN, exponent);
    }

    private static double checkedExponent(double exponent) {
        return Bounds.within("The radiator exponent", exponent, 1, 1.6);
    }

    private static void checkFalling(double flowCelsius, double returnCelsius, double roomCelsius) {
        Bounds.within("The room in degrees C", roomCelsius, -5, 40);
        Bounds.within("The flow in degrees C", flowCelsius, roomCelsius, 110);
        Bounds.within("The return in degrees C", returnCelsius, roomCelsius, flowCelsius);
    }
}
