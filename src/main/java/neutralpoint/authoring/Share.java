package neutralpoint.authoring;

import java.util.List;
import java.util.function.Predicate;
import neutralpoint.rulebase.Certainty;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;

/**
 * How many cases something holds for, and within what limits the true share then lies.
 *
 * @param holds for how many it holds
 * @param of    out of how many, 0 or more
 */
public record Share(int holds, int of) {
    private static final double CONFIDENCE = 0.95;

    /** How many came out with an accepted course, of those that state one. */
    public static Share ofCourses(List<Score.JudgedCase> judged) {
        List<Score.JudgedCase> stated = judged.stream().filter(j -> !j.expected().courses().isEmpty()).toList();
        return of(stated, j -> j.expected().accepts(j.assessment()));
    }

    /** How many had a true cause among the first so many, of those that state one. */
    public static Share ofCauses(List<Score.JudgedCase> judged, int among) {
        List<Score.JudgedCase> stated = judged.stream().filter(j -> !j.expected().causes().isEmpty()).toList();
        return of(stated, j -> {
            int rank = j.expected().rank(Ranking.own().causes().apply(j.assessment()));
            return rank >= 1 && rank <= among;
        });
    }

    /** For how many no course was decided on. */
    public static Share undecided(List<Score.JudgedCase> judged) {
        return of(judged, j -> j.assessment().verdict().certainty() == Certainty.UNDECIDED);
    }

    private static Share of(List<Score.JudgedCase> judged, Predicate<Score.JudgedCase> holds) {
        return new Share((int) judged.stream().filter(holds).count(), judged.size());
    }

    /** Wilson's score interval at 95 %; with nothing counted it is everything. */
    ConfidenceInterval interval() {
        return of == 0 ? new ConfidenceInterval(0, 1, CONFIDENCE)
                : BinomialProportion.getWilsonScoreInterval(of, (double) holds / of, CONFIDENCE);
    }

    @Override
    public String toString() {
        if (of == 0) {
            return "none";
        }
        ConfidenceInterval limits = interval();
        return String.format("%d/%d (%.0f-%.0f %%)", holds, of, 100 * Math.max(0, limits.getLowerBound()), 100 * limits.getUpperBound());
    }
}
