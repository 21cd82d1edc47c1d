package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.emitter.Balancing.Adjustment;
import neutralpoint.hydronics.emitter.Balancing.AsFound;
import neutralpoint.hydronics.emitter.Balancing.Feed;
import neutralpoint.hydronics.emitter.Balancing.Lockshield;
import neutralpoint.hydronics.emitter.Balancing.Plan;
import neutralpoint.hydronics.emitter.Balancing.Target;
import neutralpoint.hydronics.pipework.Fluid;
import neutralpoint.hydronics.pipework.GenericLockshield;
import neutralpoint.hydronics.pipework.Kv;
import org.junit.jupiter.api.Test;

class BalancingTest {
    private static final Fluid WATER = new Fluid(975, 0.39e-6, 4190);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private static AsFound piped(String name, double watts, double pascal) {
        return new AsFound(name, watts, Optional.empty(), OptionalDouble.of(pascal));
    }

    private static AsFound read(String name, double watts, double hotter, double cooler) {
        return new AsFound(name, watts, Optional.of(new TailReading(hotter, cooler)), UNKNOWN);
    }

    private static AsFound both(String name, double watts, double hotter, double cooler, double pascal) {
        return new AsFound(name, watts, Optional.of(new TailReading(hotter, cooler)), OptionalDouble.of(pascal));
    }

    private static Plan plan(double dropKelvin, AsFound... radiators) {
        return Balancing.plan(List.of(radiators), dropKelvin, UNKNOWN, WATER);
    }

