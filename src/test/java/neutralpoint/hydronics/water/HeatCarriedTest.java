package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import java.util.Random;
import neutralpoint.hydronics.emitter.HeatOutputTest;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Heat that flowing water carries; the published sizing figures are checked with {@link HeatOutputTest}. */
class HeatCarriedTest {

    @Test
    void aTwentyFourKilowattBoilerByHand() {
        // A litre a minute cooling 1 K gives 0.98 x 4180 / 60 = 68.273 W.
        // 24 000 W over 11 K: 24 000 / 11 / 68.273 = 31.957 L/min; over 20 K: 17.576 L/min.
        assertThat(HeatCarried.watts(1, 1)).isCloseTo(68.273, within(0.001));
        assertThat(HeatCarried.systemFlowLitresPerMinute(24, 11)).isCloseTo(31.957, within(0.001));
        assertThat(HeatCarried.systemFlowLitresPerMinute(24, 20)).isCloseTo(17.576, within(0.001));
    }

    @Test
    void halfTheFlowTakesTwiceTheDrop() {
        // 1500 W at 2 L/min: 1500 / 2 / 68.273 = 10.985 K.
        assertThat(HeatCarried.dropKelvin(1500, 2)).isCloseTo(10.985, within(0.001));
        assertThat(HeatCarried.dropKelvin(1500, 1)).isCloseTo(2 * 10.985, within(0.002));
    }

    @Test
    void waterWithGlycolWantsMoreFlow() {
        // 6000 W over 10 K, 1.03 kg/L and 3.7 kJ/kg K: 6 x 60 / (10 x 1.03 x 3.7) = 9.4463 L/min.
        assertThat(HeatCarried.flowLitresPerMinute(6000, 10, 1.03, 3.7)).isCloseTo(9.4463, within(0.0001));
        assertThat(HeatCarried.flowLitresPerMinute(6000, 10)).isLessThan(9.4463);
        assertThat(HeatCarried.watts(9.4463, 10, 1.03, 3.7)).isCloseTo(6000, within(0.1));
    }

    /** Density x heat capacity by IAPWS-IF97 at 2 bar. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 40, 50, 60, 65, 70, 80, 85})
    void theShortFormIsRightForHeatingWater(double celsius) throws Exception {
        IF97 water = new IF97();
        double kelvin = celsius + 273.15;
        double published = water.densityPT(0.2, kelvin) / 1000 * water.isobaricHeatCapacityPT(0.2, kelvin);
        assertThat(HeatCarried.KILOGRAMS_PER_LITRE * HeatCarried.KILOJOULES_PER_KILOGRAM_KELVIN)
                .isCloseTo(published, Percentage.withPercentage(1.6));
    }

    @Test
    void theBalanceCloses() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            double watts = 1 + random.nextDouble() * 50_000;
            double drop = 0.1 + random.nextDouble() * 60;
            double flow = HeatCarried.flowLitresPerMinute(watts, drop);
            assertThat(HeatCarried.watts(flow, drop)).as("seed %d", seed).isCloseTo(watts, within(1e-6));
            assertThat(HeatCarried.dropKelvin(watts, flow)).as("seed %d", seed).isCloseTo(drop, within(1e-9));
            assertThat(HeatCarried.systemFlowLitresPerMinute(watts / 1000, drop)).as("seed %d", seed)
                    .isCloseTo(flow, within(1e-9));
        }
    }

    @Test
    void noHeatNeedsNoFlowAndMakesNoDrop() {
        assertThat(HeatCarried.flowLitresPerMinute(0, 0.1)).isZero();
        assertThat(HeatCarried.dropKelvin(0, 0.001)).isZero();
        assertThat(HeatCarried.watts(0, 120)).isZero();
        assertThat(HeatCarried.watts(10_000, 0)).isZero();
    }

    @Test
    void figuresNoHeatingHasAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(-1, 10))
                .withMessage("The flow in litres per minute is -1.0; it must lie between 0.0 and 10000.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, -0.1)).withMessageContaining("drop");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, 120.1));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.flowLitresPerMinute(1000, 0.09));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.flowLitresPerMinute(-1, 10))
                .withMessageContaining("watts");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.dropKelvin(-1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.dropKelvin(1_000_001, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.dropKelvin(1000, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, 1, 0.89, 4.18))
                .withMessageContaining("density");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, 1, 1.21, 4.18));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, 1, 1, 2.9))
                .withMessageContaining("capacity");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatCarried.watts(1, 1, 1, 4.6));
        assertThatNoException().isThrownBy(() -> HeatCarried.systemFlowLitresPerMinute(1000, 120));
    }
}
