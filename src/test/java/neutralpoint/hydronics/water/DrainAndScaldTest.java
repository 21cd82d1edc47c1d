package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import neutralpoint.hydronics.References;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Hot water: when it may go down the drain, and how soon it scalds. */
class DrainAndScaldTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("safety")
                .check("SAF-43", (in, limit) -> {
                    assertThat(DrainAndScald.mayGoToSewer(limit.asDouble())).isTrue();
                    assertThat(DrainAndScald.mayGoToSewer(limit.asDouble() + 0.1)).isFalse();
                })
                .check("SAF-SCALD", (in, seconds) -> assertThat(DrainAndScald.scaldSeconds(in.get("T_C").asDouble()))
                        .isCloseTo(seconds.asDouble(), within(1e-9)))
                .tests();
    }

    @Test
    void aDumpAtFlushingHeatWantsHalfAsMuchColdWater() {
        // 100 L at 60 °C with mains at 10 °C: 100 × 17 / 33 = 51.5 L; the mixture then holds 43 °C.
        double cold = DrainAndScald.coldLitresForSewer(100, 60, 10);
        assertThat(cold).isCloseTo(51.515, within(0.001));
        assertThat((100 * 60 + cold * 10) / (100 + cold)).isCloseTo(43, within(1e-9));
        assertThat(DrainAndScald.coldLitresForSewer(100, 43, 10)).isZero();
    }

    @Test
    void eachDegreeScaldsSooner() {
        assertThat(DrainAndScald.scaldSeconds(57.5)).isCloseTo(Math.sqrt(30 * 5), within(1e-9));
        assertThat(DrainAndScald.scaldSeconds(65)).isCloseTo(Math.sqrt(5), within(1e-9));
        assertThat(DrainAndScald.scaldSeconds(71)).isEqualTo(1);
        assertThat(DrainAndScald.scaldSeconds(100)).isEqualTo(1);
        for (double celsius = 55; celsius < 70; celsius += 0.5) {
            assertThat(DrainAndScald.scaldSeconds(celsius)).isGreaterThan(DrainAndScald.scaldSeconds(celsius + 0.5));
        }
    }

    @Test
    void nonsenseIsRefusedInOneSentence() {
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.scaldSeconds(54.9))
                .withMessage("celsius is 54.9; it must lie between 55.0 and 100.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.mayGoToSewer(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.mayGoToSewer(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.coldLitresForSewer(-1, 60, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.coldLitresForSewer(1, 60, 41));
        assertThatIllegalArgumentException().isThrownBy(() -> DrainAndScald.coldLitresForSewer(1, 101, 10));
    }
}
