package neutralpoint.hydronics.pipework;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Root;

/**
 * How a flow shares itself between paths that part at one tee and meet again at another, such as a radiator circuit
 * and a bypass left open: the loss along every path is the same, and their flows add up to the whole.
 */
public final class ParallelPaths {
    private ParallelPaths() {}

    /**
     * The flow in each path.
     *
     * @param totalLitresPerMinute the whole flow, 0 to 10 000 L/min
     * @param lossPascal           for each path its loss, Pa, at a flow in L/min: zero at no flow, finite, ever rising
     * @return L/min, in the order of the paths
     * @throws IllegalArgumentException if the flow is out of range or there is no path
     */
    public static List<Double> split(double totalLitresPerMinute, List<DoubleUnaryOperator> lossPascal) {
        Bounds.within("totalLitresPerMinute", totalLitresPerMinute, 0, 10_000);
        Bounds.within("the number of paths", lossPascal.size(), 1, 1000);
        if (totalLitresPerMinute == 0) {
            return lossPascal.stream().map(loss -> 0.0).toList();
        }
        // The path that alone would carry the whole for the least loss bounds the common loss.
        double mostPascal = lossPascal.stream().mapToDouble(loss -> loss.applyAsDouble(totalLitresPerMinute))
                .min().orElseThrow();
        double commonPascal = Root.between(0, mostPascal, pascal -> lossPascal.stream()
                .mapToDouble(loss -> flowAt(pascal, loss, totalLitresPerMinute)).sum() - totalLitresPerMinute);
        return lossPascal.stream().map(loss -> flowAt(commonPascal, loss, totalLitresPerMinute)).toList();
    }

    private static double flowAt(double pascal, DoubleUnaryOperator lossPascal, double mostLitresPerMinute) {
        return Root.between(0, mostLitresPerMinute, flow -> lossPascal.applyAsDouble(flow) - pascal);
    }
}
