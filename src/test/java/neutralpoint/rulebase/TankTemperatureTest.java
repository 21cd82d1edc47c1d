package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import neutralpoint.consult.QuestionChooser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How hot a loft tank may be, and which tank. The small heating tank: 60 °C or more stops; from 50 to under 60 it stops unless it is
 * known to rest with the pump off; below 50 it is a fault to mend. The large cistern over the bedrooms stops when it is warm at all.
 * Common practice, no source; that an overheated cylinder can bring down a plastic cistern: HSE, hot water storage systems, domestic
 * premises.
 */
class TankTemperatureTest {
    @ParameterizedTest(name = "{0} °C, rising with the pump off: {1}")
    @CsvSource({"20, yes, false", "44, no, false", "44, unknown, false", "44, yes, false", "49.9, unknown, false", "50, no, false",
        "50, unknown, true", "50, yes, true", "59.9, no, false", "59.9, unknown, true", "59.9, yes, true", "60, no, true",
        "60, unknown, true", "75, no, true"})
    void theSmallHeatingTank(double celsius, String rising, boolean stops) {
        String answer = rising.equals("unknown") ? "" : ", \"tank-rises-with-pump-off\": \"" + rising + "\"";
        assertThat(stops("{\"heating-filled-by\": \"loft-tank\", \"tank-water-celsius\": " + celsius + answer + "}")).isEqualTo(stops);
    }

    @ParameterizedTest(name = "{0}, rising with the pump off: {1}")
    @CsvSource({"cold, unknown, false", "warm, unknown, false", "hot, no, false", "hot, unknown, true", "hot, yes, true", "steaming, no, true"})
    void theSmallHeatingTankByHand(String warmth, String rising, boolean stops) {
        String answer = rising.equals("unknown") ? "" : ", \"tank-rises-with-pump-off\": \"" + rising + "\"";
        assertThat(stops("{\"tank-warmth\": \"" + warmth + "\"" + answer + "}")).isEqualTo(stops);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"cold, false", "warm, true"})
    void theLargeCistern(String warmth, boolean stops) {
        assertThat(stops("{\"storage-cistern-warmth\": \"" + warmth + "\"}")).isEqualTo(stops);
    }

    /**
     * Which danger, by degrees, by tank and by whether it goes on rising with the pump off. The large cistern: HSE, domestic hot water
     * systems, https://www.hse.gov.uk/services/localgovernment/hotwatersystems.htm, and cold water under 20 °C: HSE, HSG274 Part 2,
     * https://hse.gov.uk/legionnaires/hot-and-cold.htm. The limits of the small tank are common practice, no source.
     */
    @ParameterizedTest(name = "{0} °C, rising with the pump off: {1}, {2} tank")
    @CsvSource(textBlock = """
            44.0, yes,         small, none
            44.0, no,          small, none
            44.0, unknown,     small, none
            44.0, not-checked, small, none
            49.9, yes,         small, none
            49.9, no,          small, none
            49.9, unknown,     small, none
            49.9, not-checked, small, none
            50.0, yes,         small, heating-tank-hot
            50.0, no,          small, none
            50.0, unknown,     small, heating-tank-hot
            50.0, not-checked, small, heating-tank-hot
            59.9, yes,         small, heating-tank-hot
            59.9, no,          small, none
            59.9, unknown,     small, heating-tank-hot
            59.9, not-checked, small, heating-tank-hot
            60.0, yes,         small, heating-tank-hot
            60.0, no,          small, heating-tank-hot
            60.0, unknown,     small, heating-tank-hot
            60.0, not-checked, small, heating-tank-hot
            44.0, yes,         large, storage-cistern-warmed
            44.0, no,          large, storage-cistern-warmed
            44.0, unknown,     large, storage-cistern-warmed
            44.0, not-checked, large, storage-cistern-warmed
            49.9, yes,         large, storage-cistern-warmed
            49.9, no,          large, storage-cistern-warmed
            49.9, unknown,     large, storage-cistern-warmed
            49.9, not-checked, large, storage-cistern-warmed
            50.0, yes,         large, storage-cistern-warmed
            50.0, no,          large, storage-cistern-warmed
            50.0, unknown,     large, storage-cistern-warmed
            50.0, not-checked, large, storage-cistern-warmed
            59.9, yes,         large, storage-cistern-warmed
            59.9, no,          large, storage-cistern-warmed
            59.9, unknown,     large, storage-cistern-warmed
            59.9, not-checked, large, storage-cistern-warmed
            60.0, yes,         large, storage-cistern-warmed
            60.0, no,          large, storage-cistern-warmed
            60.0, unknown,     large, storage-cistern-warmed
            60.0, not-checked, large, storage-cistern-warmed
            """)
    void eachTankIsADangerOfItsOwn(double celsius, String rising, String tank, String danger) {
        String measured = tank.equals("small") ? "tank-water-celsius" : "storage-cistern-celsius";
        String answer = rising.equals("unknown") ? "" : ", \"tank-rises-with-pump-off\": \"" + rising + "\"";
        assertThat(dangers("{\"" + measured + "\": " + celsius + answer + "}"))
                .isEqualTo(danger.equals("none") ? List.of() : List.of(danger));
    }

    /** A loft in a hot summer warms its cistern past 25 °C; no loft warms it to 35. Common practice, no source. */
    @ParameterizedTest(name = "{0} °C, no warmer than its loft: {1}")
    @CsvSource({"18, false, false", "24.9, false, false", "25, false, true", "30, false, true", "30, true, false", "35, true, true"})
    void theLargeCisternInASummerLoft(double celsius, boolean asItsLoft, boolean stops) {
        assertThat(stops("{\"storage-cistern-celsius\": " + celsius + (asItsLoft ? ", \"storage-cistern-warmth\": \"cold\"" : "") + "}"))
                .isEqualTo(stops);
    }

    @Test
    void whetherATankOverFiftyRisesIsStillAskedThoughItStopsWork() {
        assertThat(next("\"tank-water-celsius\": 54")).contains("tank-rises-with-pump-off");
        assertThat(next("\"tank-warmth\": \"hot\"")).contains("tank-rises-with-pump-off");
    }

    @Test
    void nothingIsAskedOfATankThatNoAnswerCouldMakeSafe() {
        assertThat(next("\"tank-water-celsius\": 64")).isEmpty();
        assertThat(next("\"tank-water-celsius\": 54, \"red-lines\": [\"gas-smell\"]")).isEmpty();
    }

    private static Optional<String> next(String findings) {
        return new QuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE).next(Shared.ASSESSOR.assess(Shared.job("{\"findings\": {" + findings + "}}")))
                .map(q -> q.finding().id());
    }

    private static boolean stops(String findings) {
        return !dangers(findings).isEmpty();
    }

    private static List<String> dangers(String findings) {
        return Shared.ASSESSOR.assess(Shared.job("{\"findings\": " + findings + "}")).stops().stream().map(Assessment.StopFound::id).toList();
    }
}
