package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Closure;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.Planner;
import neutralpoint.workplan.Stage;
import org.junit.jupiter.api.Test;

/** What holds of every plan, tried on call-outs made at random, for the course recommended and for a method drawn by lot. */
class WorkPlanPropertiesTest {
    private static final int TRIES = Tries.PLANS;
    private static final long SEED = Tries.SEED;
    private static final int ENOUGH = 20;
    private static final List<String> METHODS = List.copyOf(Shared.CATALOGUE.methods().keySet());

    /**
     * The ways by which a heat source's water expands, is relieved or moves on, written down here by hand and not read from
     * the catalogue. Common practice, no source.
     */
    private static final Set<String> RELIEF = Set.of("open-vent", "cold-feed", "combined-feed-and-vent", "tank-outlet",
            "expansion-vessel", "gravity-pair", "boiler-valves", "heat-leak-circuit");

    @Test
    void theWaysOfReliefAreThoseOfTheCatalogue() {
        assertThat(Shared.CATALOGUE.closures().values().stream().filter(Closure::relief).map(Closure::id)).containsExactlyInAnyOrderElementsOf(RELIEF);
    }

    @Test
    void everyPlanIsSafeFromEndToEnd() {
        AtomicInteger cleanses = new AtomicInteger();
        AtomicInteger refusals = new AtomicInteger();
        IntStream.range(0, TRIES).parallel().forEach(number -> {
            Job job = RandomCallouts.callout(SEED, number);
            Random random = new Random(SEED * 31 + number);
            for (Optional<String> method : List.of(Optional.<String>empty(), Optional.of(RandomCallouts.any(METHODS, random)))) {
                String what = "call-out " + number + " of seed " + SEED + " by " + method.orElse("the recommended course");
                Planner.Planned planned;
                try {
                    planned = Planner.plan(Shared.ASSESSOR, job, method);
                } catch (IllegalStateException unsafe) {
                    throw new AssertionError(what + ": " + unsafe.getMessage(), unsafe);
                }
                check(planned, what);
                cleanses.addAndGet(planned.draft().method().isPresent() ? 1 : 0);
                refusals.addAndGet(planned.refusal().isPresent() ? 1 : 0);
            }
        });
        assertThat(cleanses.get()).as("plans to cleanse").isGreaterThanOrEqualTo(ENOUGH);
        assertThat(refusals.get()).as("refusals").isGreaterThanOrEqualTo(ENOUGH);
    }

    private static void check(Planner.Planned planned, String what) {
        Set<String> done = new HashSet<>();
        List<String> shut = new ArrayList<>();
        for (PlanStep step : planned.steps()) {
            assertThat(done).as("%s: before %s", what, step.id()).containsAll(step.needs());
            step.reopens().ifPresent(thing -> assertThat(shut.remove(thing.id())).as("%s: %s", what, step.id()).isTrue());
            step.closes().ifPresent(thing -> shut.add(thing.id()));
            step.heatsToCelsius().ifPresent(c -> assertThat(c).as("%s: %s", what, step.id()).isLessThan(80));
            if (step.stage() == Stage.DUMP || step.stage() == Stage.RINSE) {
                assertThat(step.boilerMayFire()).as("%s: %s", what, step.id()).isFalse();
            }
            if (shut.stream().anyMatch(RELIEF::contains)) {
                assertThat(step.boilerMayFire()).as("%s: %s with %s closed", what, step.id(), shut).isFalse();
            }
            done.add(step.id());
        }
        assertThat(shut).as("%s: left closed", what).isEmpty();
        nothingForbidden(planned, what);
    }

    /** What is forbidden is read straight from the answers and not through the rules. */
    private static void nothingForbidden(Planner.Planned planned, String what) {
        Assessment a = planned.draft().assessment();
        if (planned.draft().course().equals("full-flush")) {
            DoNotFlush.fully(a).ifPresent(why -> assertThat(planned.steps()).as("%s: %s", what, why).isEmpty());
        }
        if (planned.draft().method().isPresent()) {
            assertThat(planned.refusal()).as(what).isEmpty();
            assertThat(DoNotFlush.atAll(a)).as(what).isEmpty();
            assertThat(a.stops()).as(what).isEmpty();
            assertThat(planned.draft().layout().traits()).as(what).doesNotContain("no-flush", "no-additives");
        }
        if (a.job().answers().containsKey("cylinder-style") && DoNotFlush.reachesTheTaps(a.job())) {
            assertThat(planned.steps()).as(what).noneMatch(s -> s.id().equals("inhibitor-dosed") || s.id().equals("cleaner-dosed"));
        }
    }
}
