package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import neutralpoint.Shared;
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

    private static boolean stops(String findings) {
        return !Shared.ASSESSOR.assess(Shared.job("{\"findings\": " + findings + "}")).stops().isEmpty();
    }
}
