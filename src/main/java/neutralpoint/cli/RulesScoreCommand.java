package neutralpoint.cli;

import java.util.List;
import java.util.concurrent.Callable;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.Ranking;
import neutralpoint.authoring.Robustness;
import neutralpoint.authoring.Score;
import neutralpoint.authoring.Share;
import neutralpoint.authoring.Untouched;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Scores the rules on cases. */
@Command(name = "score", mixinStandardHelpOptions = true,
        description = "Score the rules on cases: as they are, with slips, with weights moved, and beside simpler ways of judging.")
final class RulesScoreCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Option(names = "--seeds", defaultValue = "50", description = "how often all weights are moved (default: ${DEFAULT-VALUE})")
    private int seeds;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        List<CaseStudy> cases = authoring.cases(knowledge.check());
        Robustness trials = new Robustness(knowledge.rules(), knowledge.catalogue());
        List<Score.JudgedCase> asTheyAre = trials.asTheyAre(cases);
        System.out.printf("%-34s %6s %6s %6s %6s %6s %6s %6s %6s %6s%n", "", "judged", "course", "first", "three", "1/rank", "Brier", "undec", "unexpl", "unsafe");
        Score own = Score.of(asTheyAre, Ranking.own());
        line("as they are", own);
        line("one answer not checked", Score.of(trials.oneAnswerMissing(cases), Ranking.own()));
        line("one answer wrong (seed 1)", Score.of(trials.oneAnswerWrong(cases, 1), Ranking.own()));
        Score hidden = Score.of(trials.someHidden(cases, RulesCalibrateCommand.HIDDEN, RulesCalibrateCommand.SLIPS, 1), Ranking.own());
        line("a third hidden, one wrong (seed 1)", hidden);
        line("priors only", Score.of(asTheyAre, Ranking.priorsOnly()));
        line("most signs", Score.of(asTheyAre, Ranking.mostSigns()));
        authoring.untouched().forEach((folder, untouched) -> apart(untouched, asTheyAre.stream().filter(j -> j.expected().file().startsWith(folder)).toList()));
        RulesCalibrateCommand.print("as they are", own.chances());
        RulesCalibrateCommand.print("a third hidden, one wrong (seed 1)", hidden.chances());
        DescriptiveStatistics held = new DescriptiveStatistics(trials.verdictsThatHold(cases, seeds));
        System.out.printf("%nEvery weight moved one grade up or down, %d seeds: %.0f %% of the courses hold (least %.0f %%)%n", seeds,
                100 * held.getMean(), 100 * held.getMin());
        asTheyAre.stream().filter(j -> !j.expected().accepts(j.assessment())).forEach(j -> System.out.printf("%s: %s, where %s is right%n",
                j.expected().id(), j.assessment().verdict().course().id(), String.join(" or ", j.expected().courses())));
        return 0;
    }

    private static void apart(Untouched untouched, List<Score.JudgedCase> judged) {
        System.out.printf("%n%-34s %6s %18s %18s %18s %18s %6s   (in brackets the 95 %% interval)%n", untouched.name(), "judged",
                "course", "first", "three", "undec", "unsafe");
        shares(untouched.name() + ", untouched", untouched.of(judged, true));
        shares(untouched.name() + ", the rest", untouched.of(judged, false));
    }

    private static void shares(String what, List<Score.JudgedCase> judged) {
        System.out.printf("%-34s %6d %18s %18s %18s %18s %6d%n", what, judged.size(), Share.ofCourses(judged), Share.ofCauses(judged, 1),
                Share.ofCauses(judged, 3), Share.undecided(judged), judged.stream().filter(j -> j.expected().isUnsafe(j.assessment())).count());
    }

    private static void line(String what, Score s) {
        System.out.printf("%-34s %6d %5.0f%% %5.0f%% %5.0f%% %6.2f %6.3f %5.0f%% %5.0f%% %6d%n", what, s.callouts(), 100 * s.accepted(),
                100 * s.first(), 100 * s.inThree(), s.reciprocalRank(), s.chances().brier(), 100 * s.undecided(), 100 * s.unexplained(), s.unsafe());
    }
}
