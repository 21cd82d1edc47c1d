package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What four readings of a radiator and one of the room say. Thresholds are common practice, no source. */
class RadiatorReadingTest {
    private static final OptionalDouble UNREAD = OptionalDouble.empty();

    @ParameterizedTest(name = "top {0}, base {1}, tails {2}/{3}, room {4}: {5}")
    @CsvSource({
        // An even fall from flow to return.
        "70, 62, 72, 61, 20, HEALTHY",
        // A wide drop by design makes top and base differ by as much: no sludge.
        "70, 54, 71, 53, 20, HEALTHY",
        "70, 50, 71, 51, 20, HEALTHY",
        // Sludge: hot top, hot tails, cold base. The water leaving is warmer than the base.
        "70, 45, 72, 60, 20, BASE_RESTRICTED",
        "70, 59.9, 72, 63, 20, BASE_RESTRICTED",
        "70, 60, 72, 64, 20, HEALTHY",
        "70, 56, 72, 59, 20, HEALTHY",
        // Too little water: it leaves far cooler than it came.
        "70, 48, 72, 51.9, 20, STARVED",
        "70, 52, 72, 52, 20, HEALTHY",
        // One tail hot, body cold: nothing gets in.
        "22, 21, 70, 21, 20, STARVED",
        // Gas: the water stands under it.
        "40, 60, 68, 60, 20, GAS_AT_TOP",
        "54.9, 60, 68, 60, 20, GAS_AT_TOP",
        "55, 60, 68, 60, 20, HEALTHY",
        // Gas in a starved radiator: the gas first, for bleeding costs nothing.
        "30, 48, 70, 45, 20, GAS_AT_TOP",
        // Backwards: the return is the hot one.
        "60, 52, 50, 62, 20, REVERSED",
        "60, 58, 60, 63, 20, OVER_FED",
        "60, 58, 60, 63.1, 20, REVERSED",
        // Out of use, a little over or under the room.
        "25, 25, 25, 25, 20, COLD",
        "25.1, 25, 25, 25, 20, LUKEWARM",
        "25, 25, 25.1, 25, 20, LUKEWARM",
        "25, 25, 25, 25.1, 20, LUKEWARM",
        "15, 15, 15, 15, 20, COLD",
        // Lukewarm all over, though the water runs.
        "38, 36, 38, 36, 20, LUKEWARM",
        "41, 38.9, 42, 37, 20, LUKEWARM",
        "41, 39, 42, 37, 20, HEALTHY",
        // Water rushing through.
        "70, 68, 71, 67.1, 20, OVER_FED",
        "70, 68, 71, 67, 20, HEALTHY"})
    void stateOfARadiator(double top, double base, double flowTail, double returnTail, double room, RadiatorState state) {
        assertThat(RadiatorReading.of(top, base, flowTail, returnTail, room).state()).isEqualTo(state);
    }

    /** Without the tails a wide drop and a blocked base look alike. */
    @ParameterizedTest
    @CsvSource({"70, 60, 20, HEALTHY", "70, 59.9, 20, BASE_RESTRICTED", "50, 60, 20, GAS_AT_TOP", "22, 21, 20, COLD",
        "38, 37, 20, LUKEWARM"})
    void stateFromTheFaceAlone(double top, double base, double room, RadiatorState state) {
        RadiatorReading reading = RadiatorReading.ofFace(top, base, room);
        assertThat(reading.state()).isEqualTo(state);
        assertThat(reading.tailDropKelvin()).isEmpty();
        assertThat(reading.blockedShare()).isEmpty();
    }

    @Test
    void differencesByHand() {
        RadiatorReading reading = RadiatorReading.of(70, 45, 72, 60, 20);
        assertThat(reading.topOverBaseKelvin()).isEqualTo(25);
        assertThat(reading.tailDropKelvin()).hasValue(12);
        assertThat(RadiatorReading.of(40, 60, 62, 65, 20).topOverBaseKelvin()).isEqualTo(-20);
        assertThat(RadiatorReading.of(40, 60, 62, 65, 20).tailDropKelvin()).hasValue(-3);
        assertThat(new RadiatorReading(70, 60, OptionalDouble.of(72), UNREAD, 20).tailDropKelvin()).isEmpty();
        assertThat(new RadiatorReading(70, 60, UNREAD, OptionalDouble.of(60), 20).tailDropKelvin()).isEmpty();
    }

    @Test
    void blockedShareByHand() {
        // Return 60, less the reading error 3: 57 expected. Base 38, room 20: (57 - 38) / (57 - 20) = 19/37 = 0.5135.
        assertThat(RadiatorReading.of(70, 38, 72, 60, 20).blockedShare().orElseThrow())
                .isCloseTo(0.5135, within(0.0001));
        assertThat(new RadiatorReading(70, 38, UNREAD, OptionalDouble.of(60), 20).blockedShare().orElseThrow())
                .isCloseTo(0.5135, within(0.0001));
    }

