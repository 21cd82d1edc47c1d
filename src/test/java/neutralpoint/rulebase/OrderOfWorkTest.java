package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.Shared;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Several faults in one house are mended in the order the trade mends them. Common practice, no source.
 * Holds {@link WorkOrder}.
 */
class OrderOfWorkTest {
    private static final String SLUDGE = "\"drain-water\": \"black-all-along\", \"dirty-water-from\": \"most-radiators\", "
            + "\"cold-base-count\": \"most\", \"fabric-condition\": \"sound\", \"complaint\": [\"radiators-cold-at-base\", \"all-lukewarm\"]";
    private static final String LOFT = "\"heating-filled-by\": \"loft-tank\", \"hot-water-made-by\": \"cylinder\", \"loft-tanks\": \"two\", "
            + "\"cylinder-style\": \"indirect\", \"feed-and-vent-join\": \"within-150-mm\", ";

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            the plugged tee is renewed before the flush | "tank-level-when-drained": "does-not-fall"           | plugged-feed-and-vent-tee | sludge-throughout
            no new pump goes into sludge                | "pump-spindle": "will-not-turn"                      | sludge-throughout         | pump-seized
            no flush over a pinhole                     | "leak-place": ["panel"], "leak-rate": "drip"         | radiator-pinholed         | sludge-throughout
            """)
    void particularOrdersHold(String what, String found, String first, String then) {
        assertThat(order(LOFT + SLUDGE + ", " + found)).containsSubsequence(first, then);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            the way oxygen comes in is cured before the flush | "plastic-pipe": "unmarked-much", "bleed-water": "orange", "top-ups": "never" | oxygen-through-pipe-wall | sludge-throughout
            the vessel is put right before the safety valve   | "vessel-air-valve": "water", "discharge-outside": "drips-always", "discharge-caught": "yes", "pressure-behaviour": "falls-in-a-day" | vessel-ruptured | safety-valve-passing
            """)
    void onASealedSystem(String what, String found, String first, String then) {
        assertThat(order("\"heating-filled-by\": \"filling-loop\", \"hot-water-made-by\": \"cylinder\", "
                + "\"loft-tanks\": \"no-tanks\", \"pump-and-vessel-place\": \"outside\", " + SLUDGE + ", " + found))
                .containsSubsequence(first, then);
    }

    private static List<String> order(String findings) {
        Assessment a = Shared.ASSESSOR.assess(Shared.job("{\"findings\": {" + findings + "}}"));
        return a.order().stream().flatMap(s -> s.cause().stream()).map(c -> c.id()).toList();
    }
}
