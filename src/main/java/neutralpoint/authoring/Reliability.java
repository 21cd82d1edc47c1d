package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import neutralpoint.rulebase.Assessment;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How far the chances given to causes came true, over the causes that something was found about and the true ones.
 *
 * @param brier    mean squared difference between the chance and what was so
 * @param logScore mean of minus the natural logarithm of the chance given to what was so
 * @param baseRate the Brier score of giving every cause the share that were so
 * @param bands    the same chances in bands
 */
public record Reliability(double brier, double logScore, double baseRate, List<ChanceBand> bands) {
    private static final double[] BANDS = {0, 0.1, 0.3, 0.5, 0.7, 0.9, 1};
    private static final double LEAST_CHANCE = 1e-6;
    private static final double TAIL = 0.025;

    /**
     * Causes that were given a chance within a band, and how many of them were so.
     *
     * @param least share that must be so if the mean chance is right, but for one time in forty
     * @param most  likewise
     */
    public record ChanceBand(double from, double to, int causes, double meanChance, double shareTrue, double least, double most) {

        public boolean isBelievable() {
            return shareTrue >= least && shareTrue <= most;
        }
    }

    private record Chance(double given, boolean so) {
        double off() {
            return given - (so ? 1 : 0);
        }
    }

    public static Reliability of(List<Score.JudgedCase> judged) {
        return of(judged, Assessment.CauseStanding::probability);
    }

    /** The same as if every deciban were independent of every other: the odds are ten to the tenth of their sum. */
    public static Reliability takenAtTheirWord(List<Score.JudgedCase> judged) {
        return of(judged, c -> c.isExcluded() ? 0 : c.isSettled() ? 1 : 1 / (1 + Math.pow(10, -c.decibans() / 10)));
    }

    private static Reliability of(List<Score.JudgedCase> judged, ToDoubleFunction<Assessment.CauseStanding> chance) {
        List<Chance> chances = judged.stream().flatMap(j -> j.assessment().causes().stream()
                .filter(c -> !c.evidence().isEmpty() || j.expected().causes().contains(c.id()))
                .map(c -> new Chance(chance.applyAsDouble(c), j.expected().causes().contains(c.id())))).toList();
        double share = mean(chances, c -> c.so() ? 1 : 0);
        return new Reliability(mean(chances, c -> c.off() * c.off()),
                mean(chances, c -> -Math.log(Math.max(LEAST_CHANCE, c.so() ? c.given() : 1 - c.given()))), share * (1 - share), bands(chances));
    }

    private static double mean(List<Chance> chances, ToDoubleFunction<Chance> of) {
        return chances.stream().mapToDouble(of).average().orElse(0);
    }

    private static List<ChanceBand> bands(List<Chance> chances) {
        List<ChanceBand> bands = new ArrayList<>();
        for (int i = 0; i + 1 < BANDS.length; i++) {
            double from = BANDS[i];
            double to = BANDS[i + 1];
            boolean last = i + 2 == BANDS.length;
            List<Chance> here = chances.stream().filter(c -> c.given() >= from && (c.given() < to || last)).toList();
            if (!here.isEmpty()) {
                double chance = mean(here, Chance::given);
                BinomialDistribution so = new BinomialDistribution(here.size(), chance);
                bands.add(new ChanceBand(from, to, here.size(), chance, mean(here, c -> c.so() ? 1 : 0),
                        (double) so.inverseCumulativeProbability(TAIL) / here.size(),
                        (double) so.inverseCumulativeProbability(1 - TAIL) / here.size()));
            }
        }
        return bands;
    }
}
