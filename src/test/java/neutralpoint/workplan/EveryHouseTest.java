package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Closure;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessor;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every kind of system with every layout of controls and every way of cleansing: a plan where the trade
 * allows it, a refusal where it does not. What is allowed is written down here and not asked of the rules.
 * Common practice, no source.
 * Holds {@link neutralpoint.rulebase.PlanDrafter} and {@link neutralpoint.rulebase.MethodChoice}.
 */
class EveryHouseTest {
    private static final Assessor ASSESSOR = Shared.ASSESSOR;
    private static final Map<String, String> SYSTEMS = systems();
    private static final Map<String, String> CONTROLS = controls();
    private static final Set<String> NEVER = Set.of("single-feed-cylinder", "direct-cylinder", "solid-fuel");

    private static final Set<String> THREE_PORT = Set.of("y-plan", "y-plan, head dead", "w-plan");

    private static final String GUARDED = "main reduced to 1.5 bar";

    private record House(String system, String controls, String method) {
        Job job() {
            return Shared.job("{\"findings\": {\"red-lines\": [], \"waste-goes-to\": \"foul-drain\", " + SYSTEMS.get(system)
                    + (CONTROLS.get(controls).isEmpty() ? "" : ", " + CONTROLS.get(controls)) + "}}");
        }

        /**
         * Never where the water reaches the taps or a fire burns; never by the full main where old parts, thin pipes or
         * parts made for the few metres of water under a tank would have to stand it; never while answers contradict each other, as a three-port valve and hot water on demand do.
         */
        boolean isAllowed() {
            boolean mains = method.equals("mains-pressure-flush");
            boolean contradictory = system.equals("combination-boiler") && THREE_PORT.contains(controls);
            return !NEVER.contains(system) && !contradictory && !(mains && (system.equals("converted-to-sealed") || controls.equals("microbore")))
                    && !(mains && system.startsWith("open-vented") && !controls.equals(GUARDED));
        }
    }

    private static Map<String, String> systems() {
        Map<String, String> s = new LinkedHashMap<>();
        String open = "\"heating-filled-by\": \"loft-tank\", \"loft-tanks\": \"two\", \"small-tank-serves\": \"heating\", "
                + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"indirect\", \"heat-source\": [\"gas-boiler\"], "
                + "\"pump-and-vessel-place\": \"pump-no-vessel\", \"gauge-tells\": \"no-gauge\", \"feed-and-vent-join\": ";
        s.put("open-vented-separate", open + "\"far-apart\"");
        s.put("open-vented-combined", open + "\"one-pipe\"");
        s.put("open-vented-close-coupled", open + "\"within-150-mm\"");
        String sealed = "\"heating-filled-by\": \"filling-loop\", \"gauge-tells\": \"rises-when-hot\", ";
        s.put("sealed-separate", sealed + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"indirect\", "
                + "\"heat-source\": [\"gas-boiler\"], \"pump-and-vessel-place\": \"outside\", \"old-vent-left\": \"nothing-left\"");
        s.put("system-boiler", sealed + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"indirect\", "
                + "\"heat-source\": [\"gas-boiler\"], \"pump-and-vessel-place\": \"in-case\", \"old-vent-left\": \"nothing-left\"");
        s.put("combination-boiler", sealed + "\"hot-water-made-by\": \"on-demand\", \"loft-tanks\": \"no-tanks\", "
                + "\"heat-source\": [\"gas-boiler\"], \"pump-and-vessel-place\": \"in-case\", \"old-vent-left\": \"nothing-left\"");
        s.put("converted-to-sealed", sealed + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"indirect\", "
                + "\"heat-source\": [\"gas-boiler\"], \"pump-and-vessel-place\": \"outside\", \"old-vent-left\": \"capped-stub\"");
        s.put("heat-pump-system", sealed + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"indirect\", "
                + "\"heat-source\": [\"heat-pump\"], \"pump-and-vessel-place\": \"outside\"");
        s.put("single-feed-cylinder", "\"heating-filled-by\": \"shared-tank\", \"loft-tanks\": \"one-large\", "
                + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"single-feed\", \"heat-source\": [\"gas-boiler\"]");
        s.put("direct-cylinder", "\"heating-filled-by\": \"shared-tank\", \"loft-tanks\": \"one-large\", "
                + "\"hot-water-made-by\": \"cylinder\", \"cylinder-style\": \"direct\", \"heat-source\": [\"gas-boiler\"]");
        s.put("solid-fuel", "\"heating-filled-by\": \"loft-tank\", \"loft-tanks\": \"two\", \"hot-water-made-by\": \"cylinder\", "
                + "\"heat-source\": [\"solid-fuel\"], \"heat-leak-path\": \"always-open\"");
        return s;
    }

