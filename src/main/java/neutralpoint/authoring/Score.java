package neutralpoint.authoring;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Certainty;
import neutralpoint.rulebase.WeighedEvidence;
import org.hipparchus.stat.StatUtils;

/**
 * How a set of call-outs came out.
 *
 * @param accepted       share with an accepted course
 * @param first          share with a true cause first
 * @param inThree        share with a true cause among the first three
 * @param reciprocalRank mean of 1 / place of the true cause
 * @param chances        how far the chances given came true
 * @param undecided      share for which no course was decided on
 * @param unexplained    share of the telling findings that no cause worth working on accounts for
 * @param unsafe         call-outs with unsafe advice
 */
public record Score(int callouts, double accepted, double first, double inThree, double reciprocalRank, Reliability chances,
        double undecided, double unexplained, long unsafe) {
    /** One call-out as it was judged, beside what was expected of it. */
    public record JudgedCase(CaseStudy expected, Assessment assessment) {}

    public static Score of(List<JudgedCase> judged, Ranking ranking) {
        List<JudgedCase> withCause = judged.stream().filter(j -> !j.expected().causes().isEmpty()).toList();
        double[] ranks = withCause.stream().mapToDouble(j -> j.expected().rank(ranking.causes().apply(j.assessment()))).toArray();
        List<JudgedCase> withCourse = judged.stream().filter(j -> !j.expected().courses().isEmpty()).toList();
        return new Score(judged.size(),
                share(withCourse, j -> j.expected().courses().contains(ranking.course().apply(j.assessment()))),
                mean(ranks, r -> r == 1 ? 1 : 0), mean(ranks, r -> r >= 1 && r <= 3 ? 1 : 0), mean(ranks, r -> r == 0 ? 0 : 1 / r),
                Reliability.of(withCause), share(judged, j -> j.assessment().verdict().certainty() == Certainty.UNDECIDED), unexplained(judged), judged.stream().filter(j -> j.expected().isUnsafe(j.assessment())).count());
    }

    private static double share(List<JudgedCase> judged, Predicate<JudgedCase> holds) {
        return judged.isEmpty() ? 0 : (double) judged.stream().filter(holds).count() / judged.size();
    }

    private static double mean(double[] values, DoubleUnaryOperator of) {
        double[] mapped = Arrays.stream(values).map(of).toArray();
        return mapped.length == 0 ? 0 : StatUtils.mean(mapped);
    }

    /** A finding is telling when it speaks for some cause; explained when one of those is settled, likely or the chief. */
    private static double unexplained(List<JudgedCase> judged) {
        long telling = 0;
        long explained = 0;
        for (JudgedCase j : judged) {
            Set<String> all = j.assessment().causes().stream().flatMap(c -> speakingFor(c).stream()).collect(Collectors.toSet());
            Set<String> accounted = j.assessment().causes().stream()
                    .filter(c -> c.isActive() || j.assessment().verdict().chief().map(c::equals).orElse(false))
                    .flatMap(c -> speakingFor(c).stream()).collect(Collectors.toSet());
            telling += all.size();
            explained += accounted.size();
        }
        return telling == 0 ? 0 : 1 - (double) explained / telling;
    }

    private static Set<String> speakingFor(Assessment.CauseStanding c) {
        return c.evidence().stream().filter(WeighedEvidence::isFor).map(WeighedEvidence::finding).collect(Collectors.toSet());
    }
}
