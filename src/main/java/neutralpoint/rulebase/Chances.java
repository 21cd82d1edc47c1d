package neutralpoint.rulebase;

import java.util.List;

/**
 * From the weight of the evidence to a chance that comes true as often as it says.
 *
 * <p>Signs of one fault come together, and the signs of one fault are half the signs of another, so decibans that are merely
 * added up promise too much. What they are worth is found by logistic regression on two weights, the cause's own and its
 * strongest rival's, over houses of which a third of the findings is hidden at random and one is wrong (with one variable:
 * J. Platt, <i>Probabilistic Outputs for Support Vector Machines</i>, 1999). {@code neutralpoint rules calibrate} fits it
 * anew and prints how often each band came true.
 */
public final class Chances {
    /** What each of the {@link #terms} adds to the log odds. Decibans taken at their word would add ln(10)/10 = 0.23 each. */
    private static final double[] FITTED = {-0.856, 0.220, -0.090, -2.071};
    /** A deciding test weighs at least this many decibans. */
    private static final double SETTLED_DECIBANS = 20;
    /** A rival weaker than this does not matter, in decibans. */
    private static final double WEAKEST_RIVAL_DECIBANS = -10;
    private static final double EXCLUDED = 0.001;

    private Chances() {}

    /** A cause as it was weighed. */
    public interface Weight {
        /** The sum of its evidence and of how common it is. */
        double decibans();

        boolean isSettled();

        boolean isExcluded();
    }

    /** The chance of each of these causes, 0 to 1, in their order. */
    static double[] of(List<? extends Weight> causes) {
        double[][] terms = terms(causes);
        double[] chances = new double[terms.length];
        for (int i = 0; i < chances.length; i++) {
            double logOdds = 0;
            for (int k = 0; k < FITTED.length; k++) {
                logOdds += FITTED[k] * terms[i][k];
            }
            chances[i] = causes.get(i).isExcluded() ? EXCLUDED : 1 / (1 + Math.exp(-logOdds));
        }
        return chances;
    }

    /** For each cause: one; its own weight in decibans; that of its strongest rival; and one if it is settled, otherwise nought. */
    public static double[][] terms(List<? extends Weight> causes) {
        double strongest = Double.NEGATIVE_INFINITY;
        double second = Double.NEGATIVE_INFINITY;
        for (Weight w : causes) {
            double decibans = w.isExcluded() ? Double.NEGATIVE_INFINITY : decibans(w);
            second = Math.max(second, Math.min(strongest, decibans));
            strongest = Math.max(strongest, decibans);
        }
        double[][] terms = new double[causes.size()][];
        for (int i = 0; i < terms.length; i++) {
            Weight w = causes.get(i);
            double own = decibans(w);
            double rival = Math.max(WEAKEST_RIVAL_DECIBANS, own == strongest ? second : strongest);
            terms[i] = new double[] {1, own, rival, w.isSettled() ? 1 : 0};
        }
        return terms;
    }

    /** One reading in a house may be wrong, also the deciding one: a settled cause is no certainty, but it weighs a good deal. */
    private static double decibans(Weight w) {
        return w.isSettled() ? Math.max(w.decibans(), SETTLED_DECIBANS) : w.decibans();
    }
}
