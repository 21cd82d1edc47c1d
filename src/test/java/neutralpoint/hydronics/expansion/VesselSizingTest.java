package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import org.junit.jupiter.api.Test;

/** How large a vessel must be; the published values are tried with the sealed system's. */
class VesselSizingTest {

    /** 1000 litres keep 0.5 % = 5 litres. (28.7 + 5)(2.5 + 1)/(2.5 - 1.0) = 78.63 litres. */
    @Test
    void aLargeSystemKeepsHalfAPerCentInReserve() {
        VesselSizing.Sizing sizing = VesselSizing.vesselLitresByEn12828(1000, 0.0287, 1.0, 3.0);
        assertThat(sizing.reserveLitres()).isCloseTo(5, within(1e-9));
        assertThat(sizing.vesselLitres()).isCloseTo(78.6333, within(1e-3));
    }

    /** 0.049/(1 - 2/3.65) = 0.10839: a 3 bar valve and 1 bar of charge ask 10.84 litres for each 100 of system. */
    @Test
    void theHandbooksFactorInFull() {
        assertThat(VesselSizing.vesselFactor(3, 1)).isCloseTo(0.108394, within(1e-6));
    }

    @Test
    void anAllowanceMultipliesTheVolume() {
        assertThat(VesselSizing.openCisternLitres(1, 100, 0.03)).isCloseTo(3, within(1e-12));
        assertThat(VesselSizing.diaphragmLitres(2, 100, 0.03, 2, 4)).isCloseTo(12, within(1e-12));
    }

    /** A vessel sized for a final pressure reaches just that pressure, by Boyle's law, when filled to its charge. */
    @Test
    void aVesselOfTheSizeComputedReachesTheFinalPressure() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            double litres = 50 + 200 * random.nextDouble();
            double expansion = 0.01 + 0.03 * random.nextDouble();
            double charge = 0.3 + random.nextDouble();
            double finalBar = charge + 0.3 + random.nextDouble();
            double vessel = VesselSizing.diaphragmLitres(1, litres, expansion, charge + 1.01325, finalBar + 1.01325);
            assertThat(SealedSystem.hotPressureBar(new Vessel(vessel, charge), charge, litres, expansion).orElseThrow())
                    .as("seed %d", seed).isCloseTo(finalBar, within(1e-9));
        }
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("systemLitres", 1, 5000, x -> byEn12828(x, 0.03, 1, 3));
        ArgumentRange.closed("expansionFraction", 0, 0.1, x -> byEn12828(100, x, 1, 3));
        ArgumentRange.closed("preChargeBar", 0, 2.4, x -> byEn12828(100, 0.03, x, 3));
        ArgumentRange.closed("safetyValveBar", 1, 5, x -> byEn12828(100, 0.03, 0, x));
        ArgumentRange.closed("safetyValveBar", 1, 10, x -> VesselSizing.vesselFactor(x, 0.2));
        ArgumentRange.closed("chargeBar", 0, 3 - 0.35 - 0.1, x -> VesselSizing.vesselFactor(3, x));
        ArgumentRange.closed("allowanceFactor", 1, 5, x -> VesselSizing.openCisternLitres(x, 100, 0.03));
        ArgumentRange.closed("allowanceFactor", 1, 5, x -> VesselSizing.diaphragmLitres(x, 100, 0.03, 2, 4));
        ArgumentRange.closed("finalAbsoluteBar", 0.7, 11, x -> VesselSizing.diaphragmLitres(1, 100, 0.03, 0.6, x));
        ArgumentRange.closed("initialAbsoluteBar", 0.6, 3.9, x -> VesselSizing.diaphragmLitres(1, 100, 0.03, x, 4));
    }

    private static double byEn12828(double systemLitres, double expansion, double preChargeBar, double safetyValveBar) {
        return VesselSizing.vesselLitresByEn12828(systemLitres, expansion, preChargeBar, safetyValveBar).vesselLitres();
    }
}
