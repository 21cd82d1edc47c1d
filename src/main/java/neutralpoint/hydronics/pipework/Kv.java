package neutralpoint.hydronics.pipework;

import java.util.Arrays;
import neutralpoint.hydronics.Bounds;

/**
 * The flow factor of a valve: cubic metres an hour of water that pass it at a drop of 1 bar. Source: IEC 60534,
 * flow = Kv · √(drop / relative density), with the density taken relative to 1000 kg/m³.
 */
public final class Kv {
    private static final double WATER_KG_PER_CUBIC_METRE = 1000;
    private static final double LEAST = 1e-6;
    private static final double MOST = 1e4;
    private static final double LEAST_BAR = 1e-6;
    private static final double MOST_BAR = 100;

    private Kv() {}

    /**
     * The Kv of a valve that passes this flow at this drop.
     *
     * @param flowCubicMetresPerHour 0 to 10 000 m³/h
     * @param pressureDropBar        1e-6 to 100 bar
     * @param densityKgPerCubicMetre 500 to 1500 kg/m³
     * @return m³/h at 1 bar
     * @throws IllegalArgumentException if any is out of range
     */
    public static double kv(double flowCubicMetresPerHour, double pressureDropBar, double densityKgPerCubicMetre) {
        checkFlow(flowCubicMetresPerHour);
        Bounds.within("pressureDropBar", pressureDropBar, LEAST_BAR, MOST_BAR);
        return flowCubicMetresPerHour * Math.sqrt(relativeDensity(densityKgPerCubicMetre) / pressureDropBar);
    }

    /**
     * The flow through a valve at a drop.
     *
     * @param kv                     1e-6 to 10 000 m³/h at 1 bar
     * @param pressureDropBar        0 to 100 bar
     * @param densityKgPerCubicMetre 500 to 1500 kg/m³
     * @return m³/h
     * @throws IllegalArgumentException if any is out of range
     */
    public static double flowCubicMetresPerHour(double kv, double pressureDropBar, double densityKgPerCubicMetre) {
        checkKv(kv);
        Bounds.within("pressureDropBar", pressureDropBar, 0, MOST_BAR);
        return kv * Math.sqrt(pressureDropBar / relativeDensity(densityKgPerCubicMetre));
    }

    /**
     * The drop over a valve at a flow.
     *
     * @param flowCubicMetresPerHour 0 to 10 000 m³/h
     * @param kv                     1e-6 to 10 000 m³/h at 1 bar
     * @param densityKgPerCubicMetre 500 to 1500 kg/m³
     * @return bar
     * @throws IllegalArgumentException if any is out of range
     */
    public static double pressureDropBar(double flowCubicMetresPerHour, double kv, double densityKgPerCubicMetre) {
        checkFlow(flowCubicMetresPerHour);
        double perKv = flowCubicMetresPerHour / checkKv(kv);
        return relativeDensity(densityKgPerCubicMetre) * perKv * perKv;
    }

    /**
     * One Kv for valves one after the other: their drops add, so 1/Kv² = Σ 1/Kv².
     *
     * @param kvs at least one, each 1e-6 to 10 000 m³/h at 1 bar
     * @return m³/h at 1 bar
     * @throws IllegalArgumentException if there is none or one is out of range
     */
    public static double inSeries(double... kvs) {
        return 1 / Math.sqrt(Arrays.stream(checkSome(kvs)).map(kv -> 1 / (kv * kv)).sum());
    }

    /**
     * One Kv for valves side by side: their flows add, so Kv = Σ Kv.
     *
     * @param kvs at least one, each 1e-6 to 10 000 m³/h at 1 bar
     * @return m³/h at 1 bar
     * @throws IllegalArgumentException if there is none or one is out of range
     */
    public static double inParallel(double... kvs) {
        return Arrays.stream(checkSome(kvs)).sum();
    }

    private static double[] checkSome(double... kvs) {
        Bounds.within("the number of valves", kvs.length, 1, 1000);
        Arrays.stream(kvs).forEach(Kv::checkKv);
        return kvs;
    }

    private static double checkKv(double kv) {
        return Bounds.within("kv", kv, LEAST, MOST);
    }

    private static void checkFlow(double flowCubicMetresPerHour) {
        Bounds.within("flowCubicMetresPerHour", flowCubicMetresPerHour, 0, 10_000);
    }

    private static double relativeDensity(double densityKgPerCubicMetre) {
        Fluid.checkDensity(densityKgPerCubicMetre);
        return densityKgPerCubicMetre / WATER_KG_PER_CUBIC_METRE;
    }
}
