package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import neutralpoint.hydronics.emitter.WaterContentTest;
import neutralpoint.hydronics.pipework.Tube.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tube sizes; the published bores and contents are checked with {@link WaterContentTest}. */
class TubeTest {

    @Test
    void fifteenMillimetreCopperHoldsAboutALitreInSevenMetres() {
        // 15 mm outside less twice 0.7 mm of wall: bore 13.6 mm. pi x 13.6 x 13.6 / 4 = 145.27 mm2 = 0.14527 L/m.
        Tube tube = Tube.copper(15, 0.7);
        assertThat(tube.boreMillimetres()).isEqualTo(13.6);
        assertThat(tube.litresPerMetre()).isCloseTo(0.14527, within(0.00001));
        assertThat(7 * tube.litresPerMetre()).isCloseTo(1.017, within(0.001));
    }

    /** Usual UK walls: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"8, 6.8", "10, 8.8", "12, 10.8", "15, 13.6", "22, 20.2", "28, 26.2", "35, 32.6"})
    void theUsualCopperOfEachDiameter(double outside, double bore) {
        assertThat(Tube.usual(Material.COPPER, outside)).isEqualTo(new Tube(Material.COPPER, outside, bore));
    }

    @Test
    void plasticOfTheSameOutsideHasTheNarrowerBore() {
        for (Tube plastic : Tube.BARRIER_PLASTIC) {
            assertThat(Tube.usual(Material.BARRIER_PLASTIC, plastic.outsideMillimetres())).isEqualTo(plastic);
            assertThat(plastic.boreMillimetres())
                    .isLessThan(Tube.usual(Material.COPPER, plastic.outsideMillimetres()).boreMillimetres());
        }
    }

    @Test
    void everyListedTubeIsOfItsMaterialAndListedOnce() {
        assertThat(Tube.COPPER).hasSize(17).doesNotHaveDuplicates()
                .allMatch(t -> t.material() == Material.COPPER);
        assertThat(Tube.BARRIER_PLASTIC).hasSize(4).doesNotHaveDuplicates()
                .allMatch(t -> t.material() == Material.BARRIER_PLASTIC);
    }

    @Test
    void anUnknownSizeIsRefusedWithTheSizesThereAre() {
        assertThatIllegalArgumentException().isThrownBy(() -> Tube.usual(Material.COPPER, 16)).withMessage(
                "The outside diameter must be one of 8.0, 10.0, 12.0, 15.0, 22.0, 28.0, 35.0 mm, and was 16.0 mm.");
        assertThatIllegalArgumentException().isThrownBy(() -> Tube.usual(Material.BARRIER_PLASTIC, 35))
                .withMessageContaining("10.0, 15.0, 22.0, 28.0 mm");
    }

    @Test
    void tubeWithoutWallOrWithoutBoreIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(Material.COPPER, 15, 15))
                .withMessage("The bore must be from 1.0 mm to less than the outside diameter of 15.0 mm,"
                        + " and was 15.0 mm.");
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(Material.COPPER, 15, 0.99));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(Material.COPPER, 15, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(Material.COPPER, 3.9, 2))
                .withMessageContaining("4.0 and 120.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Tube(Material.COPPER, 120.1, 2));
        assertThatNoException().isThrownBy(() -> new Tube(Material.COPPER, 4, 1));
        assertThatNoException().isThrownBy(() -> new Tube(Material.COPPER, 120, 119.9));
    }
}
