package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import neutralpoint.Shared;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Danger;
import org.junit.jupiter.api.Test;

/** What is told depends on what burns, and on what stands in the house. Common practice, no source, where none is named. */
class FuelDangersTest {

    /**
     * The gas emergency service of Great Britain, 0800 111 999: What to do in a gas or carbon monoxide emergency,
     * https://www.rbkc.gov.uk/housing/housing-news/what-do-gas-emergency; that of Northern Ireland, 0800 002 001: from
     * one supplier's page, not the network's own.
     */
    @Test
    void mainsGasIsForTheEmergencyServiceOfItsCountry() {
        assertThat(now("'red-lines': ['gas-smell'], 'gas-supply': 'mains'")).contains("0800 111 999").contains("0800 002 001")
                .doesNotContain("heavier");
    }

    @Test
    void gasFromATankIsHeavierThanAirAndForItsSupplier() {
        assertThat(now("'red-lines': ['gas-smell'], 'gas-supply': 'lpg'")).contains("cellars").contains("supplier's emergency number")
                .doesNotContain("0800").doesNotContain("at the meter if");
    }

    @Test
    void fumesOfOilAndOfAFireAreNotForTheGasLine() {
        assertThat(now("'red-lines': ['carbon-monoxide'], 'heat-source': ['oil-boiler']")).contains("999").contains("carbon monoxide")
                .doesNotContain("gas emergency line");
        assertThat(now("'red-lines': ['carbon-monoxide'], 'heat-source': ['solid-fuel']")).doesNotContain("gas emergency line");
        assertThat(now("'red-lines': ['carbon-monoxide'], 'heat-source': ['solid-fuel', 'gas-boiler']")).contains("gas emergency line");
    }

    @Test
    void aFireIsToldOfNoFlameNoCaseAndNoGas() {
        Assessment a = assess("'heating-filled-by': 'loft-tank', 'heat-source': ['solid-fuel'], 'complaint': ['no-heat-at-all', 'banging'], "
                + "'flow-pipe-heat': 'first-metre', 'noise-character': 'hammering', 'coil-tails': 'both-cold', 'licences-held': ['gas']");
        assertThat(a.stops()).extracting(Assessment.StopFound::id).containsExactly("fire-without-circulation");
        assertThat(a.verdict().chief().map(c -> c.id()).orElse("")).isNotIn("boiler-will-not-fire", "combustion-fault", "sensor-fault");
        assertThat(a.cautions()).extracting(Caution::id).doesNotContain("gas-licensed-only");
    }

    @Test
    void aGasBackBoilerIsNoStove() {
        Assessment a = assess("'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'heat-source': ['gas-back-boiler'], "
                + "'also-connected': ['stove-pipes'], 'complaint': ['routine']");
        assertThat(a.arrangement().id()).isNotEqualTo("solid-fuel");
        assertThat(a.arrangement().contradictions()).isEmpty();
        assertThat(a.cautions()).extracting(Caution::id).doesNotContain("back-boiler-no-fire", "solid-fuel-never-valve-vent");
    }

    @Test
    void aStoveOnAnUnventedCylinderIsNoSystemToBeSureOf() {
        Assessment a = assess("'heating-filled-by': 'loft-tank', 'hot-water-made-by': 'cylinder', 'heat-source': ['solid-fuel'], "
                + "'cylinder-style': 'unvented'");
        assertThat(a.arrangement().status()).isEqualTo("contradictory");
        assertThat(a.stops()).extracting(Assessment.StopFound::id).contains("fire-on-unvented-cylinder");
    }

    @Test
    void aColdDripAtTheTundishIsNoStopAndNoFlush() {
        Assessment a = assess("'complaint': ['routine'], 'heating-filled-by': 'filling-loop', 'cylinder-style': 'unvented', 'tundish': 'cold-drips'");
        assertThat(a.stops()).isEmpty();
        assertThat(a.verdict().course().id()).isEqualTo("refer");
        assertThat(a.verdict().chief().map(c -> c.id())).contains("unvented-discharging-cold");
    }

    @Test
    void aHeatPumpInAFrostKeepsItsPower() {
        Danger frost = assess("'heat-source': ['heat-pump'], 'frost-expected': 'yes'").stops().get(0).danger();
        assertThat(frost.id()).isEqualTo("heat-pump-frost");
        assertThat(frost.heat().meanwhile()).isEqualTo(Danger.HeatMeanwhile.MUST_STAY);
    }

    private static String now(String findings) {
        return assess(findings).stops().get(0).now().stream().map(Danger.Act::says).collect(Collectors.joining("\n"));
    }

    private static Assessment assess(String findings) {
        return Shared.ASSESSOR.assess(Shared.job("{\"findings\": {" + findings.replace('\'', '"') + "}}"));
    }
}