    private static Map<String, String> controls() {
        Map<String, String> c = new LinkedHashMap<>();
        c.put("not looked at", "");
        c.put("y-plan", "\"motorised-valves\": \"one-three-port\"");
        c.put("y-plan, head dead", "\"motorised-valves\": \"one-three-port\", \"valve-on-heating-call\": \"dead\"");
        c.put("s-plan", "\"motorised-valves\": \"two-two-port\"");
        c.put("w-plan", "\"motorised-valves\": \"diverter-w-plan\"");
        c.put("c-plan, gravity hot water", "\"motorised-valves\": \"one-two-port\", \"cylinder-circuit\": \"gravity-pair\"");
        c.put("no valve", "\"motorised-valves\": \"none\"");
        c.put("microbore", "\"radiator-piping\": \"microbore-manifold\"");
        c.put("one-pipe loop", "\"radiator-piping\": \"one-pipe-loop\"");
        c.put("under-floor and store", "\"also-connected\": [\"under-floor-manifold\", \"heating-store\"]");
        c.put("boiler by-passed, sound", "\"boiler-protected\": \"by-pass\", \"fabric-condition\": \"sound\"");
        c.put("maker allows", "\"boiler-protected\": \"maker-allows\", \"exchanger-kind\": \"stainless-steel\"");
        c.put("pump valves slip", "\"pump-valves\": \"spindle-slips\"");
        c.put(GUARDED, "\"mains-flush-guard\": \"yes\"");
        return c;
    }

    private static Stream<House> houses() {
        return SYSTEMS.keySet().stream().flatMap(s -> CONTROLS.keySet().stream().flatMap(c ->
                Shared.CATALOGUE.methods().keySet().stream().map(m -> new House(s, c, m))));
    }

    @TestFactory
    Stream<DynamicTest> everyHouseHasAPlanOrARefusal() {
        return houses().map(h -> DynamicTest.dynamicTest(h.toString(), () -> {
            Planner.Planned planned = Planner.plan(ASSESSOR, h.job(), Optional.of(h.method()));
            if (h.isAllowed()) {
                assertThat(planned.draft().layout().system()).isEqualTo(h.system());
                assertThat(planned.refusal()).isEmpty();
                assertThat(planned.draft().method()).contains(h.method());
                assertThat(planned.steps()).hasSizeGreaterThan(10);
            } else {
                assertThat(planned.draft().method()).isEmpty();
                assertThat(planned.steps()).noneMatch(s -> Set.of(Stage.HEAT, Stage.CLEANSE, Stage.DUMP, Stage.RINSE).contains(s.stage()));
                assertThat(planned.refusal()).hasValueSatisfying(r -> {
                    assertThat(r.because()).isNotBlank();
                    assertThat(r.first()).isNotEmpty().doesNotContain("");
                    assertThat(r.then()).isNotBlank();
                });
            }
        }));
    }

    @Test
    void theTableHoldsEveryWholeSystem() {
        assertThat(SYSTEMS.keySet()).containsExactlyInAnyOrderElementsOf(
                Shared.CATALOGUE.systems().stream().map(ArrangementKind::id).toList());
    }

    @Test
    void separateFeedAndVentTakeTwoClosuresAndACombinedPipeOne() {
        assertThat(closed("open-vented-separate", "s-plan")).contains("cold feed", "open vent").doesNotContain("combined feed and vent");
        assertThat(closed("open-vented-close-coupled", "s-plan")).contains("cold feed", "open vent");
        assertThat(closed("open-vented-combined", "s-plan")).contains("combined feed and vent").doesNotContain("cold feed", "open vent");
        assertThat(closed("combination-boiler", "no valve")).contains("automatic air vents", "boiler valves", "filling loop")
                .doesNotContain("cold feed", "open vent", "expansion vessel");
        assertThat(closed("sealed-separate", "s-plan")).contains("automatic air vents", "expansion vessel");
    }

    @Test
    void aPumpOutIsAConnectionAcrossItsValvesWithItsCableDeadFirst() {
        List<String> ids = ids("open-vented-separate", "y-plan", "machine-flush");
        assertThat(ids).containsSubsequence("boiler-dead", "pump-cable-safe", "pump-out", "flush-connected", "circuit-filled", "heater-on",
                "circulated", "heat-off", "radiators-shut", "first-radiator-dumped", "radiators-cleared", "hot-water-side-swept",
                "rinsed-clear", "machine-off", "pump-refitted", "pump-cable-rejoined", "feed-and-vent-seen-open", "boiler-live", "recorded");
        assertThat(ids).doesNotContain("tees-fitted");
        assertThat(ids("open-vented-separate", "pump valves slip", "machine-flush")).contains("tees-fitted").doesNotContain("pump-out");
        assertThat(ids("system-boiler", "s-plan", "machine-flush")).contains("tees-fitted").doesNotContain("pump-out", "vessel-shut");
    }