    @Test
    void blockedShareRunsFromNothingToAll() {
        assertThat(RadiatorReading.of(70, 65, 72, 60, 20).blockedShare()).hasValue(0);
        assertThat(RadiatorReading.of(70, 57, 72, 60, 20).blockedShare()).hasValue(0);
        assertThat(RadiatorReading.of(70, 56.9, 72, 60, 20).blockedShare().orElseThrow()).isBetween(0.002, 0.003);
        assertThat(RadiatorReading.of(70, 20, 72, 60, 20).blockedShare()).hasValue(1);
        assertThat(RadiatorReading.of(70, 18, 72, 60, 20).blockedShare()).hasValue(1);
    }

    @Test
    void blockedShareIsNotGuessedWhereReadingsCannotTell() {
        assertThat(RadiatorReading.of(35, 25, 36, 29.9, 20).blockedShare()).as("return 9.9 K over the room").isEmpty();
        assertThat(RadiatorReading.of(35, 25, 36, 30, 20).blockedShare()).as("return 10 K over the room").isPresent();
        assertThat(RadiatorReading.of(60, 40, 50, 62, 20).blockedShare()).as("running backwards").isEmpty();
        assertThat(new RadiatorReading(70, 40, OptionalDouble.of(72), UNREAD, 20).blockedShare()).isEmpty();
    }

    @Test
    void aFaceHotterThanItsWaterIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> RadiatorReading.of(63.1, 50, 60, 50, 20))
                .withMessage("The top of a radiator cannot be hotter than the water that feeds it by more than the"
                        + " reading error of 3 K: the top reads 63.1 and the hotter tail read 60.0;"
                        + " read both tails again.");
        assertThatIllegalArgumentException().isThrownBy(() -> RadiatorReading.of(50, 63.1, 60, 50, 20))
                .withMessageContaining("the base reads 63.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RadiatorReading(63.1, 50, OptionalDouble.of(60), UNREAD, 20));
        assertThatNoException().isThrownBy(() -> RadiatorReading.of(63, 63, 60, 50, 20));
        assertThatNoException().as("fed by the return").isThrownBy(() -> RadiatorReading.of(60, 50, 45, 62, 20));
        assertThatNoException().as("the hot end was not read")
                .isThrownBy(() -> new RadiatorReading(70, 60, UNREAD, OptionalDouble.of(55), 20));
    }

    @ParameterizedTest
    @CsvSource({"-5.1, 20, 20, 20, 20, top", "20, -5.1, 20, 20, 20, base", "20, 20, -5.1, 20, 20, flow tail",
        "20, 20, 20, -5.1, 20, return tail", "20, 20, 20, 20, -5.1, room", "110.1, 20, 20, 20, 20, top",
        "20, 110.1, 20, 20, 20, base", "20, 20, 110.1, 20, 20, flow tail", "20, 20, 20, 110.1, 20, return tail",
        "20, 20, 20, 20, 110.1, room", "NaN, 20, 20, 20, 20, top"})
    void readingsNoThermometerShowsHereAreRefused(double top, double base, double flowTail, double returnTail,
            double room, String named) {
        assertThatIllegalArgumentException().isThrownBy(() -> RadiatorReading.of(top, base, flowTail, returnTail, room))
                .withMessageStartingWith("The " + named + " in degrees C is ").withMessageEndingWith("; it must lie between -5.0 and 110.0.");
    }

    @Test
    void theOutermostReadingsAreTaken() {
        assertThat(RadiatorReading.of(-5, -5, -5, -5, -5).state()).isEqualTo(RadiatorState.COLD);
        assertThat(RadiatorReading.of(110, 110, 110, 110, -5).state()).isEqualTo(RadiatorState.OVER_FED);
    }

    @Test
    void everySetOfReadingsHasAnAnswerAndAColderBaseIsNeverLessBlocked() {
        LongStream.range(0, 2000).forEach(seed -> {
            Random random = new Random(seed);
            double room = 10 + random.nextDouble() * 20;
            double flowTail = room + random.nextDouble() * 60;
            double returnTail = room + random.nextDouble() * 60;
            double top = room + random.nextDouble() * (Math.max(flowTail, returnTail) - room);
            double base = room + random.nextDouble() * (Math.max(flowTail, returnTail) - room);
            RadiatorReading reading = RadiatorReading.of(top, base, flowTail, returnTail, room);
            assertThat(reading.state()).as("seed %d", seed).isNotNull();
            reading.blockedShare().ifPresent(share -> {
                double colder = RadiatorReading.of(top, base - 0.01, flowTail, returnTail, room).blockedShare()
                        .orElseThrow();
                assertThat(share).as("seed %d", seed).isBetween(0.0, 1.0);
                // No jump: a hundredth of a kelvin in at least 7 K moves it by no more than 0.0015.
                assertThat(colder - share).as("seed %d", seed).isBetween(0.0, 0.0015);
            });
        });
    }
}
