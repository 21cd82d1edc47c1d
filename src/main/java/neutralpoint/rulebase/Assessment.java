package neutralpoint.rulebase;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Course;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Evidence;

/** Everything concluded from one job. Immutable; every view is made of it. */
public record Assessment(Job job, List<StopFound> stops, System arrangement, List<CauseStanding> causes,
        Verdict verdict, List<Step> order, List<Caution> cautions) {

    /** A red line that stands, and what to do now. */
    public record StopFound(String id, String title, String action, String because, String course) {}

    /**
     * What kind of system it is.
     *
     * @param status         settled, likely, unclear or contradictory
     * @param features       features that are likely or settled
     * @param contradictions sentences saying which answers cannot both be right
     * @param share          the arrangement's share of probability among all systems
     */
    public record System(String id, String title, String status, List<String> features, List<String> contradictions,
            double share, Set<String> traits, Set<String> possibleTraits) {}

    /** Where one cause stands, with its evidence strongest first. */
    public record CauseStanding(Cause cause, String status, double decibans, double probability,
            List<WeighedEvidence> evidence) {

        public String id() {
            return cause.id();
        }

        /** True when something found speaks for it. */
        public boolean isSupported() {
            return evidence.stream().anyMatch(WeighedEvidence::isFor);
        }

        /** True when one deciding test says yes and another says no; the sum then stands, and both are to be done again. */
        public boolean isDisputed() {
            return evidence.stream().anyMatch(e -> e.kind() == Evidence.Kind.SETTLES)
                    && evidence.stream().anyMatch(e -> e.kind() == Evidence.Kind.EXCLUDES);
        }

        public boolean isActive() {
            return status.equals("settled") || status.equals("likely");
        }
    }

    /**
     * The one course recommended.
     *
     * @param chief   the cause it answers, if any cause is at least possible
     * @param because why, most important first
     */
    public record Verdict(Course course, Optional<CauseStanding> chief, List<String> because) {}

    /** One step of the order of work. */
    public record Step(Course course, Cause cause, String because) {}

    /** Causes that something speaks for and that are at least this likely, best first. */
    public List<CauseStanding> worthShowing(double leastProbability) {
        return causes.stream().filter(c -> c.probability() >= leastProbability && c.isSupported()).toList();
    }

    /** True when a red line stands that somebody else must clear. */
    public boolean isReferredByStop() {
        return stops.stream().anyMatch(s -> s.course().equals("refer"));
    }

    public Optional<CauseStanding> cause(String id) {
        return causes.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
