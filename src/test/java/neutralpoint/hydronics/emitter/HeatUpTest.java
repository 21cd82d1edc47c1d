package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Heating a system from cold: heat, time, and the heater that never gets there. */
class HeatUpTest {

    /**
     * SIZE-32kW (course notes using CIBSE, water near 75 degrees): 0.76 kg/s at 10 K carry 32 kW, so 2736 kg raised by 10 K
     * take 32 kWh; 2736 kg fill 2798 litres at 70 degrees (977.8 kg/m3). SIZE-1.6kW: 0.038 kg/s, 136.8 kg, 139.9 litres.
     */
    @Test
    void theSameHeatThatAFlowCarries() {
        assertThat(HeatUp.kilowattHours(2798, 0, 70, 80)).isCloseTo(32, within(32 * 0.01 / 0.76));
        assertThat(HeatUp.kilowattHours(139.9, 0, 70, 80)).isCloseTo(1.6, within(1.6 * 0.001 / 0.038));
    }

    /** 999.75 kg x 4.178 kJ/kg K x 50 K / 3600 = 58.01 kWh (steam tables); half as much metal again: 87.0. */
    @Test
    void waterAndMetal() {
        assertThat(HeatUp.kilowattHours(1000, 0, 10, 60)).isCloseTo(58.01, within(0.05));
        assertThat(HeatUp.kilowattHours(1000, 0.5, 10, 60)).isCloseTo(87.02, within(0.08));
        assertThat(HeatUp.kilowattHours(1000, 2, 40, 40)).isZero();
    }

    /** Nothing given away: 8 kWh by 24 kW are 20 minutes. */
    @Test
    void withoutRadiatorsTimeIsHeatOverPower() {
        assertThat(HeatUp.minutes(8, 24, 0, 10, 60, 20).orElseThrow()).isCloseTo(20, within(1e-6));
        assertThat(HeatUp.minutes(0, 24, 5, 60, 60, 20)).hasValue(0);
        // Below the room's warmth radiators give nothing away: 5 degrees of 50 kWh over 50.
        assertThat(HeatUp.minutes(5, 10, 100, 5, 20, 20).orElseThrow()).isCloseTo(30, within(1e-6));
    }

    /** Radiators of 10 kW give 10 x (40/50)^1.3 = 7.48 kW at 60 degrees: 7.8 kW is hardly more, 7.9 is. */
    @Test
    void aHeaterThatOnlyMakesUpForTheRadiatorsNeverGetsThere() {
        assertThat(HeatUp.minutes(8, 7.8, 10, 10, 60, 20)).isEmpty();
        assertThat(HeatUp.minutes(8, 7.9, 10, 10, 60, 20)).isPresent();
        assertThat(HeatUp.minutes(8, 3, 10, 10, 60, 20)).isEmpty();
    }

    @Test
    void radiatorsOnlyEverMakeItSlowerAndPowerQuicker() {
        long seed = 60;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double rated = random.nextDouble() * 20;
            double power = rated + 1 + random.nextDouble() * 30;
            double time = HeatUp.minutes(8, power, rated, 10, 60, 20).orElseThrow();
            assertThat(time).as("seed %d, %f kW, %f kW", seed, power, rated).isGreaterThanOrEqualTo(8 / power * 60 - 1e-6)
                    .isLessThanOrEqualTo(8 / (power - 0.7483 * rated) * 60 + 1e-6)
                    .isGreaterThanOrEqualTo(HeatUp.minutes(8, power + 1, rated, 10, 60, 20).orElseThrow());
        }
    }

    @Test
    void limitsAreValidAndBeyondThemIsRefused() {
        assertThat(HeatUp.kilowattHours(0, 0, 0, 0)).isZero();
        assertThat(HeatUp.kilowattHours(5000, 2, 0, 110)).isPositive();
        assertThat(HeatUp.minutes(1000, 200, 0, 0, 110, 40)).isPresent();
        assertThat(HeatUp.minutes(1, 200, 10_000, 100, 110, 0)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(-0.1, 0, 10, 60))
                .withMessage("The content in litres is -0.1; it must lie between 0.0 and 5000.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(5001, 0, 10, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, -0.1, 10, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, 2.1, 10, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, 0, -1, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, 0, 101, 105));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, 0, 60, 59));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.kilowattHours(10, 0, 60, 111));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(-1, 10, 0, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1001, 10, 0, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 0, 0, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 201, 0, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 10, -1, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 10, 10_001, 10, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 10, 0, 10, 60, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 10, 0, 10, 60, 41));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatUp.minutes(1, 10, 0, 60, 10, 20));
    }
}
