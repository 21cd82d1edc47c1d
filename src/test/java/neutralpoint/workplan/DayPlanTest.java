package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workplan.DayPlan.Timed;
import neutralpoint.workplan.figures.Figure;
import org.junit.jupiter.api.Test;

/** When each stage begins and ends, and how long the house is cold. */
class DayPlanTest {

    private static Timed step(String stage, double minutes, boolean withoutHeat) {
        return new Timed(stage, Estimate.exactly(minutes), withoutHeat);
    }

    /**
     * 20 + 10 minutes of preparing from 08:30 end at 09:00; 45 of isolating at 09:45; 100 of cleaning at 11:25; 60 of
     * proving at 12:25. The house is cold from 08:50, through the second step of preparing, until 11:25: 10 + 45 + 100.
     */
    @Test
    void stagesFollowEachOtherByTheClock() {
        DayPlan day = DayPlan.of(List.of(step("prepare", 20, false), step("prepare", 10, true), step("isolate", 45, true),
                step("cleanse", 100, true), step("prove", 60, false)));
        assertThat(day.spans()).extracting(s -> s.stage() + " " + s.start() + " " + s.finish()).containsExactly("prepare 08:30 09:00",
                "isolate 09:00 09:45", "cleanse 09:45 11:25", "prove 11:25 12:25");
        assertThat(day.finish()).isEqualTo("12:25");
        assertThat(day.minutes()).isEqualTo(Estimate.exactly(235));
        assertThat(day.withoutHeat()).isEqualTo(Estimate.exactly(155));
        assertThat(day.figures()).extracting(Figure::shown).containsExactly("235 minutes", "155 minutes");
        assertThat(day.figures().get(0).sums()).contains("prepare: 30 minutes", "from 08:30 together 235 minutes, done by 12:25");
    }

    /** Two cold stretches with heat between are two: 30 and 50 minutes, not 80. */
    @Test
    void heatBetweenEndsAColdStretch() {
        DayPlan day = DayPlan.of(List.of(step("isolate", 30, true), step("heat", 40, false), step("dump", 50, true)), LocalTime.of(7, 45));
        assertThat(day.withoutHeat()).isEqualTo(Estimate.exactly(50));
        assertThat(day.finish()).isEqualTo("09:45");
    }

    /** Likely minutes set the clock; the ends stay beside them. By the likely figures the first stretch is longest, at worst the second. */
    @Test
    void guessesStayGuesses() {
        DayPlan day = DayPlan.of(List.of(new Timed("isolate", new Estimate(20, 40, 50), true), step("heat", 30, false),
                new Timed("dump", new Estimate(10, 30, 90), true)));
        assertThat(day.minutes()).isEqualTo(new Estimate(60, 100, 170));
        assertThat(day.withoutHeat()).isEqualTo(new Estimate(20, 40, 90));
        assertThat(day.finish()).isEqualTo("10:10");
    }

    /** 22:50 and 200 minutes: 02:10 of the next day. */
    @Test
    void aLateStartRunsIntoTheNextDay() {
        assertThat(DayPlan.of(List.of(step("rinse", 200, true)), LocalTime.of(22, 50)).finish()).isEqualTo("day 2, 02:10");
        assertThat(DayPlan.of(List.of(step("rinse", 70, true)), LocalTime.of(22, 50)).finish()).isEqualTo("day 2, 00:00");
        assertThat(DayPlan.of(List.of(step("rinse", 69, true)), LocalTime.of(22, 50)).finish()).isEqualTo("23:59");
    }

    @Test
    void noStepsAreNoTime() {
        DayPlan day = DayPlan.of(List.of());
        assertThat(day.finish()).isEqualTo("08:30");
        assertThat(day.minutes()).isEqualTo(Estimate.NOTHING);
        assertThat(day.spans()).isEmpty();
    }

    @Test
    void noStepTakesLessThanNoTime() {
        assertThatIllegalArgumentException().isThrownBy(() -> step("dump", -1, true))
                .withMessage("The least minutes of a step in dump are -1; they must be 0 or more.");
        assertThat(step("dump", 0, true).minutes()).isEqualTo(Estimate.NOTHING);
    }

    @Test
    void theDayIsTheSumOfItsStagesAndTheColdStretchIsPartOfIt() {
        long seed = 830;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            List<Timed> steps = IntStream.range(0, random.nextInt(30)).mapToObj(s -> new Timed("stage " + random.nextInt(4),
                    Estimate.about(random.nextInt(60), 0.3), random.nextBoolean())).toList();
            DayPlan day = DayPlan.of(steps);
            String which = "seed " + seed + ", day " + i;
            assertThat(day.spans().stream().mapToDouble(s -> s.minutes().likely()).sum()).as(which).isCloseTo(day.minutes().likely(), within(1e-9));
            assertThat(day.withoutHeat().high()).as(which).isLessThanOrEqualTo(day.minutes().high() + 1e-9);
            double longestStep = steps.stream().filter(Timed::withoutHeat).mapToDouble(t -> t.minutes().likely()).max().orElse(0);
            assertThat(day.withoutHeat().likely()).as(which).isGreaterThanOrEqualTo(longestStep);
        }
    }
}
