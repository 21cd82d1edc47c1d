package neutralpoint.workings;

import static neutralpoint.JobBuilder.more;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import neutralpoint.Radiators;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Everything is worked out anew for each question looked into, so it must take no time to speak of. */
@Isolated
class WorkingsSpeedTest {
    private static final Duration LIMIT = Duration.ofMillis(50);

    @Test
    void aLargeHouseIsWorkedOutInAMoment() {
        Job job = largeHouse();
        assertThat(WorkedOut.workings(job)).as("every kind of sum is among them").hasSizeGreaterThan(14);
        IntStream.range(0, 200).forEach(i -> WorkedOut.workings(job));

        long start = System.nanoTime();
        IntStream.range(0, 100).forEach(i -> WorkedOut.workings(job));
        Duration each = Duration.ofNanos(System.nanoTime() - start).dividedBy(100);

        assertThat(each).isLessThan(LIMIT);
    }

    private static Job largeHouse() {
        List<Radiator> radiators = IntStream.range(0, 40).mapToObj(i -> Radiators.atRun(Radiators.sized(
                i % 4 == 0 ? Radiators.read("room " + i, 66, 40, 71, 58) : Radiators.read("room " + i, 68, 62, 71, 60 - i % 12),
                "type-22", 600, 1200), 5 + i)).toList();
        Job house = Job.begin("large").withRadiators(radiators);
        return more(house).readings("pump-head-m", 5, "tee-resistance-percent", 10, "vent-rise-mm", 450, "tank-above-boiler-m", 5,
                "tank-above-highest-part-m", 1.2, "feed-tank-room-litres", 9, "boiler-flow-celsius", 75, "boiler-flow-return-kelvin", 15,
                "boiler-output-kw", 30, "pressure-cold-bar", 1.2, "pressure-hot-bar", 1.9, "vessel-size-litres", 25, "vessel-charge-bar", 1,
                "highest-radiator-above-gauge-m", 5, "room-celsius", 20).daily(20, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1).job();
    }
}
