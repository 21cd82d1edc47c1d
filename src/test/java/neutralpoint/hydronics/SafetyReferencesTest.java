package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Hot water: when it may go down the drain, and how soon it scalds. */
class SafetyReferencesTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("safety")
                .check("SAF-43", (in, limit) -> {
                    assertThat(Safety.mayGoToSewer(limit.asDouble())).isTrue();
                    assertThat(Safety.mayGoToSewer(limit.asDouble() + 0.1)).isFalse();
                })
                .check("SAF-SCALD", (in, seconds) -> assertThat(Safety.scaldSeconds(in.get("T_C").asDouble()))
                        .isCloseTo(seconds.asDouble(), within(1e-9)))
                .tests();
    }

    @Test
    void aDumpAtFlushingHeatWantsHalfAsMuchColdWater() {
        // 100 L at 60 °C with mains at 10 °C: 100 × 17 / 33 = 51.5 L; the mixture then holds 43 °C.
        double cold = Safety.coldLitresForSewer(100, 60, 10);
        assertThat(cold).isCloseTo(51.515, within(0.001));
        assertThat((100 * 60 + cold * 10) / (100 + cold)).isCloseTo(43, within(1e-9));
        assertThat(Safety.coldLitresForSewer(100, 43, 10)).isZero();
    }

    @Test
    void eachDegreeScaldsSooner() {
        assertThat(Safety.scaldSeconds(57.5)).isCloseTo(Math.sqrt(30 * 5), within(1e-9));
        assertThat(Safety.scaldSeconds(65)).isCloseTo(Math.sqrt(5), within(1e-9));
        assertThat(Safety.scaldSeconds(71)).isEqualTo(1);
        assertThat(Safety.scaldSeconds(100)).isEqualTo(1);
        for (double celsius = 55; celsius < 70; celsius += 0.5) {
            assertThat(Safety.scaldSeconds(celsius)).isGreaterThan(Safety.scaldSeconds(celsius + 0.5));
        }
    }

    @Test
    void nonsenseIsRefusedInOneSentence() {
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.scaldSeconds(54.9))
                .withMessage("celsius is 54.9; it must lie between 55.0 and 100.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.mayGoToSewer(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.mayGoToSewer(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.coldLitresForSewer(-1, 60, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.coldLitresForSewer(1, 60, 41));
        assertThatIllegalArgumentException().isThrownBy(() -> Safety.coldLitresForSewer(1, 101, 10));
    }
}
