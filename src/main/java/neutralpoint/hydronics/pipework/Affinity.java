package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;

/**
 * The affinity laws of a centrifugal pump: with its speed the flow changes in proportion, the head with the square,
 * the power with the cube. Any unit goes in and the same comes out. A speed ratio is new speed over old, 0.1 to 2.
 */
public final class Affinity {
    private Affinity() {}

    /**
     * The flow at the new speed.
     *
     * @throws IllegalArgumentException if the flow is not 0 to 1e9 or the ratio is out of range
     */
    public static double flow(double flow, double speedRatio) {
        return scaled("flow", flow, speedRatio, 1);
    }

    /**
     * The head at the new speed.
     *
     * @throws IllegalArgumentException if the head is not 0 to 1e9 or the ratio is out of range
     */
    public static double head(double head, double speedRatio) {
        return scaled("head", head, speedRatio, 2);
    }

    /**
     * The power at the new speed.
     *
     * @throws IllegalArgumentException if the power is not 0 to 1e9 or the ratio is out of range
     */
    public static double power(double power, double speedRatio) {
        return scaled("power", power, speedRatio, 3);
    }

    private static double scaled(String name, double value, double speedRatio, int exponent) {
        Bounds.within(name, value, 0, 1e9);
        return value * Math.pow(Bounds.within("speedRatio", speedRatio, 0.1, 2), exponent);
    }
}
