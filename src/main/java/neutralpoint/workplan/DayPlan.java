package neutralpoint.workplan;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.EstimateFormat;
import neutralpoint.workplan.figures.Figure;

/**
 * The day: when each stage begins and ends, when all is done, and how long the house goes without heat at a stretch.
 * Clock times go by the likely minutes. No breaks are put in.
 *
 * @param start       when the first step begins
 * @param spans       the stages in their order
 * @param minutes     all steps together
 * @param finish      clock time at the end, with the day where it is not the first
 * @param withoutHeat the longest run of steps on end during which the occupants have no heat, in minutes
 */
public record DayPlan(LocalTime start, List<Span> spans, Estimate minutes, String finish, Estimate withoutHeat) {
    public static final LocalTime USUAL_START = LocalTime.of(8, 30);
    private static final String SOURCE = "minutes of the steps: common practice, no source";
    private static final int MINUTES_PER_HOUR = 60;
    private static final int MINUTES_PER_DAY = 24 * 60;

    /**
     * One step as the clock sees it.
     *
     * @param stage       the stage it belongs to, in words
     * @param minutes     0 or more
     * @param withoutHeat true while the occupants have no heat and cannot be given any
     */
    public record Timed(String stage, Estimate minutes, boolean withoutHeat) {
        /** @throws IllegalArgumentException if it could take less than no time */
        public Timed {
            if (minutes.low() < 0) {
                throw new IllegalArgumentException("The least minutes of a step in " + stage + " are " + Decimals.shown(minutes.low())
                        + "; they must be 0 or more.");
            }
        }
    }

    /** A stage from its first step to its last. */
    public record Span(String stage, String start, String finish, Estimate minutes) {}

    /** The day from the usual start. */
    public static DayPlan of(List<Timed> steps) {
        return of(steps, USUAL_START);
    }

    /** @param steps in the order they are done; steps of one stage on end become one span */
    public static DayPlan of(List<Timed> steps, LocalTime start) {
        List<Span> spans = new ArrayList<>();
        double before = 0;
        for (int i = 0; i < steps.size();) {
            String stage = steps.get(i).stage();
            Estimate minutes = Estimate.NOTHING;
            for (; i < steps.size() && steps.get(i).stage().equals(stage); i++) {
                minutes = minutes.plus(steps.get(i).minutes());
            }
            spans.add(new Span(stage, clock(start, before), clock(start, before + minutes.likely()), minutes));
            before += minutes.likely();
        }
        Estimate all = Estimate.total(steps.stream().map(Timed::minutes).toList());
        return new DayPlan(start, List.copyOf(spans), all, clock(start, before), new Estimate(longest(steps, Estimate::low),
                longest(steps, Estimate::likely), longest(steps, Estimate::high)));
    }

    private static double longest(List<Timed> steps, ToDoubleFunction<Estimate> end) {
        double longest = 0;
        double running = 0;
        for (Timed step : steps) {
            running = step.withoutHeat() ? running + end.applyAsDouble(step.minutes()) : 0;
            longest = Math.max(longest, running);
        }
        return longest;
    }

    /** To the nearest minute, such as 16:05; after midnight "day 2, 01:10". */
    private static String clock(LocalTime start, double minutesLater) {
        long minute = Math.round(start.toSecondOfDay() / (double) MINUTES_PER_HOUR + minutesLater);
        long day = minute / MINUTES_PER_DAY + 1;
        LocalTime at = LocalTime.of((int) (minute % MINUTES_PER_DAY / MINUTES_PER_HOUR), (int) (minute % MINUTES_PER_HOUR));
        return (day == 1 ? "" : "day " + day + ", ") + at;
    }

    /** The finish and the cold stretch with their arithmetic, as figures of the plan. */
    public List<Figure> figures() {
        List<String> stages = spans.stream().map(s -> s.stage() + ": " + EstimateFormat.range(s.minutes(), "minutes")).toList();
        List<String> sums = new ArrayList<>(stages);
        sums.add("from " + start + " together " + EstimateFormat.range(minutes, "minutes") + ", done by " + finish);
        return List.of(new Figure("day-minutes", "Time on the job", minutes, "minutes", sums, SOURCE),
                new Figure("without-heat-minutes", "Longest stretch without heat", withoutHeat, "minutes",
                        List.of("the longest run of steps on end with the heating off: " + EstimateFormat.range(withoutHeat, "minutes")),
                        SOURCE));
    }
}
