package neutralpoint.authoring;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.WeighedEvidence;

/** A way of putting the causes in order and choosing a course: the tool's own, and simpler ones to compare it with. */
public record Ranking(String name, Function<Assessment, List<String>> causes, Function<Assessment, String> course) {

    /** The tool's own. */
    public static Ranking own() {
        return new Ranking("this rule base", a -> a.causes().stream().map(Assessment.CauseStanding::id).toList(),
                a -> a.verdict().course().id());
    }

    /** What is commonest, whatever was found. */
    public static Ranking priorsOnly() {
        return by("priors only", c -> c.cause().priorDecibans());
    }

    /** The number of signs for a cause less the number against it, all counted alike. */
    public static Ranking mostSigns() {
        return by("most signs", c -> c.evidence().stream().mapToDouble(Ranking::sign).sum());
    }

    private static double sign(WeighedEvidence e) {
        return Math.signum(e.decibans());
    }

    private static Ranking by(String name, ToDoubleFunction<Assessment.CauseStanding> worth) {
        Function<Assessment, List<Assessment.CauseStanding>> ranked = a -> a.causes().stream()
                .sorted(Comparator.comparingDouble((Assessment.CauseStanding c) -> -worth.applyAsDouble(c))
                        .thenComparing(Assessment.CauseStanding::id)).toList();
        return new Ranking(name, a -> ranked.apply(a).stream().map(Assessment.CauseStanding::id).toList(),
                a -> ranked.apply(a).get(0).cause().course());
    }
}
