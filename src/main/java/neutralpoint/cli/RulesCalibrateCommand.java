package neutralpoint.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import neutralpoint.authoring.Calibration;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.Reliability;
import neutralpoint.authoring.Robustness;
import neutralpoint.authoring.Score;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits what a deciban is worth, and shows how far chances come true on houses that were not fitted on. */
@Command(name = "calibrate", mixinStandardHelpOptions = true,
        description = "Fit what the weight of evidence is worth as a chance, and show how far chances come true elsewhere.")
final class RulesCalibrateCommand implements Callable<Integer> {
    /** Share of the findings hidden at random, and how many of the rest are wrong. */
    static final double HIDDEN = 1.0 / 3;
    static final int SLIPS = 1;
    /** Every third house is never fitted on. */
    private static final int KEPT_BACK = 3;

    @Mixin
    private AuthoringOptions authoring;

    @Option(names = "--seeds", defaultValue = "20", description = "how often the houses are drawn to fit on (default: ${DEFAULT-VALUE})")
    private int seeds;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        List<CaseStudy> cases = authoring.cases(knowledge.check());
        List<CaseStudy> fitted = everyThird(cases, false);
        List<CaseStudy> keptBack = everyThird(cases, true);
        Robustness trials = new Robustness(knowledge.rules(), knowledge.catalogue());
        double[] weights = Calibration.fit(LongStream.range(0, seeds)
                .mapToObj(seed -> trials.someHidden(fitted, HIDDEN, SLIPS, seed)).flatMap(List::stream).filter(j -> !j.expected().causes().isEmpty()).toList());
        System.out.printf("Fitted on %d houses drawn %d times. Log odds: %s%n", fitted.size(), seeds, Arrays.stream(weights)
                .mapToObj(w -> String.format(Locale.ROOT, "%.3f", w)).collect(Collectors.joining(", ")));
        System.out.println("These are for a cause of no weight; for each deciban of its own; for each of its strongest rival; for being settled.");
        for (long seed = 1001; seed <= 1003; seed++) {
            List<Score.JudgedCase> judged = trials.someHidden(keptBack, HIDDEN, SLIPS, seed).stream().filter(j -> !j.expected().causes().isEmpty()).toList();
            print("houses not fitted on, seed " + seed, Reliability.of(judged));
            print("the same, decibans taken at their word", Reliability.takenAtTheirWord(judged));
        }
        return 0;
    }

    private static List<CaseStudy> everyThird(List<CaseStudy> cases, boolean wanted) {
        return IntStream.range(0, cases.size()).filter(i -> (i % KEPT_BACK == KEPT_BACK - 1) == wanted).mapToObj(cases::get).toList();
    }

    static void print(String what, Reliability r) {
        System.out.printf("%n%s: Brier %.4f (base rate %.4f), log score %.3f%n", what, r.brier(), r.baseRate(), r.logScore());
        System.out.printf("%-16s %8s %12s %12s %14s%n", "chance given", "causes", "mean chance", "share so", "95 in 100");
        r.bands().forEach(b -> System.out.printf("%3.0f to %3.0f %%     %8d %10.1f %% %10.1f %%   %4.0f to %3.0f %%%s%n", 100 * b.from(), 100 * b.to(),
                b.causes(), 100 * b.meanChance(), 100 * b.shareTrue(), 100 * b.least(), 100 * b.most(), b.isBelievable() ? "" : "  off"));
    }
}
