package neutralpoint.hydronics.emitter;

import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.pipework.Tube;

/** How much water each part of a heating system holds. */
public final class WaterContent {
    /** The coil of an indirect cylinder: 5 to 10 m of 22 or 28 mm tube (from memory). */
    public static final Estimate CYLINDER_COIL_LITRES = new Estimate(2, 4, 6);

    private WaterContent() {}

    /**
     * Water in a radiator.
     *
     * @param heightMillimetres 100 to 2500
     * @param lengthMillimetres 100 to 6000
     */
    public static Estimate radiatorLitres(RadiatorType type, double heightMillimetres, double lengthMillimetres) {
        return type.litresPerMetre(heightMillimetres).times(metres(lengthMillimetres));
    }

    /**
     * Output of a radiator with the mean of flow and return 50 K over the room.
     *
     * @param heightMillimetres 100 to 2500
     * @param lengthMillimetres 100 to 6000
     */
    public static Estimate radiatorWattsAt50Kelvin(RadiatorType type, double heightMillimetres, double lengthMillimetres) {
        return type.wattsPerMetreAt50Kelvin(heightMillimetres).times(metres(lengthMillimetres));
    }

    /**
     * Water in a length of tube, flow and return counted separately. The length is the guess; the bore is taken
     * as given.
     *
     * @param metres 0 to 10 000
     */
    public static Estimate pipeLitres(Tube tube, Estimate metres) {
        Bounds.within("The shortest length in metres", metres.low(), 0, 10_000);
        Bounds.within("The longest length in metres", metres.high(), 0, 10_000);
        return metres.times(tube.litresPerMetre());
    }

    /** Water in a length of tube that was measured. */
    public static Estimate pipeLitres(Tube tube, double metres) {
        return pipeLitres(tube, Estimate.exactly(metres));
    }

    private static double metres(double lengthMillimetres) {
        return Bounds.within("The radiator's length in millimetres", lengthMillimetres, 100, 6000) / 1000;
    }
}
