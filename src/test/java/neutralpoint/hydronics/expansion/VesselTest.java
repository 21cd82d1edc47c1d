package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import neutralpoint.hydronics.ArgumentRange;
import org.junit.jupiter.api.Test;

/** The air in an expansion vessel. */
class VesselTest {
    private static final double ATMOSPHERE = 1.01325;

    /** 12 litres charged to 1 bar, at 2 bar: air 12 x 2.01325/3.01325 = 8.0176 litres, and 3.9824 of water. */
    @Test
    void airGivesWayByBoylesLaw() {
        Vessel vessel = new Vessel(12, 1);
        assertThat(vessel.airLitres(2, ATMOSPHERE)).isCloseTo(8.017589, within(1e-6));
        assertThat(vessel.waterLitres(2, ATMOSPHERE)).isCloseTo(3.982411, within(1e-6));
    }

    @Test
    void belowItsChargeAVesselHoldsNoWaterAndHasNoGive() {
        Vessel vessel = new Vessel(12, 1);
        assertThat(vessel.waterLitres(0.5, ATMOSPHERE)).isZero();
        assertThat(vessel.waterLitres(1, ATMOSPHERE)).isZero();
        assertThat(vessel.litresPerBar(0.99, ATMOSPHERE)).isZero();
        assertThat(vessel.litresPerBar(1, ATMOSPHERE)).isCloseTo(12 / 2.01325, within(1e-9));
    }

    /** At 2 bar: 12 x 2.01325/3.01325² = 2.6608 litres a bar, the slope between the volumes 1 mbar to either side. */
    @Test
    void giveIsTheSlopeOfTheWaterHeld() {
        Vessel vessel = new Vessel(12, 1);
        assertThat(vessel.litresPerBar(2, ATMOSPHERE)).isCloseTo(2.660778, within(1e-5))
                .isCloseTo((vessel.waterLitres(2.001, ATMOSPHERE) - vessel.waterLitres(1.999, ATMOSPHERE)) / 0.002,
                        within(1e-5));
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("litres", 0.1, 1000, x -> new Vessel(x, 1).litres());
        ArgumentRange.above("preChargeBar", -1.01325, 10, x -> new Vessel(12, x).preChargeBar());
        ArgumentRange.closed("bar", 0, 20, x -> new Vessel(12, 1).airLitres(x, ATMOSPHERE));
        ArgumentRange.closed("bar", 0, 20, x -> new Vessel(12, 1).waterLitres(x, ATMOSPHERE));
        ArgumentRange.closed("bar", 0, 20, x -> new Vessel(12, 1).litresPerBar(x, ATMOSPHERE));
        ArgumentRange.closed("atmosphereBar", 0.6, 1.1, x -> new Vessel(12, 1).airLitres(1, x));
    }
}
