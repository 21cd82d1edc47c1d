package neutralpoint.rulebase;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Competence;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Handling;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Method;
import neutralpoint.catalogue.Phase;
import neutralpoint.hydronics.emitter.RadiatorReading;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.workings.Calculation;

/**
 * Everything concluded from one job. Immutable; every view is made of it.
 *
 * @param known     the job with what was worked out from its readings put in where nothing was answered by hand
 * @param workedOut what its readings add up to
 * @param paths     where relief paths and waters meet
 * @param cleansing how to cleanse, when the course or a step of the order does
 * @param cautions  all that must be said, the worst first
 */
public record Assessment(Job job, Job known, List<Calculation> workedOut, List<StopFound> stops, RecognisedSystem arrangement, WaterPaths paths,
        List<CauseStanding> causes, Verdict verdict, Optional<Cleansing> cleansing, List<WorkStep> order, List<Caution> cautions) {
    private static final int RIVALS = 3;

    /**
     * A danger that stands, and what to do now.
     *
     * @param course   "refer", or the course by which it is cleared on site
     * @param now      what to do now in this house, in order
     * @param clearing what clears it on site in this house, in order
     * @param rules    the rules that saw it
     */
    public record StopFound(Danger danger, String course, List<Danger.Act> now, List<Danger.Clearing> clearing, List<RuleInfo> rules) {

        public String id() {
            return danger.id();
        }

        public String title() {
            return danger.title();
        }

        /** What to do now, as one text. */
        public String action() {
            return now.stream().map(Danger.Act::says).collect(Collectors.joining(" "));
        }

        public String because() {
            return rules.stream().map(RuleInfo::because).distinct().collect(Collectors.joining(" "));
        }

        /** Ids of the cautions that belong to it, whatever the course. */
        public List<String> cautions() {
            return danger.cautions();
        }

        public boolean isReferral() {
            return course.equals(CourseId.REFER);
        }
    }

    /**
     * What kind of system it is.
     *
     * @param status         settled, likely, unclear or contradictory
     * @param features       features that are likely or settled
     * @param contradictions sentences saying which answers cannot both be right
     * @param share          the arrangement's share of probability among all systems
     * @param shares         the same for each system
     */
    public record RecognisedSystem(String id, String title, String status, List<String> features, List<String> contradictions,
            double share, Map<String, Double> shares, Set<String> traits, Set<String> possibleTraits) {

        /** True when it is settled or likely, and no two answers contradict each other. */
        public boolean isKnown() {
            return status.equals("settled") || status.equals("likely");
        }

        /** The system as it is shown: one that is a mere guess is not named as if it were known. */
        public String inWords() {
            String most = "most like " + title.toLowerCase(Locale.ROOT);
            return switch (status) {
                case "unclear" -> "not clear yet; " + most;
                case "contradictory" -> "not clear while answers contradict each other; " + most;
                default -> title + " (" + status + ")";
            };
        }
    }

    /** Where one cause stands, with its evidence strongest first. */
    public record CauseStanding(Cause cause, String status, double decibans, double probability,
            List<WeighedEvidence> evidence) implements Chances.Weight {

        public String id() {
            return cause.id();
        }

        /** The chance in a hundred as it is shown: never none and never certain. */
        public long inHundred() {
            return Math.max(1, Math.min(99, Math.round(probability * 100)));
        }

        /** Its status and its chance, as they are shown beside its title. */
        public String inWords() {
            return status + ", " + inHundred() + " in 100";
        }

        /** True when something found speaks for it. */
        public boolean isSupported() {
            for (WeighedEvidence e : evidence) {
                if (e.isFor()) {
                    return true;
                }
            }
            return false;
        }

        /** True when one deciding test says yes and another says no; the sum then stands, and both are to be done again. */
        public boolean isDisputed() {
            return evidence.stream().anyMatch(e -> e.kind() == Evidence.Kind.SETTLES)
                    && evidence.stream().anyMatch(e -> e.kind() == Evidence.Kind.EXCLUDES);
        }

        @Override
        public boolean isSettled() {
            return status.equals("settled");
        }

        @Override
        public boolean isExcluded() {
            return status.equals("excluded");
        }

        /** True when it is at least possible, or rules may speak of it all the same. */
        public boolean isPossible() {
            return isActive() || status.equals("possible");
        }

        /** True when it is settled, or its own signs weigh more than what speaks against it, whatever its rivals weigh. */
        public boolean isActive() {
            return isSettled() || !isExcluded() && decibans >= 0;
        }
    }

    /**
     * The one course recommended.
     *
     * @param certainty how far the course is decided
     * @param chief   the cause it answers, if something speaks for one
     * @param because why, most important first
     * @param needs   what the remedies of the chief cause and of all that are likely need of the person who does them
     */
    public record Verdict(Course course, Certainty certainty, Optional<CauseStanding> chief, List<String> because, List<Need> needs) {

        /** What the remedy of one cause needs. */
        public List<Need> needsOf(String cause) {
            return needs.stream().filter(n -> n.cause().equals(cause)).toList();
        }
    }

    /**
     * What the remedy of a cause needs of the person who does it.
     *
     * @param cause   the cause's id
     * @param because why, in this house
     */
    public record Need(String cause, Competence competence, Shown shown, String because) {

        /** What is needed and who has it. */
        public String inWords() {
            String needed = "It needs somebody " + competence.title();
            return switch (shown) {
                case YES -> needed + ", as you are.";
                case NO -> needed + ": refer it to " + competence.referTo() + ".";
                case UNKNOWN -> needed + "; if that is not you, refer it to " + competence.referTo() + ".";
            };
        }
    }

    /** Whether the engineer has shown a competence. */
    public enum Shown { YES, NO, UNKNOWN }

    /**
     * One step of the order of work.
     *
     * @param course  the course it belongs to; none for a step that answers no cause
     * @param cause   the cause it answers, if it answers one
     * @param action  what is done, in one line
     * @param because why it is done, and why in this place
     */
    public record WorkStep(Optional<Course> course, Optional<Cause> cause, Phase phase, String action, List<String> because) {}

    /**
     * How to cleanse this system.
     *
     * @param because  what speaks for this method, strongest first
     * @param ruledOut methods that are forbidden here
     * @param avoid    ways of handling the water that are forbidden here
     */
    public record Cleansing(Course course, Method method, List<String> because, List<RuledOut> ruledOut, List<Avoid> avoid) {}

    /** A method that is forbidden here, and why. */
    public record RuledOut(Method method, String because) {}

    /** A way of handling the water that is forbidden here, and why. */
    public record Avoid(Handling handling, String because) {}

    /** The same conclusions for a job that differs only in what was left open. */
    public Assessment withJob(Job other) {
        return new Assessment(other, Survey.complete(other, workedOut), workedOut, stops, arrangement, paths, causes, verdict, cleansing, order, cautions);
    }

    /** Where an answer given by hand and the readings say different things; the answer stands until it is changed. */
    public List<Calculation> disagreements() {
        return workedOut.stream().filter(w -> w.finding().map(f -> job.answer(f.id()).map(a -> differs(a, f.answer())).orElse(false))
                .orElse(false)).toList();
    }

    private static boolean differs(Answer given, Answer workedOut) {
        if (given instanceof Answer.Reading a && workedOut instanceof Answer.Reading b) {
            return Math.abs(a.value() - b.value()) > RadiatorReading.READING_ERROR_KELVIN;
        }
        if (given instanceof Answer.ByRadiator a && workedOut instanceof Answer.ByRadiator b) {
            // A hand and a thermometer need not have been at the same radiators.
            return a.choices().entrySet().stream().anyMatch(e -> !b.choices().getOrDefault(e.getKey(), e.getValue()).equals(e.getValue()));
        }
        return !given.equals(Answer.NOT_CHECKED) && !given.equals(workedOut);
    }

    /** Strong signs that none of the causes to be worked on accounts for. */
    public List<Unexplained> unexplained() {
        return Unexplained.of(causes, verdict.chief());
    }

    /** The likeliest causes whose chances are worth comparing while nothing is decided, best first. */
    public List<CauseStanding> rivals() {
        return causes.stream().filter(CauseStanding::isSupported).filter(c -> !c.isExcluded()).limit(RIVALS).toList();
    }

    /** Causes that something speaks for and that are at least this likely, best first. */
    public List<CauseStanding> worthShowing(double leastProbability) {
        return causes.stream().filter(c -> c.probability() >= leastProbability && c.isSupported()).toList();
    }

    /** The cautions that belong to the dangers that stand, the worst first; never left out wherever a stop is shown. */
    public List<Caution> stopCautions() {
        return cautions.stream().filter(c -> stops.stream().anyMatch(s -> s.cautions().contains(c.id()))).toList();
    }

    /** True when a red line stands that somebody else must clear. */
    public boolean isReferredByStop() {
        return stops.stream().anyMatch(StopFound::isReferral);
    }

    public Optional<CauseStanding> cause(String id) {
        return causes.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
