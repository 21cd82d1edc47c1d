package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class HeadTest {

    /** Densities 999.749 and 971.847 kg/m³ at 2 bar absolute: IAPWS-IF97. */
    @Test
    void tenMetresOfWaterMakeNearlyOneBar() {
        assertThat(Head.bar(10, 10)).isCloseTo(999.749 * 9.80665 * 10 / 1e5, within(1e-6));
        assertThat(Head.bar(10, 80)).as("hot water weighs less").isCloseTo(971.847 * 9.80665 * 10 / 1e5, within(1e-6));
    }

    @Test
    void oneBarHoldsUpTenMetresOfColdWater() {
        assertThat(Head.metres(1, 10)).isCloseTo(10.19973, within(0.0001));
        assertThat(Head.metres(1, 80)).isCloseTo(10.49256, within(0.0001));
    }

    @Test
    void headAndPressureUndoEachOther() {
        Random random = new Random(43);
        for (int i = 0; i < 500; i++) {
            double metres = random.nextDouble() * 1800 - 900;
            double celsius = random.nextDouble() * 120;
            assertThat(Head.metres(Head.bar(metres, celsius), celsius)).as("seed 43, try " + i)
                    .isCloseTo(metres, within(1e-9));
        }
    }

    @Test
    void belowTheDatumTheSignTurns() {
        assertThat(Head.bar(-3, 20)).isCloseTo(-Head.bar(3, 20), within(1e-12));
        assertThat(Head.metres(-0.3, 20)).isCloseTo(-Head.metres(0.3, 20), within(1e-12));
        assertThat(Head.bar(0, 20)).isZero();
    }

    @Test
    void theLimitsThemselvesAreValid() {
        assertThat(Head.bar(1000, 0)).isCloseTo(98.05, within(0.01));
        assertThat(Head.bar(-1000, 120)).isCloseTo(-92.48, within(0.01));
        assertThat(Head.metres(100, 120)).isCloseTo(1081.3, within(0.1));
        assertThat(Head.metres(-100, 0)).isCloseTo(-1019.9, within(0.1));
    }

    @Test
    void whatNoHouseHasIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Head.bar(1000.1, 20))
                .withMessage("Head in m is 1000.1; it must lie between -1000.0 and 1000.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Head.bar(-1000.1, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> Head.metres(100.1, 20))
                .withMessage("Pressure difference in bar is 100.1; it must lie between -100.0 and 100.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Head.metres(-100.1, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> Head.bar(1, 120.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Head.metres(1, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Head.bar(Double.POSITIVE_INFINITY, 20));
    }
}
