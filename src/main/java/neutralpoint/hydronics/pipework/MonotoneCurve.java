package neutralpoint.hydronics.pipework;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * A smooth curve through points that nowhere rises if the points do not, nor falls if they do not. Cubic pieces with
 * slopes after Fritsch and Butland (1984, from memory): at each inner point the weighted harmonic mean of the slopes beside it.
 */
final class MonotoneCurve {
    private MonotoneCurve() {}

    /**
     * @param x at least two places, strictly rising
     * @param y the values there
     * @return defined from the first place to the last
     */
    static DoubleUnaryOperator through(double[] x, double[] y) {
        int pieces = x.length - 1;
        double[] width = IntStream.range(0, pieces).mapToDouble(i -> x[i + 1] - x[i]).toArray();
        double[] chord = IntStream.range(0, pieces).mapToDouble(i -> (y[i + 1] - y[i]) / width[i]).toArray();
        PolynomialFunction[] cubics = IntStream.range(0, pieces)
                .mapToObj(i -> cubic(y[i], slope(width, chord, i), slope(width, chord, i + 1), chord[i], width[i]))
                .toArray(PolynomialFunction[]::new);
        PolynomialSplineFunction spline = new PolynomialSplineFunction(x, cubics);
        // A cubic may miss the end it was made for by a rounding error; the last point is to be met exactly.
        return at -> at == x[pieces] ? y[pieces] : spline.value(at);
    }

    private static double slope(double[] width, double[] chord, int point) {
        if (point == 0) {
            return chord[0];
        }
        if (point == chord.length) {
            return chord[point - 1];
        }
        double before = chord[point - 1];
        double after = chord[point];
        if (before * after <= 0) {
            return 0;
        }
        double weightBefore = 2 * width[point] + width[point - 1];
        double weightAfter = width[point] + 2 * width[point - 1];
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    private static PolynomialFunction cubic(double start, double slopeStart, double slopeEnd, double chord,
            double width) {
        return new PolynomialFunction(start, slopeStart, (3 * chord - 2 * slopeStart - slopeEnd) / width,
                (slopeStart + slopeEnd - 2 * chord) / (width * width));
    }
}
