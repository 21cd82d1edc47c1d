package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiConsumer;
import neutralpoint.Radiators;
import neutralpoint.Shared;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import neutralpoint.document.Json;
import neutralpoint.hydronics.emitter.RadiatorReading;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.Radiator;
import neutralpoint.job.Temperatures;
import neutralpoint.property.RandomReadings;
import neutralpoint.property.Tries;
import org.junit.jupiter.api.Test;

/** What holds of everything worked out from readings, whatever a job file may hold. */
class WorkingsPropertiesTest {
    private static final int TRIES = Tries.READINGS;
    private static final long SEED = Tries.SEED;
    private static final int LONGEST_SENTENCE = 160;

    private static void everyJob(BiConsumer<Job, Random> holds) {
        Tries.note("%d random jobs from -Dneutralpoint.seed=%d", TRIES, SEED);
        for (int number = 0; number < TRIES; number++) {
            long seed = SEED * 1_000_003 + number;
            Job job = RandomReadings.job(new Random(seed));
            try {
                holds.accept(job, new Random(seed));
            } catch (RuntimeException | AssertionError broken) {
                fail("seed " + seed + ": " + broken + "\n" + JobFile.fields(job), broken);
            }
        }
    }

    @Test
    void noJobThatIsAcceptedBreaksASum() {
        Map<String, Integer> answers = new HashMap<>();
        everyJob((job, random) -> {
            Job accepted = new JobCheck(Shared.CATALOGUE)
                    .check(JobFile.draft(Documents.json("random", Json.pretty(JobFile.fields(job)), 1), "random"));
            assertThat(accepted.answers()).isEqualTo(job.answers());
            WorkedOut.workings(accepted).forEach(w -> w.finding().ifPresent(f -> answers.merge(f.id() + " "
                    + (f.answer() instanceof Answer.One one ? one.choice() : ""), 1, Integer::sum)));
        });
        assertThat(answers.keySet()).as("met: %s", answers).contains("vent-worked-out pumps-over", "vent-worked-out near-pumping-over",
                "vent-worked-out draws-air", "vent-worked-out stays-put", "tank-room-worked-out too-little", "tank-room-worked-out enough",
                "vessel-worked-out charge-lost", "vessel-worked-out too-small", "vessel-worked-out as-expected", "leak-worked-out holds",
                "leak-worked-out slow-loss", "leak-worked-out fast-loss", "leak-worked-out gains", "cold-base-count one");
    }

    @Test
    void everyAnswerIsOneThatTheFindingTakes() {
        everyJob((job, random) -> WorkedOut.workings(job).forEach(w -> w.finding().ifPresent(WorkingsPropertiesTest::assertValid)));
    }

    private static void assertValid(Calculation.Found found) {
        Finding finding = Shared.CATALOGUE.finding(found.id());
        switch (finding.type()) {
            case NUMBER -> {
                Answer.Reading reading = (Answer.Reading) found.answer();
                assertThat(reading.value()).as(found.id()).isBetween(finding.lowest(), finding.highest());
                assertThat(reading.unit()).isEqualTo(finding.unit());
            }
            case PER_RADIATOR -> assertThat(finding.optionIds()).as(found.id()).containsAll(((Answer.ByRadiator) found.answer()).choices().values());
            case SEVERAL_OF -> assertThat(finding.optionIds()).as(found.id()).containsAll(((Answer.Several) found.answer()).choices());
            default -> assertThat(finding.optionIds()).as(found.id()).contains(((Answer.One) found.answer()).choice());
        }
    }

    @Test
    void everyOutcomeIsAPlainSentence() {
        everyJob((job, random) -> WorkedOut.workings(job).forEach(w -> {
            assertThat(w.says()).hasSizeLessThan(LONGEST_SENTENCE).endsWith(".").doesNotContain("NaN", "Infinity");
            assertThat(w.sums()).allSatisfy(s -> assertThat(s).isNotBlank().doesNotContain("NaN", "Infinity"));
        }));
    }

    @Test
    void theSameJobGivesTheSameTwice() {
        everyJob((job, random) -> assertThat(WorkedOut.workings(job)).isEqualTo(WorkedOut.workings(job)));
    }

