package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;
import org.hipparchus.analysis.interpolation.LinearInterpolator;

/**
 * A lockshield valve as it typically is. The figures are invented for illustration and stand for no make: they say
 * whether to think of half a turn or of two, and the tail temperatures settle the rest.
 */
public final class GenericLockshield {
    /** Kv fully open, m³/h at 1 bar. */
    public static final double FULLY_OPEN_KV = 1.2;
    /** Turns from shut to fully open. */
    public static final double FULLY_OPEN_TURNS = 4;

    private static final double[] KV = {0, 0.08, 0.16, 0.34, 0.54, 0.74, 1.02, FULLY_OPEN_KV};
    private static final double[] TURNS = {0, 0.25, 0.5, 1, 1.5, 2, 3, FULLY_OPEN_TURNS};

    private GenericLockshield() {}

    /**
     * How far to open it, as an indication.
     *
     * @param kv the Kv it is to have, 0 to 10 000 m³/h at 1 bar; more than it has fully open gives fully open
     * @return turns from shut
     * @throws IllegalArgumentException if the Kv is out of range
     */
    public static double indicativeTurns(double kv) {
        Bounds.within("kv", kv, 0, 10_000);
        return new LinearInterpolator().interpolate(KV, TURNS).value(Math.min(kv, FULLY_OPEN_KV));
    }
}
