package neutralpoint.rulebase;

import java.util.List;
import java.util.Set;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Arrangement;

/**
 * What rules look at, put together by hand to see which of them fire: a call-out, and what the rules of later
 * stages are told besides.
 *
 * @param dangers dangers that stand
 * @param later   facts that only follow in the course of an assessment, such as standings and the order of work
 */
public record Situation(Job job, Arrangement arrangement, List<Assessment.StopFound> dangers, List<Object> later) {

    /** The ids of the rules that fire in it. */
    public Set<String> fires(RuleBase rules, Catalogue catalogue) {
        try (Session session = rules.open()) {
            Job known = Survey.complete(job, Survey.workOut(job, session));
            session.insertAndFire(Facts.of(known, catalogue));
            session.insertAndFire(List.of(arrangement));
            session.insertAndFire(WaterPaths.of(session).facts());
            session.insertAndFire(StandingDangers.facts(dangers));
            session.insertAndFire(StandingDangers.asks(dangers));
            session.insertAndFire(StandingDangers.clears(dangers));
            session.insertAndFire(later);
            return session.rulesFired();
        }
    }
}
