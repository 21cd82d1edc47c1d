package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;

/** What one set of rules does differently from another to the same cases. */
public record RuleDiff(List<Moved> moved, int cases) {

    /** A rule base with the catalogue it was written for. */
    public record Side(RuleBase rules, Catalogue catalogue) {}

    /**
     * How one case came out before and now.
     *
     * @param rank      place of the true cause; 0 when no true cause is stated
     * @param questions questions asked; 0 when they were not counted
     */
    public record Outcome(String course, boolean accepted, String first, int rank, int questions) {}

    /** A case that came out differently. */
    public record Moved(String id, Outcome before, Outcome now) {

        public boolean isGain() {
            return now.accepted() && !before.accepted() || now.accepted() == before.accepted() && better(now.rank(), before.rank());
        }

        public boolean isLoss() {
            return before.accepted() && !now.accepted() || now.accepted() == before.accepted() && better(before.rank(), now.rank());
        }

        private static boolean better(int one, int other) {
            return one != 0 && (other == 0 || one < other);
        }
    }

    public static RuleDiff of(List<CaseStudy> cases, Side before, Side now, boolean countQuestions) {
        List<Moved> moved = new ArrayList<>();
        List<Outcome> then = outcomes(cases, before, countQuestions);
        List<Outcome> after = outcomes(cases, now, countQuestions);
        for (int i = 0; i < cases.size(); i++) {
            if (!Objects.equals(then.get(i), after.get(i))) {
                moved.add(new Moved(cases.get(i).id(), then.get(i), after.get(i)));
            }
        }
        return new RuleDiff(moved, cases.size());
    }

    private static List<Outcome> outcomes(List<CaseStudy> cases, Side side, boolean countQuestions) {
        Assessor assessor = new Assessor(side.rules(), side.catalogue());
        QuestionCount count = new QuestionCount(assessor, side.catalogue());
        return cases.stream().map(c -> {
            Assessment a = assessor.assess(c.job());
            List<String> ranking = Ranking.own().causes().apply(a);
            return new Outcome(a.verdict().course().id(), c.accepts(a), ranking.get(0), c.rank(ranking),
                    countQuestions ? count.chosen(c.job()).asked() : 0);
        }).toList();
    }
}
