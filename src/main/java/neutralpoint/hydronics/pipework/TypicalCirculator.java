package neutralpoint.hydronics.pipework;

import java.util.List;
import java.util.stream.IntStream;
import neutralpoint.hydronics.Bounds;

/**
 * Three-setting domestic circulators as they are typically met. The curves are invented for illustration and stand for
 * no make: full speed is a plain falling curve, and the lower settings follow from it by the affinity laws.
 */
public enum TypicalCirculator {
    FIVE_METRE(5.0, 4.7, 4.1, 3.2, 2.1, 0.9, 0),
    SIX_METRE(6.0, 5.7, 5.1, 4.2, 3.0, 1.6, 0);

    private static final double FLOW_STEP_LITRES_PER_MINUTE = 8;
    private static final List<Double> SPEED_RATIOS = List.of(0.65, 0.85, 1.0);

    private final double[] headsMetres;

    TypicalCirculator(double... headsMetres) {
        this.headsMetres = headsMetres;
    }

    /**
     * The curve at a setting.
     *
     * @param setting 1 (slowest) to 3 (full speed)
     * @throws IllegalArgumentException if there is no such setting
     */
    public PumpCurve atSetting(int setting) {
        Bounds.within("setting", setting, 1, SPEED_RATIOS.size());
        List<PumpCurve.Point> points = IntStream.range(0, headsMetres.length)
                .mapToObj(i -> new PumpCurve.Point(i * FLOW_STEP_LITRES_PER_MINUTE, headsMetres[i])).toList();
        return new PumpCurve(points).atSpeed(SPEED_RATIOS.get(setting - 1));
    }
}