    private static Target target(Plan plan, String name) {
        return plan.order().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    /**
     * From the pipes alone. At 11 K the hall's 1500 W need 60 000 · 1500 / (975 · 4190 · 11) = 2.0028 L/min. Its loss falls
     * 6000 Pa short of the bedroom's: its lockshield must add what a valve of Kv 0.12017 · √(0.975 / 0.06) = 0.4844 does;
     * in series with a fully open one of 1.2 that is 0.4492, which is 1 + 0.5 · (0.4492 − 0.34) / 0.2 = 1.273 turns.
     */
    @Test
    void fromPipeLossesTheNearestRadiatorIsThrottledFirstAndMost() {
        Plan plan = plan(11, piped("bedroom", 1000, 9000), piped("lounge", 2000, 5000), piped("hall", 1500, 3000));
        assertThat(plan.order()).extracting(Target::name).containsExactly("hall", "lounge", "bedroom");
        assertThat(plan.order()).extracting(Target::feed).containsOnly(Feed.NOT_MEASURED);
        assertThat(plan.order()).extracting(Target::adjustment)
                .containsExactly(Adjustment.CLOSE_DOWN, Adjustment.CLOSE_DOWN, Adjustment.OPEN_FULLY);
        assertThat(plan.order()).extracting(Target::dropKelvin).containsOnly(11.0);
        assertThat(plan.isBalanced()).isFalse();

        Target hall = target(plan, "hall");
        assertThat(hall.flowLitresPerMinute()).isCloseTo(2.00277, within(0.00001));
        Lockshield lockshield = hall.lockshield().orElseThrow();
        assertThat(lockshield.takeUpPascal()).isCloseTo(6000, within(1e-9));
        assertThat(lockshield.kv()).isCloseTo(0.44919, within(0.00001));
        assertThat(lockshield.indicativeTurns()).isCloseTo(1.273, within(0.0005));
        assertThat(target(plan, "lounge").lockshield().orElseThrow().kv()).isCloseTo(0.66045, within(0.00001));
    }

    @Test
    void theIndexRadiatorStaysFullyOpenAndComesLast() {
        Plan plan = plan(11, piped("bedroom", 1000, 9000), piped("lounge", 2000, 5000));
        assertThat(plan.indexRadiator()).isEqualTo("bedroom");
        assertThat(target(plan, "bedroom").lockshield()).contains(new Lockshield(0, 1.2, 4));
    }

    /** 4500 W at 20 K: 60 000 · 4500 / (975 · 4190 · 20) = 3.3046 L/min; at 11 K 20/11 as much. */
    @Test
    void aWiderDropNeedsLessFlow() {
        AsFound[] house = {piped("bedroom", 1000, 9000), piped("lounge", 2000, 5000), piped("hall", 1500, 3000)};
        assertThat(plan(Balancing.CONDENSING_DROP_KELVIN, house).flowLitresPerMinute()).isCloseTo(3.3046, within(0.0001));
        assertThat(plan(Balancing.OLDER_PRACTICE_DROP_KELVIN, house).flowLitresPerMinute()).isCloseTo(6.0083, within(0.0001));
    }

    /** The usual case: nothing known of the pipes, a thermometer on both tails of every radiator. */
    @Test
    void fromReadingsTheMostOverFedIsThrottledFirst() {
        Plan plan = plan(11, read("bedroom", 1000, 68, 48), read("hall", 1500, 70, 66), read("lounge", 2000, 70, 59),
                read("kitchen", 800, 70, 63), read("bathroom", 700, 69, 55));
        assertThat(plan.order()).extracting(Target::name)
                .containsExactly("hall", "kitchen", "lounge", "bathroom", "bedroom");
        assertThat(plan.order()).extracting(Target::feed)
                .containsExactly(Feed.OVER_FED, Feed.OVER_FED, Feed.RIGHT, Feed.UNDER_FED, Feed.UNDER_FED);
        assertThat(plan.order()).extracting(Target::adjustment).containsExactly(Adjustment.CLOSE_DOWN,
                Adjustment.CLOSE_DOWN, Adjustment.LEAVE, Adjustment.OPEN_UP, Adjustment.OPEN_FULLY);
        assertThat(plan.indexRadiator()).isEqualTo("bedroom");
        assertThat(target(plan, "hall").lockshield()).isEmpty();
        assertThat(plan.isBalanced()).isFalse();
    }

    /**
     * With 20 kPa known at the radiators: the hall drops 5.5 K instead of 11 K, so it passes about twice its share. To halve
     * the flow its lockshield takes up three quarters of the pressure, 20 000 · (1 − 0.5²) = 15 000 Pa.
     */
    @Test
    void withThePressureKnownReadingsTellTheTakeUp() {
        Plan plan = Balancing.plan(List.of(read("hall", 1500, 70, 64.5), read("lounge", 1500, 70, 58),
                read("bedroom", 1000, 70, 55)), 11, OptionalDouble.of(20_000), WATER);
        Lockshield hall = target(plan, "hall").lockshield().orElseThrow();
        assertThat(hall.takeUpPascal()).isCloseTo(15_000, within(1e-9));
        // Kv 0.12017 · √(0.975 / 0.15) = 0.30637; in series with 1.2: 0.29685.
        assertThat(hall.kv()).isCloseTo(0.29685, within(0.00002));
        assertThat(target(plan, "lounge").lockshield()).contains(new Lockshield(0, 1.2, 4));
        assertThat(target(plan, "bedroom").lockshield()).contains(new Lockshield(0, 1.2, 4));
    }

    @Test
    void twoKelvinEitherWayIsNearEnough() {
        assertThat(feedAtDrop(9)).isEqualTo(Feed.RIGHT);
        assertThat(feedAtDrop(13)).isEqualTo(Feed.RIGHT);
        assertThat(feedAtDrop(8.9)).isEqualTo(Feed.OVER_FED);
        assertThat(feedAtDrop(13.1)).isEqualTo(Feed.UNDER_FED);
    }

    private static Feed feedAtDrop(double drop) {
        return target(plan(11, read("probe", 1000, 70, 70 - drop), read("other", 1000, 70, 59)), "probe").feed();
    }

    /** A cold radiator shows no drop either; what tells it from an over-fed one is that both its tails are cold. */
    @Test
    void aRadiatorWithBothTailsColdIsStarvedNotOverFed() {
        Plan plan = plan(11, read("cold", 1000, 40, 40), read("tepid", 1000, 55, 30), read("hall", 1500, 70, 66),
                read("far", 1000, 70, 40));
        assertThat(target(plan, "cold").feed()).isEqualTo(Feed.STARVED);
        assertThat(target(plan, "tepid").feed()).isEqualTo(Feed.STARVED);
        assertThat(target(plan, "tepid").adjustment()).isEqualTo(Adjustment.OPEN_FULLY);
        assertThat(plan.order()).extracting(Target::name).containsExactly("hall", "far", "tepid", "cold");
        assertThat(plan.indexRadiator()).isEqualTo("cold");
    }

    @Test
    void fifteenKelvinBelowTheHottestTailIsStarved() {
        assertThat(target(plan(11, read("a", 1000, 55, 50), read("b", 1000, 70, 59)), "a").feed()).isEqualTo(Feed.STARVED);
        assertThat(target(plan(11, read("a", 1000, 55.1, 50), read("b", 1000, 70, 59)), "a").feed()).isEqualTo(Feed.OVER_FED);
    }

    @Test
    void onlyAHouseThatIsRightThroughoutIsBalanced() {
        assertThat(plan(11, read("a", 1000, 70, 59), read("b", 1000, 69, 59)).isBalanced()).isTrue();
        assertThat(plan(11, read("a", 1000, 70, 59), read("b", 1000, 69, 50)).isBalanced()).isFalse();
    }

    /** With both, the pipes say which radiator is the index and what to take up; the readings say what to turn first. */
    @Test
    void readingsAndPipeLossesTogether() {
        Plan plan = plan(11, both("far", 1000, 70, 60, 9000), both("middle", 1000, 70, 65, 5000),
                both("near", 1000, 70, 50, 3000));
        assertThat(plan.indexRadiator()).isEqualTo("far");
        assertThat(plan.order()).extracting(Target::name).containsExactly("middle", "near", "far");
        assertThat(plan.order()).extracting(Target::adjustment)
                .containsExactly(Adjustment.CLOSE_DOWN, Adjustment.OPEN_UP, Adjustment.OPEN_FULLY);
        assertThat(target(plan, "near").lockshield().orElseThrow().takeUpPascal()).isEqualTo(6000);
    }

    /** One pipe loss among readings helps nothing; one reading among pipe losses says how that radiator is fed. */
    @Test
    void whatIsKnownOfSomeRadiatorsOnly() {
        Plan readings = plan(11, both("a", 1000, 70, 65, 9000), read("b", 1000, 70, 55));
        assertThat(readings.indexRadiator()).isEqualTo("b");
        assertThat(target(readings, "a").lockshield()).isEmpty();
        Plan pipes = plan(11, both("a", 1000, 70, 65, 5000), piped("b", 1000, 5000), piped("c", 1000, 9000));
        assertThat(target(pipes, "a").feed()).isEqualTo(Feed.OVER_FED);
        assertThat(target(pipes, "b").feed()).isEqualTo(Feed.NOT_MEASURED);
        assertThatIllegalArgumentException().isThrownBy(() -> plan(11, read("a", 1000, 70, 65), piped("b", 1000, 5000)))
                .withMessageContaining("one of both must be known for all");
    }

    @Test
    void aRadiatorAsHardToReachAsTheIndexStaysOpenToo() {
        Plan plan = plan(11, piped("a", 1000, 9000), piped("b", 1000, 8999.5), piped("c", 1000, 8999), piped("d", 1000, 2000));
        assertThat(target(plan, "a").adjustment()).isEqualTo(Adjustment.OPEN_FULLY);
        assertThat(target(plan, "b").adjustment()).isEqualTo(Adjustment.OPEN_FULLY);
        assertThat(target(plan, "b").lockshield()).contains(new Lockshield(0.5, 1.2, 4));
        assertThat(target(plan, "c").adjustment()).isEqualTo(Adjustment.CLOSE_DOWN);
        assertThat(target(plan, "c").lockshield().orElseThrow().kv()).isLessThan(1.2);
    }

    @Test
    void theGenericLockshieldOpensWithItsTurns() {
        assertThat(GenericLockshield.indicativeTurns(0)).isZero();
        assertThat(GenericLockshield.indicativeTurns(0.04)).isCloseTo(0.125, within(1e-12));
        assertThat(GenericLockshield.indicativeTurns(0.88)).isCloseTo(2.5, within(1e-12));
        assertThat(GenericLockshield.indicativeTurns(5)).isEqualTo(4);
        ArgumentRange.limits("kv", 0, 10_000, GenericLockshield::indicativeTurns);
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        AsFound hall = piped("hall", 1000, 3000);
        ArgumentRange.limits("dropKelvin", 5, 30, drop -> plan(drop, hall));
        ArgumentRange.limits("pressurePascal", 1, 1e6, p -> Balancing.plan(List.of(hall), 11, OptionalDouble.of(p), WATER));
        ArgumentRange.limits("watts", 1, 50_000, watts -> piped("x", watts, 3000));
        ArgumentRange.limits("pipeLossPascal", 0, 1e6, pascal -> piped("x", 1000, pascal));
        ArgumentRange.limits("hotterCelsius", -10, 120, hotter -> new TailReading(hotter, -10));
        ArgumentRange.limits("coolerCelsius", -10, 70, cooler -> new TailReading(70, cooler));
        assertThatIllegalArgumentException().isThrownBy(() -> plan(11)).withMessageContaining("number of radiators is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> plan(11, hall, piped("b", 1, 1), hall))
                .withMessage("Two radiators are named hall; each must have a name of its own.");
    }

    /** The largest radiator next to the smallest, in the thinnest and the thickest liquid, still has a lockshield setting. */
    @Test
    void theFarthestValidValuesHaveASetting() {
        for (Fluid fluid : List.of(new Fluid(900, 1e-6, 3000), new Fluid(1200, 1e-6, 4500))) {
            for (double drop : new double[] {5, 30}) {
                Plan plan = Balancing.plan(List.of(piped("index", 1, 1e6), piped("level", 50_000, 1e6 - 1),
                        piped("near", 1, 0)), drop, UNKNOWN, fluid);
                assertThat(plan.order()).allSatisfy(
                        t -> assertThat(t.lockshield().orElseThrow().indicativeTurns()).isBetween(0.0, 4.0));
            }
        }
    }

    /** Whatever the house: with every lockshield as planned, every circuit loses as much as the index circuit. */
    @Test
    void aPlanFromPipesEvensOutEveryCircuit() {
        long seed = 20260107;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            List<AsFound> house = new ArrayList<>();
            for (int n = 0; n < 1 + random.nextInt(12); n++) {
                house.add(piped("r" + n, 200 + 3000 * random.nextDouble(), 500 + 20_000 * random.nextDouble()));
            }
            Plan plan = Balancing.plan(house, 5 + 20 * random.nextDouble(), UNKNOWN, WATER);
            double most = house.stream().mapToDouble(r -> r.pipeLossPascal().orElseThrow()).max().orElseThrow();
            assertThat(plan.order()).hasSize(house.size());
            assertThat(plan.order().get(house.size() - 1).name()).isEqualTo(plan.indexRadiator());
            for (Target t : plan.order()) {
                AsFound r = house.stream().filter(f -> f.name().equals(t.name())).findFirst().orElseThrow();
                Lockshield lockshield = t.lockshield().orElseThrow();
                double flow = t.flowLitresPerMinute() * 0.06;
                double open = Kv.pressureDropBar(flow, GenericLockshield.FULLY_OPEN_KV, 975);
                double planned = Kv.pressureDropBar(flow, lockshield.kv(), 975);
                assertThat(r.pipeLossPascal().orElseThrow() + (planned - open) * 1e5)
                        .as("seed %d, round %d, %s", seed, i, t).isCloseTo(most, within(1.0));
            }
        }
    }
}