    @Test
    void aMidPositionValveIsHeldByDemandOrByItsSpindleAndNeverByItsLever() {
        assertThat(says("open-vented-separate", "y-plan", "held-to-heating")).contains("powered").contains("hot water off");
        assertThat(says("open-vented-separate", "y-plan, head dead", "held-to-heating")).contains("head off").contains("spindle");
        assertThat(says("open-vented-separate", "w-plan", "held-to-heating")).contains("hot water off");
        assertThat(ids("open-vented-separate", "y-plan", "machine-flush")).containsSubsequence("lever-unhooked", "held-to-heating", "circulated");
        assertThat(says("open-vented-separate", "s-plan", "held-to-heating")).contains("lever");
    }

    @Test
    void theBoilerStaysDeadWhileItsVentIsClosedAndHelpsOnlyWhereNothingOfItsOwnIsShut() {
        assertThat(fires("open-vented-separate", "maker allows")).isFalse();
        assertThat(fires("sealed-separate", "maker allows")).isFalse();
        assertThat(fires("combination-boiler", "maker allows")).isTrue();
        assertThat(fires("combination-boiler", "boiler by-passed, sound")).isFalse();
    }

    @Test
    void flowIsReversedOnlyPastTheBoilerInSoundFabric() {
        assertThat(ids("open-vented-separate", "boiler by-passed, sound", "machine-flush")).contains("flow-reversed").doesNotContain("direction-set");
        assertThat(ids("open-vented-separate", "maker allows", "machine-flush")).contains("direction-set").doesNotContain("flow-reversed");
        assertThat(ids("open-vented-separate", "not looked at", "machine-flush")).doesNotContain("flow-reversed", "radiators-agitated");
    }

    @Test
    void theMainIsReducedAndTheWasteOpenBeforeItReachesPartsMadeForATank() {
        assertThat(ids("open-vented-separate", GUARDED, "mains-pressure-flush"))
                .containsSubsequence("boiler-dead", "main-reduced", "waste-opened", "circuit-filled", "radiators-shut");
        assertThat(ids("sealed-separate", "s-plan", "mains-pressure-flush")).doesNotContain("main-reduced", "waste-opened");
    }

    @Test
    void whatIsCloggedOrSluggishIsSweptByItself() {
        assertThat(ids("open-vented-separate", "c-plan, gravity hot water", "machine-flush"))
                .containsSubsequence("gravity-pair-shut", "radiators-cleared", "gravity-circuit-flushed", "boiler-live");
        assertThat(ids("sealed-separate", "under-floor and store", "machine-flush"))
                .containsSubsequence("radiators-cleared", "under-floor-loops-flushed", "under-floor-opened");
        assertThat(says("open-vented-separate", "one-pipe loop", "first-radiator-dumped")).contains("loop itself");
        assertThat(says("open-vented-separate", "microbore", "pressure-kept-low")).contains("lowest");
    }

    @Test
    void everyHandIsShownWhatProvesItAndWhy() {
        List<PlanStep> all = new ArrayList<>();
        houses().filter(House::isAllowed).filter(h -> h.controls().equals("y-plan"))
                .forEach(h -> all.addAll(Planner.plan(ASSESSOR, h.job(), Optional.of(h.method())).steps()));
        assertThat(all).allSatisfy(s -> {
            assertThat(s.says()).isNotBlank();
            assertThat(s.because()).isNotBlank();
            assertThat(s.proves()).isNotBlank();
            assertThat(s.tools()).isNotEmpty();
            assertThat(Shared.CATALOGUE.sources()).containsKey(s.source());
        });
    }

    @Test
    void aMethodThatThereIsNotIsRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Planner.plan(ASSESSOR, new House("sealed-separate", "s-plan", "").job(), Optional.of("prayer")))
                .withMessageContaining("machine-flush").withMessageContaining("prayer");
    }

    private static List<PlanStep> plan(String system, String controls, String method) {
        return Planner.plan(ASSESSOR, new House(system, controls, method).job(), Optional.of(method)).steps();
    }

    private static List<String> ids(String system, String controls, String method) {
        return plan(system, controls, method).stream().map(PlanStep::id).toList();
    }

    private static String says(String system, String controls, String step) {
        return plan(system, controls, "machine-flush").stream().filter(s -> s.id().equals(step)).findFirst().orElseThrow().says();
    }

    private static Set<String> closed(String system, String controls) {
        return plan(system, controls, "machine-flush").stream().flatMap(s -> s.closes().map(Closure::title).stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean fires(String system, String controls) {
        return plan(system, controls, "machine-flush").stream().anyMatch(s -> s.stage() == Stage.HEAT && s.boilerMayFire());
    }
}
