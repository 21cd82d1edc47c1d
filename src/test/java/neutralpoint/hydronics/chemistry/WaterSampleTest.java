package neutralpoint.hydronics.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import neutralpoint.hydronics.chemistry.Conductivity.Rinse;
import org.junit.jupiter.api.Test;

/** What is read from a jar of system water beside a jar of mains: conductivity, turbidity, copper, iron, pH. */
class WaterSampleTest {

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
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.tdsMilligramsPerLitre(200, 0.49));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.shareOverMains(300, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductivity.shareOverMains(-1, 300));
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