    @Test
    void whatWasNotCheckedChangesNothing() {
        everyJob((job, random) -> {
            Job more = job;
            for (String finding : Shared.CATALOGUE.findings().keySet()) {
                more = job.isAnswered(finding) || random.nextInt(5) > 0 ? more : more.with(finding, Answer.NOT_CHECKED);
            }
            assertThat(WorkedOut.workings(more)).isEqualTo(WorkedOut.workings(job));
        });
        Job bare = aJob().panels(5, "type-11", 600, 1000).job();
        assertThat(WorkedOut.workings(bare.with("red-lines", Answer.NOT_CHECKED))).isEqualTo(WorkedOut.workings(bare)).isNotEmpty();
    }

    /** How bad it is: stays put, near, over. */
    private static int badness(Job job) {
        return List.of("", "stays-put", "near-pumping-over", "pumps-over").indexOf(WorkedOut.choice(job, "vent-worked-out"));
    }

    private static Job vent(Random random) {
        return aJob().readings("pump-head-m", 0.1 + 10 * random.nextDouble(), "tee-resistance-percent", 40 * random.nextDouble(),
                "vent-rise-mm", 1500 * random.nextDouble()).job();
    }

    @Test
    void moreHeadNeverMakesTheVentSafer() {
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            Job job = vent(random);
            Job more = more(job).readings("pump-head-m", Readings.get(job, "pump-head-m") + 2 * random.nextDouble()).job();
            assertThat(badness(more)).as("seed %d", seed).isGreaterThanOrEqualTo(badness(job)).isPositive();
        }
    }

    @Test
    void aHigherVentIsNeverWorse() {
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            Job job = more(vent(random)).readings("tank-above-boiler-m", 20 * random.nextDouble()).job();
            Job higher = more(job).readings("vent-rise-mm", Readings.get(job, "vent-rise-mm") + 500 * random.nextDouble()).job();
            assertThat(badness(higher)).as("seed %d", seed).isLessThanOrEqualTo(badness(job));
            assertThat(WorkedOut.saying(higher, "The vent stands").grade()).as("seed %d", seed)
                    .isLessThanOrEqualTo(WorkedOut.saying(job, "The vent stands").grade());
        }
    }

    @Test
    void aBaseGrownColderIsNeverHealthier() {
        int restricted = 0;
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            double flow = 50 + 30 * random.nextDouble();
            Radiator r = Radiators.read("hall", flow - 5 * random.nextDouble(), flow - 30 * random.nextDouble(), flow, flow - 20 * random.nextDouble());
            if (state(r) == RadiatorState.BASE_RESTRICTED) {
                restricted++;
                Temperatures t = r.temperatures();
                Radiator colder = Radiators.read("hall", t.topCelsius().getAsDouble(), t.baseCelsius().getAsDouble() - 20 * random.nextDouble(),
                        flow, t.returnTailCelsius().getAsDouble());
                assertThat(state(colder)).as("seed %d", seed).isEqualTo(RadiatorState.BASE_RESTRICTED);
            }
        }
        assertThat(restricted).isGreaterThan(TRIES / 20);
    }

    private static RadiatorReading.RadiatorState state(Radiator r) {
        return SurveyedRadiator.of(aJob().radiators(r).job()).get(0).state();
    }

    @Test
    void moreVesselNeverRaisesThePressureExpected() {
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            double litres = 1 + 30 * random.nextDouble();
            Job job = aJob().readings("system-content-litres", 20 + 200 * random.nextDouble(), "vessel-size-litres", litres,
                    "pressure-cold-bar", 2 * random.nextDouble(), "pressure-hot-bar", 3).job();
            Job larger = more(job).readings("vessel-size-litres", litres + 10 * random.nextDouble()).job();
            double content = Readings.get(job, "system-content-litres");
            assertThat(HotGauge.of(larger).orElseThrow().expectedBar(content)).as("seed %d", seed)
                    .isLessThanOrEqualTo(HotGauge.of(job).orElseThrow().expectedBar(content));
        }
    }
}
