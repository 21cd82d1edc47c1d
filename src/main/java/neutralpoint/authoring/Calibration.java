package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Chances;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** What a deciban is worth, found by logistic regression on judged houses whose true cause is known. */
public final class Calibration {
    private static final int MOST_STEPS = 50;
    private static final double CLOSE_ENOUGH = 1e-9;
    /** So little that it only keeps the sums solvable. */
    private static final double RIDGE = 1e-6;

    private Calibration() {}

    /** What each of the {@link Chances#terms} adds to the log odds; causes for which nothing speaks are left out, and excluded ones. */
    public static double[] fit(List<Score.JudgedCase> judged) {
        List<double[]> terms = new ArrayList<>();
        List<Double> so = new ArrayList<>();
        for (Score.JudgedCase j : judged) {
            List<Assessment.CauseStanding> causes = j.assessment().causes();
            double[][] all = Chances.terms(causes);
            for (int i = 0; i < all.length; i++) {
                if (causes.get(i).isSupported() && !causes.get(i).isExcluded()) {
                    terms.add(all[i]);
                    so.add(j.expected().causes().contains(causes.get(i).id()) ? 1.0 : 0.0);
                }
            }
        }
        return newton(terms, so);
    }

    /** Newton's method on the likelihood, which has one summit. */
    private static double[] newton(List<double[]> terms, List<Double> so) {
        int n = terms.get(0).length;
        RealVector weights = new ArrayRealVector(n);
        for (int step = 0; step < MOST_STEPS; step++) {
            RealVector slope = weights.mapMultiply(-RIDGE);
            RealMatrix curvature = new Array2DRowRealMatrix(n, n);
            for (int k = 0; k < n; k++) {
                curvature.setEntry(k, k, RIDGE);
            }
            for (int row = 0; row < terms.size(); row++) {
                RealVector x = new ArrayRealVector(terms.get(row), false);
                double chance = 1 / (1 + Math.exp(-weights.dotProduct(x)));
                slope = slope.add(x.mapMultiply(so.get(row) - chance));
                curvature = curvature.add(x.outerProduct(x).scalarMultiply(chance * (1 - chance)));
            }
            RealVector change = new CholeskyDecomposition(curvature).getSolver().solve(slope);
            weights = weights.add(change);
            if (change.getNorm() < CLOSE_ENOUGH) {
                break;
            }
        }
        return weights.toArray();
    }
}
