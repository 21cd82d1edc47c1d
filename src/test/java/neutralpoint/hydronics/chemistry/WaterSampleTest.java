package neutralpoint.hydronics.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import neutralpoint.hydronics.chemistry.Conductivity.Rinse;
import org.junit.jupiter.api.Test;

/** What is read from a jar of system water beside a jar of mains: conductivity, turbidity, copper, iron, pH. */
class WaterSampleTest {

    @Test
    void aWarmSampleConductsMore() {
        // Linear compensation of 2 % per kelvin, common practice: 600 at 45 °C is 600 / 1.4 at 25 °C.
        assertThat(Conductivity.at25Celsius(600, 45)).isCloseTo(428.571, within(0.001));
        assertThat(Conductivity.at25Celsius(400, 10)).isCloseTo(571.429, within(0.001));
        assertThat(Conductivity.at25Celsius(400, 25)).isEqualTo(400);
        assertThat(Conductivity.uncompensated(500, 0)).isEqualTo(250);
        assertThat(Conductivity.uncompensated(500, 50)).isEqualTo(750);
    }

    @Test
    void solidsAndConductivityGoBackAndForth() {
        long seed = 7593;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double ec = random.nextDouble() * 50_000;
            double factor = 0.5 + 0.2 * random.nextDouble();
            double celsius = 50 * random.nextDouble();
            assertThat(Conductivity.microsiemensPerCentimetre(Conductivity.tdsMilligramsPerLitre(ec, factor), factor))
                    .as("seed %d, %f, %f", seed, ec, factor).isCloseTo(ec, within(1e-6));
            assertThat(Conductivity.uncompensated(ec / 2, celsius)).as("seed %d, %f, %f", seed, ec, celsius)
                    .isBetween(ec / 4, ec * 0.75 + 1e-6);
            assertThat(Conductivity.at25Celsius(Conductivity.uncompensated(ec / 2, celsius), celsius))
                    .as("seed %d, %f, %f", seed, ec, celsius).isCloseTo(ec / 2, within(1e-6));
        }
    }

    @Test
    void aRinseIsJudgedAgainstTheMains() {
        assertThat(Conductivity.shareOverMains(450, 300)).isEqualTo(0.5);
        assertThat(Conductivity.shareOverMains(150, 300)).isEqualTo(-0.5);
        assertThat(Conductivity.rinse(331, 300)).isEqualTo(Rinse.REPEAT);
        assertThat(Conductivity.rinse(270, 300)).isEqualTo(Rinse.ACCEPTED);
        assertThat(Conductivity.rinse(260, 300)).isEqualTo(Rinse.REPEAT);
        assertThat(Conductivity.rinse(230, 300)).isEqualTo(Rinse.FAILED);
        assertThat(Conductivity.rinse(361, 300)).isEqualTo(Rinse.FAILED);
    }

    @Test
    void conductivityRefusesWhatNoMeterReads() {
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.at25Celsius(400, 50.1))
                .withMessage("sampleCelsius is 50.1; it must lie between 0.0 and 50.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.at25Celsius(400, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.at25Celsius(-1, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.uncompensated(50_001, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.tdsMilligramsPerLitre(200, 0.49));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.microsiemensPerCentimetre(200, 0.71));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.microsiemensPerCentimetre(-1, 0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.shareOverMains(300, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.shareOverMains(-1, 300));
    }

    @Test
    void aTubeNeverTellsMoreThanItsRange() {
        // The relation gives 84.12 cm at 5 NTU and 6.49 cm at 240 NTU.
        assertThat(Turbidity.read(84.2)).isEqualTo(new Turbidity.AtMost(5));
        assertThat(Turbidity.read(200)).isEqualTo(new Turbidity.AtMost(5));
        assertThat(Turbidity.read(6.4)).isEqualTo(new Turbidity.AtLeast(240));
        assertThat(Turbidity.read(0)).isEqualTo(new Turbidity.AtLeast(240));
        assertThat(Turbidity.read(Turbidity.depthCentimetres(5))).isInstanceOf(Turbidity.About.class);
        assertThat(Turbidity.read(Turbidity.depthCentimetres(240))).isInstanceOf(Turbidity.About.class);
        assertThat(Turbidity.depthCentimetres(240)).isCloseTo(6.485, within(0.001));
    }

    @Test
    void clearerWaterAlwaysReadsDeeper() {
        long seed = 2006;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double ntu = 5 + 234 * random.nextDouble();
            double depth = Turbidity.depthCentimetres(ntu);
            assertThat(depth).as("seed %d, %f", seed, ntu).isGreaterThan(Turbidity.depthCentimetres(ntu + 1));
            assertThat(((Turbidity.About) Turbidity.read(depth)).ntu()).as("seed %d, %f", seed, ntu)
                    .isCloseTo(ntu, within(1e-6));
        }
    }

    @Test
    void theTubeIsZeroedOnMainsWater() {
        assertThat(Turbidity.shareOfMainsDepth(15, 60)).isEqualTo(0.25);
        assertThat(Turbidity.shareOfMainsDepth(0, 60)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.shareOfMainsDepth(15, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.shareOfMainsDepth(201, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.read(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.read(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.depthCentimetres(4.9))
                .withMessage("ntu is 4.9; it must lie between 5.0 and 240.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Turbidity.depthCentimetres(241));
    }

    @Test
    void aTraceOfCopperMattersOnlyToAluminium() {
        assertThat(Corrosion.copper(0.1, true)).isEqualTo(Corrosion.Copper.ATTACKS_ALUMINIUM);
        assertThat(Corrosion.copper(0.1, false)).isEqualTo(Corrosion.Copper.LITTLE);
        assertThat(Corrosion.copper(0.019, true)).isEqualTo(Corrosion.Copper.LITTLE);
        assertThat(Corrosion.copper(0.49, false)).isEqualTo(Corrosion.Copper.LITTLE);
        assertThat(Corrosion.copper(0.6, true)).isEqualTo(Corrosion.Copper.PLATES_OUT);
        assertThat(Corrosion.copper(3, true)).isEqualTo(Corrosion.Copper.CORROSION_OR_FLUX);
        assertThatIllegalArgumentException().isThrownBy(() -> Corrosion.copper(-0.1, true));
    }

    @Test
    void ironIsAHintByItsTotalOrItsDissolvedPart() {
        assertThat(Corrosion.ironAboveGuide(14, 2.9)).isFalse();
        assertThat(Corrosion.ironAboveGuide(14, 3)).isTrue();
        assertThat(Corrosion.ironAboveGuide(15, 0)).isTrue();
        assertThat(Corrosion.ironAboveGuide(2, 2)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> Corrosion.ironAboveGuide(2, 2.1))
                .withMessageContaining("totalMilligramsPerLitre is 2.0; it must lie between 2.1");
        assertThatIllegalArgumentException().isThrownBy(() -> Corrosion.ironAboveGuide(2, -0.1));
    }

    @Test
    void saltyWaterWithInhibitorIsWarnedOf() {
        assertThat(Corrosion.conductivityWithInhibitor(500)).isEqualTo(Corrosion.Level.NORMAL);
        assertThat(Corrosion.conductivityWithInhibitor(1000)).isEqualTo(Corrosion.Level.WARNING);
        assertThatIllegalArgumentException().isThrownBy(() -> Corrosion.conductivityWithInhibitor(-1));
    }

    @Test
    void aluminiumNarrowsThePhWindow() {
        assertThat(PhWindow.of(false).verdict(9)).isEqualTo(PhWindow.PhVerdict.WITHIN);
        assertThat(PhWindow.of(true).verdict(9)).isEqualTo(PhWindow.PhVerdict.TOO_ALKALINE);
        // From memory: the 2021 edition lets aluminium up to 9.0.
        assertThat(PhWindow.VDI_2035_ALUMINIUM_2021.verdict(9)).isEqualTo(PhWindow.PhVerdict.WITHIN);
        assertThat(PhWindow.VDI_2035.verdict(8.2)).isEqualTo(PhWindow.PhVerdict.WITHIN);
        assertThat(PhWindow.VDI_2035.verdict(8.1)).isEqualTo(PhWindow.PhVerdict.TOO_ACID);
        assertThatIllegalArgumentException().isThrownBy(() -> PhWindow.VDI_2035.verdict(14.1));
        assertThatIllegalArgumentException().isThrownBy(() -> PhWindow.VDI_2035.verdict(-0.1));
    }
}
