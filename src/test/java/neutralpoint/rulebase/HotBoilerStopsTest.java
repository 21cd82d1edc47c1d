package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import neutralpoint.Shared;
import neutralpoint.catalogue.Danger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A stop that can be obeyed with what is recorded: common practice, no source. */
class HotBoilerStopsTest {
    @Test
    void boilerShortOfWaterHasNoPumpLeftRunningAndNoWaterLetInHot() {
        String now = now("\"heating-filled-by\": \"filling-loop\", \"pressure-cold-bar\": 0, \"boiler-flow-celsius\": 97");
        assertThat(now).contains("Switch the boiler off at its spur").contains("quite cold")
                .doesNotContain("not yet at the spur").doesNotContain("is left to carry the heat off");
        assertThat(stops("\"heating-filled-by\": \"filling-loop\", \"pressure-cold-bar\": 0, \"boiler-flow-celsius\": 97"))
                .containsExactly("boiler-dry-and-hot", "boiler-out-of-control");
    }

    @Test
    void fullBoilerThatRunsTooHotKeepsThePumpThatCoolsIt() {
        assertThat(now("\"boiler-flow-celsius\": 97")).contains("at its thermostat or programmer, not yet at the spur");
    }

    @Test
    void fireIsShutByItsAirAndNotAtASwitch() {
        assertThat(now("\"heat-source\": [\"solid-fuel\"], \"boiler-flow-celsius\": 97")).contains("Close the air of the fire")
                .doesNotContain("spur");
        assertThat(now("\"heat-source\": [\"solid-fuel\"], \"red-lines\": [\"storage-cistern-warm\"]")).contains("Close the air of the fire");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"tank-level-cold\": \"empty\", ", "\"float-valve-by-hand\": \"supply-shut\", ",
        "\"heating-filled-by\": \"filling-loop\", \"pressure-cold-bar\": 0, "})
    void hammeringThatWentWithTheWaterRestoredIsNoDangerAnyMore(String water) {
        assertThat(stops(water + "\"noise-character\": \"hammering\"")).contains("boiler-dry-and-hot");
        assertThat(stops(water + "\"noise-character\": \"hammering\", \"noise-with-pressure-restored\": \"yes\"")).doesNotContain("boiler-dry-and-hot");
    }

    @Test
    void nothingSaysOpenTheSupplyOfABoilerThatMayBeDry() {
        Assessment a = assess("\"red-lines\": [], \"heating-filled-by\": \"loft-tank\", \"complaint\": [\"kettling\"], "
                + "\"tank-level-cold\": \"empty\", \"float-valve-by-hand\": \"supply-shut\", \"boiler-flow-celsius\": 98");
        assertThat(a.verdict().course().id()).isEqualTo("refer");
        assertThat(a.order()).isEmpty();
        assertThat(a.verdict().because()).noneMatch(b -> b.startsWith("Opening it"));
    }

    @Test
    void secondGaugeDecidesBetweenTheNeedleAndTheSafetyValve() {
        assertThat(stops("\"pressure-cold-bar\": 3.9")).containsExactly("safety-valve-does-not-lift");
        assertThat(stops("\"pressure-cold-bar\": 3.9, \"second-gauge-bar\": 3.8")).containsExactly("safety-valve-does-not-lift");
        assertThat(stops("\"pressure-cold-bar\": 3.9, \"second-gauge-bar\": 3.2")).containsExactly("safety-valve-does-not-lift");
        assertThat(stops("\"pressure-cold-bar\": 3.9, \"second-gauge-bar\": 1.2")).isEmpty();
        assertThat(stops("\"pressure-cold-bar\": 1.5, \"second-gauge-bar\": 3.6")).containsExactly("safety-valve-does-not-lift");
    }

    private static String now(String findings) {
        return assess(findings).stops().stream().flatMap(s -> s.now().stream()).map(Danger.Act::says).collect(Collectors.joining(" "));
    }

    private static List<String> stops(String findings) {
        return assess(findings).stops().stream().map(Assessment.StopFound::id).toList();
    }

    private static Assessment assess(String findings) {
        return Shared.ASSESSOR.assess(Shared.job("{\"findings\": {" + findings + "}}"));
    }
}
