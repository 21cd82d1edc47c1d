package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.JobBuilder;
import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** Flow through the boiler, and water lost by the gauge over time. */
class FlowWorkingsTest {
    private static final String LEAK = "leak-worked-out";
    /** 100 litres, a vessel of 12 charged to 1 bar: 2.013 x 12 = 24.16 bar litres of air. */
    private static final Job HOUSE = aJob().readings("system-content-litres", 100, "vessel-size-litres", 12, "vessel-charge-bar", 1).job();

    private static Calculation flow(double kilowatts, double kelvin) {
        return WorkedOut.saying(aJob().readings("boiler-output-kw", kilowatts, "boiler-flow-return-kelvin", kelvin).job(), "About");
    }

    @Test
    void theFlowIsOutputOverDrop() {
        // 24 000 W / 20 K / (0.98 kg/l x 4180 J/kgK / 60 s) = 17.58 litres a minute.
        assertThat(flow(24, 20).says()).isEqualTo("About 17.58 litres a minute go through the boiler.");
        assertThat(flow(24, 20).grade()).isEqualTo(PASS);
        assertThat(flow(24, 25).grade()).isEqualTo(PASS);
        assertThat(flow(24, 26).says()).endsWith("through the boiler: starved flow.");
        assertThat(flow(24, 26).grade()).isEqualTo(WARN);
        assertThat(flow(24, 4).says()).endsWith("through the boiler: more than the load needs.");
        assertThat(flow(24, 4).grade()).isEqualTo(WARN);
    }

    @Test
    void noDropNoSum() {
        assertThat(WorkedOut.workings(aJob().readings("boiler-output-kw", 24, "boiler-flow-return-kelvin", 0.9).job())).isEmpty();
        assertThat(WorkedOut.workings(aJob().readings("boiler-output-kw", 24).job())).isEmpty();
    }

    @Test
    void aSteadyFallIsALeak() {
        // 0.1 bar a day about 1.3 bar: air 24.16 / 2.313 = 10.44 l, which gives 10.44 / 2.313 = 4.5 litres a bar.
        Job slow = more(HOUSE).daily(20, 1.5, 1.4, 1.3, 1.2, 1.1).job();
        assertThat(WorkedOut.choice(slow, LEAK)).isEqualTo("slow-loss");
        assertThat(WorkedOut.of(slow, LEAK).orElseThrow().says())
                .isEqualTo("Brought to one temperature, the pressure loses 0.1 bar a day, about 0.45 litres.");
        assertThat(WorkedOut.choice(more(HOUSE).daily(20, 2.6, 2.2, 1.8, 1.4).job(), LEAK)).isEqualTo("fast-loss");
    }

    @Test
    void aFallBeyondAnyMisreadingIsALeakHoweverItScatters() {
        assertThat(WorkedOut.choice(more(HOUSE).daily(20, 1.8, 1.4, 1.3).job(), LEAK)).as("0.5 bar in two days").isEqualTo("slow-loss");
    }

    @Test
    void aGaugeThatOnlyFollowsTheHeatHolds() {
        // At 1.2 bar 24.16 / 2.213 = 10.92 l of air; 100 l gain 1.53 from 20 to 60 degrees; 24.16 / 9.39 - 1.013 = 1.56 bar.
        Job job = HOUSE.withGauge(List.of(JobBuilder.gauge(0, 1.2, 20), JobBuilder.gauge(48, 1.56, 60), JobBuilder.gauge(96, 1.2, 20),
                JobBuilder.gauge(144, 1.56, 60)));
        assertThat(WorkedOut.choice(job, LEAK)).isEqualTo("holds");
        assertThat(WorkedOut.of(job, LEAK).orElseThrow().grade()).isEqualTo(PASS);
    }

    @Test
    void aRiseIsWaterComingIn() {
        assertThat(WorkedOut.choice(more(HOUSE).daily(20, 1.1, 1.2, 1.3, 1.4).job(), LEAK)).isEqualTo("gains");
    }

    @Test
    void scatterAndShortTimesAreNotHolding() {
        assertTellsNothing(more(HOUSE).daily(20, 1.3, 1.1, 1.25).job());
        assertTellsNothing(HOUSE.withGauge(List.of(JobBuilder.gauge(0, 1.2, 20), JobBuilder.gauge(1, 1.2, 20), JobBuilder.gauge(3, 1.2, 20))));
        assertThat(WorkedOut.choice(HOUSE.withGauge(List.of(JobBuilder.gauge(0, 1.2, 20), JobBuilder.gauge(6, 1.2, 20), JobBuilder.gauge(12, 1.2, 20))),
                LEAK)).as("overnight").isEqualTo("holds");
    }

    @Test
    void aNeedleReadTooCloselyLosesNothing() {
        // A fall of 0.04 bar in all is less than a gauge shows, however straight its line.
        assertThat(WorkedOut.choice(more(HOUSE).daily(20, 1.22, 1.20, 1.18).job(), LEAK)).isNotIn("slow-loss", "fast-loss");
    }

    @Test
    void readingsThatDoNotCarryTheSumAreSaidToBeSo() {
        assertTellsNothing(more(HOUSE).daily(20, 1.5, 1.2, 0.8).job());
        assertTellsNothing(HOUSE.withGauge(List.of(JobBuilder.gauge(0, 1.5, 20), JobBuilder.gauge(0, 1.4, 20), JobBuilder.gauge(0, 1.3, 20))));
        assertTellsNothing(HOUSE.withGauge(List.of(JobBuilder.gauge(0, 1.5, 20), JobBuilder.gauge(24, 1.4, 20), JobBuilder.gauge(24 * 800, 1.3, 20))));
        assertThat(WorkedOut.saying(more(HOUSE).daily(20, 1.5, 1.2, 0.8).job(), "The gauge").says()).contains("0.8 bar is below the vessel's charge of 1 bar");
    }

    private static void assertTellsNothing(Job job) {
        assertThat(WorkedOut.of(job, LEAK)).isEmpty();
        assertThat(WorkedOut.saying(job, "The gauge over time tells nothing").grade()).isEqualTo(NOTE);
    }

    @Test
    void theOrderOfTheLogMeansNothing() {
        var log = more(HOUSE).daily(20, 1.5, 1.4, 1.3, 1.2).job().gauge();
        Job mixed = HOUSE.withGauge(List.of(log.get(2), log.get(0), log.get(3), log.get(1)));
        assertThat(WorkedOut.workings(mixed)).isEqualTo(WorkedOut.workings(HOUSE.withGauge(log)));
    }

    @Test
    void twoReadingsSayNothingOfTheirScatter() {
        assertThat(WorkedOut.workings(more(HOUSE).daily(20, 1.5, 1.0).job())).noneMatch(w -> w.says().contains("auge over time"))
                .noneMatch(w -> w.finding().isPresent());
    }
}
