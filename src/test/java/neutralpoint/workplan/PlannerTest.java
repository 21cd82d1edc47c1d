package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.rulebase.DraftPlan;
import neutralpoint.rulebase.RuleInfo;
import neutralpoint.rulebase.fact.Step;
import org.junit.jupiter.api.Test;

/**
 * What the planner orders, and what it refuses to produce, each by its name.
 * Holds {@link IsolationRegister}, {@link PlanStep}, {@link Refusal}, {@link Stage} and {@link neutralpoint.rulebase.DraftPlan}.
 */
class PlannerTest {
    private static final Step BOILER_DEAD = Step.called("boiler-dead").in("isolate").fires(false);

    @Test
    void stepsComeByStageAndByWhatTheyNeed() {
        assertThat(order(Step.called("dump-first-radiator").in("dump").needs("radiators-shut"),
                Step.called("radiators-shut").in("cleanse"), BOILER_DEAD, Step.called("agree").in("prepare")))
                .containsExactly("agree", "boiler-dead", "radiators-shut", "dump-first-radiator");
    }

    @Test
    void whatAStepNeedsComesBeforeItWhateverTheStage() {
        assertThat(order(Step.called("cap-vent").in("prepare").needs("boiler-dead"), BOILER_DEAD))
                .containsExactly("boiler-dead", "cap-vent");
    }

    @Test
    void whatAStepComesAfterIsLeftOutWhereItIsNotInThePlan() {
        assertThat(order(Step.called("b").in("prepare").after("c", "not-here"), Step.called("c").in("prepare"))).containsExactly("c", "b");
    }

    @Test
    void aNeedThatIsNotInThePlanIsRefused() {
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("pump-out").in("connect").needs("pump-cable-safe")))
                .withMessage("the step pump-out needs pump-cable-safe, which is not in the plan.");
    }

    @Test
    void aCircleIsRefused() {
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("a").in("dump").needs("b"),
                Step.called("b").in("dump").needs("c"), Step.called("c").in("dump").needs("a")))
                .withMessageContaining("a circle");
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("a").in("dump").needs("a"))).withMessageContaining("a circle");
    }

    @Test
    void aClosureThatIsNotReopenedIsRefused() {
        assertThatIllegalStateException().isThrownBy(() -> order(BOILER_DEAD,
                Step.called("cold-feed-capped").in("isolate").needs("boiler-dead").closes("cold-feed")))
                .withMessage("the step cold-feed-capped closes the cold feed, and no step after it reopens it.");
    }

    @Test
    void aReopeningOfWhatWasNeverClosedIsRefused() {
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("vent-uncapped").in("put-back").reopens("open-vent")))
                .withMessage("the step vent-uncapped reopens the open vent, which no step before it closes.");
    }

    @Test
    void aSecondClosureOfTheSameThingIsRefused() {
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("a").in("isolate").closes("radiators"),
                Step.called("b").in("isolate").closes("radiators"), Step.called("c").in("put-back").reopens("radiators")))
                .withMessage("the step b closes the radiators, which is closed already.");
    }

    @Test
    void aReopeningComesAfterItsClosureThoughNothingElseSaysSo() {
        assertThat(order(Step.called("a").in("prepare").reopens("radiators"), Step.called("b").in("prove").closes("radiators")))
                .containsExactly("b", "a");
    }

    @Test
    void waterIsKeptUnderEightyDegrees() {
        assertThat(order(Step.called("warm").in("heat").heatsTo(79.9))).containsExactly("warm");
        for (double celsius : List.of(80.0, 95.0, Double.NaN)) {
            assertThatIllegalStateException().isThrownBy(() -> order(Step.called("boil").in("heat").heatsTo(celsius)))
                    .withMessageContaining("boil").withMessageContaining("under 80 °C");
        }
    }

    @Test
    void noWaterIsLetOutWhileTheBoilerMayFire() {
        Step dump = Step.called("first-radiator-dumped").in("dump");
        assertThatIllegalStateException().isThrownBy(() -> order(dump))
                .withMessage("the step first-radiator-dumped lets water out while the boiler may fire.");
        assertThat(order(BOILER_DEAD, dump)).hasSize(2);
        assertThatIllegalStateException().isThrownBy(() -> order(BOILER_DEAD, Step.called("heat").in("heat").fires(true), dump))
                .withMessageContaining("first-radiator-dumped");
        assertThatIllegalStateException().isThrownBy(() -> order(Step.called("rinse").in("rinse"))).withMessageContaining("rinse lets water out");
    }

    @Test
    void theBoilerMayNotFireWhileAWayOfReliefIsShut() {
        Step cap = Step.called("vent-capped").in("isolate").closes("open-vent");
        Step uncap = Step.called("vent-uncapped").in("put-back").reopens("open-vent");
        assertThatIllegalStateException().isThrownBy(() -> order(cap, uncap))
                .withMessage("in the step vent-capped the boiler may fire while the open vent is closed.");
        assertThatIllegalStateException().isThrownBy(() -> order(BOILER_DEAD, cap.needs("boiler-dead"), Step.called("heat").in("heat").fires(true), uncap))
                .withMessageContaining("in the step heat the boiler may fire while the open vent is closed");
        assertThat(order(BOILER_DEAD, cap.needs("boiler-dead"), uncap, Step.called("boiler-live").in("prove").fires(true))).hasSize(4);
    }

    @Test
    void twoRulesMayDrawTheSameStepButNotTwoDifferentOnesOfOneName() {
        Step one = Step.called("tees-fitted").in("connect").minutes(45);
        assertThat(order(one, one)).containsExactly("tees-fitted");
        assertThatIllegalStateException().isThrownBy(() -> order(one, one.minutes(60)))
                .withMessage("the step tees-fitted is drawn up in two ways, by rule 0 and by rule 1.");
    }

    @Test
    void aStageThatThereIsNotIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> order(Step.called("a").in("afterwards"))).withMessageContaining("put-back");
    }

    @Test
    void minutesAreNeverNegative() {
        for (double minutes : List.of(-0.1, Double.NaN, Double.POSITIVE_INFINITY)) {
            assertThatThrownBy(() -> Step.called("a").minutes(minutes)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("0 or more");
        }
    }

    @Test
    void aStepCarriesItsRulesNotes() {
        RuleInfo rule = RuleInfo.of("r", "workplan", Map.of("says", "Shut it.", "because", "It leaks.", "source", "common-practice",
                "tools", "key, tag", "proves", "It is dry.", "caution", "scald"));
        PlanStep step = Planner.order(List.of(new DraftPlan.DraftStep(rule, Step.called("a").in("prepare").minutes(7))),
                Shared.CATALOGUE.closures(), List.of()).get(0);
        assertThat(step.says()).isEqualTo("Shut it.");
        assertThat(step.because()).isEqualTo("It leaks.");
        assertThat(step.source()).isEqualTo("common-practice");
        assertThat(step.tools()).containsExactly("key", "tag");
        assertThat(step.proves()).isEqualTo("It is dry.");
        assertThat(step.caution()).contains("scald");
        assertThat(step.minutes()).isEqualTo(7);
        assertThat(step.boilerMayFire()).isTrue();
    }

    private static List<String> order(Step... steps) {
        int[] number = {0};
        return Planner.order(Stream.of(steps).map(s -> new DraftPlan.DraftStep(RuleInfo.of("rule " + number[0]++, "workplan", Map.of()), s)).toList(),
                Shared.CATALOGUE.closures(), List.of())
                .stream().map(PlanStep::id).toList();
    }
}
