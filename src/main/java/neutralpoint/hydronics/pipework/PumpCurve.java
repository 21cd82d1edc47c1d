package neutralpoint.hydronics.pipework;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Root;

/**
 * What head a pump gives at each flow, at one speed: a smooth curve through its points that never rises.
 *
 * @param points at least two; the first at no flow, flows strictly rising, heads never rising and never below zero
 */
public record PumpCurve(List<Point> points) {

    /**
     * One point of the curve.
     *
     * @param flowLitresPerMinute 0 to 10 000 L/min
     * @param headMetres          0 to 1000 m
     */
    public record Point(double flowLitresPerMinute, double headMetres) {
        public Point {
            Bounds.within("flowLitresPerMinute", flowLitresPerMinute, 0, 10_000);
            Bounds.within("headMetres", headMetres, 0, 1000);
        }
    }

    public PumpCurve {
        points = List.copyOf(points);
        Bounds.within("the number of points", points.size(), 2, 1000);
        Bounds.within("the first point's flowLitresPerMinute", points.get(0).flowLitresPerMinute(), 0, 0);
        for (int i = 1; i < points.size(); i++) {
            checkFalls(points.get(i - 1), points.get(i));
        }
    }

    /**
     * The head at a flow.
     *
     * @param flowLitresPerMinute 0 to the flow of the last point, L/min
     * @return m
     * @throws IllegalArgumentException if the flow is out of range
     */
    public double headMetres(double flowLitresPerMinute) {
        Bounds.within("flowLitresPerMinute", flowLitresPerMinute, 0, mostFlowLitresPerMinute());
        return curve().applyAsDouble(flowLitresPerMinute);
    }

    /** The flow of the last point, L/min. */
    public double mostFlowLitresPerMinute() {
        return points.get(points.size() - 1).flowLitresPerMinute();
    }

    /**
     * The curve of the same pump at another speed, by the affinity laws.
     *
     * @param speedRatio new speed over old, 0.1 to 2
     * @throws IllegalArgumentException if it is out of range, or a point of the new curve is
     */
    public PumpCurve atSpeed(double speedRatio) {
        return new PumpCurve(points.stream().map(p -> new Point(Affinity.flow(p.flowLitresPerMinute(), speedRatio),
                Affinity.head(p.headMetres(), speedRatio))).toList());
    }

    /**
     * Where the pump runs on a system that loses head = resistance · flow².
     *
     * @param resistanceMetresPerSquareLitrePerMinute 0 to 1e6 m/(L/min)²
     * @return the point on both curves; empty when the system is so open that they do not meet before the last point
     * @throws IllegalArgumentException if the resistance is out of range
     */
    public Optional<Point> dutyPoint(double resistanceMetresPerSquareLitrePerMinute) {
        Bounds.within("resistanceMetresPerSquareLitrePerMinute", resistanceMetresPerSquareLitrePerMinute, 0, 1e6);
        return dutyPoint(flow -> resistanceMetresPerSquareLitrePerMinute * flow * flow);
    }

    /**
     * Where the pump runs on a system.
     *
     * @param systemHeadMetres the head the system takes, m, at a flow in L/min; it must be finite and never fall
     * @return the point on both curves; empty when they do not meet between no flow and the last point
     */
    public Optional<Point> dutyPoint(DoubleUnaryOperator systemHeadMetres) {
        DoubleUnaryOperator curve = curve();
        DoubleUnaryOperator spare = flow -> curve.applyAsDouble(flow) - systemHeadMetres.applyAsDouble(flow);
        double most = mostFlowLitresPerMinute();
        if (spare.applyAsDouble(0) < 0 || spare.applyAsDouble(most) > 0) {
            return Optional.empty();
        }
        double flow = Root.between(0, most, spare);
        return Optional.of(new Point(flow, curve.applyAsDouble(flow)));
    }

    private DoubleUnaryOperator curve() {
        DoubleUnaryOperator curve = MonotoneCurve.through(all(Point::flowLitresPerMinute), all(Point::headMetres));
        // Rounding must not take the head below zero just before the end.
        return flow -> Math.max(0, curve.applyAsDouble(flow));
    }

    private double[] all(ToDoubleFunction<Point> coordinate) {
        return points.stream().mapToDouble(coordinate).toArray();
    }

    private static void checkFalls(Point before, Point after) {
        if (after.flowLitresPerMinute() <= before.flowLitresPerMinute() || after.headMetres() > before.headMetres()) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "The point %s L/min, %s m follows %s L/min, %s m; flow must rise and head must not.",
                    after.flowLitresPerMinute(), after.headMetres(),
                    before.flowLitresPerMinute(), before.headMetres()));
        }
    }
}
