package neutralpoint.hydronics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Where a function crosses zero, by Brent's method as the library has it. */
public final class Root {
    private static final double RELATIVE_ACCURACY = 1e-14;
    private static final double ABSOLUTE_ACCURACY = 1e-12;
    private static final int MOST_EVALUATIONS = 500;

    private Root() {}

    /** The crossing between two places at which the function has opposite signs, or is zero at one. */
    public static double between(double low, double high, DoubleUnaryOperator function) {
        return new BrentSolver(RELATIVE_ACCURACY, ABSOLUTE_ACCURACY)
                .solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    }
}
