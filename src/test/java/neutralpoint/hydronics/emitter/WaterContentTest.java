package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.References;
import neutralpoint.hydronics.pipework.Tube;
import neutralpoint.hydronics.pipework.Tube.Material;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How much water a house's heating holds, part by part and by rule of thumb. */
public class WaterContentTest {
    private static final Map<String, RadiatorType> BY_NUMBER = Map.of("11", RadiatorType.TYPE_11,
            "21 (coded 12)", RadiatorType.TYPE_21, "22", RadiatorType.TYPE_22);

    @TestFactory
    List<DynamicTest> published() {
        return References.of("content")
                .check("CU-", (in, expected) -> {
                    Tube tube = Tube.copper(in.get("OD_mm").asDouble(), in.get("wall_mm").asDouble());
                    assertThat(Tube.COPPER).contains(tube);
                    assertThat(tube.boreMillimetres()).isEqualTo(expected.get("bore_mm").asDouble());
                    assertThat(tube.litresPerMetre())
                            .isCloseTo(expected.get("litre_per_m").asDouble(), within(0.0002));
                })
                .check("PB-", (in, expected) -> {
                    Tube tube = Tube.usual(Material.BARRIER_PLASTIC, in.get("OD_mm").asDouble());
                    assertThat(tube.boreMillimetres()).isEqualTo(expected.get("bore_mm").asDouble());
                    assertThat(tube.litresPerMetre())
                            .isCloseTo(expected.get("litre_per_m").asDouble(), Percentage.withPercentage(6));
                })
                .check("RADV-22-500", (in, expected) -> {
                    assertThat(RadiatorType.TYPE_22.litresPerMetre(500).overlaps(Estimate.exactly(expected.asDouble()))).isTrue();
                    assertThat(RadiatorType.TYPE_22.exponent()).isCloseTo(1.334, within(0.06));
                })
                .check("RADV-22-600", (in, expected) -> {
                    assertThat(RadiatorType.TYPE_22.litresPerMetre(600).likely())
                            .isCloseTo(expected.asDouble(), Percentage.withPercentage(2));
                    for (int i = 0; i < in.get("litres").size(); i++) {
                        Estimate litres = WaterContent.radiatorLitres(RadiatorType.TYPE_22, 600,
                                in.get("lengths_m").get(i).asDouble() * 1000);
                        assertThat(litres.likely()).isCloseTo(in.get("litres").get(i).asDouble(),
                                Percentage.withPercentage(2));
                    }
                })
                .check("RADV-AREA", (in, expected) -> {
                    // Litres per square metre of one panel's face at usual heights, within the published range.
                    for (double height : new double[] {300, 450, 600}) {
                        double litres = RadiatorType.TYPE_22.litresPerMetre(height).likely() / 2 / (height / 1000);
                        assertThat(litres).isBetween(expected.get(0).asDouble(), expected.get(1).asDouble());
                    }
                })
                .check("RADV-", (in, expected) -> {
                    RadiatorType type = BY_NUMBER.get(in.get("type").asString());
                    double height = in.get("height_m").asDouble() * 1000;
                    assertThat(WaterContent.radiatorLitres(type, height, 1000).likely())
                            .isCloseTo(expected.get("litre_per_m").asDouble(), Percentage.withPercentage(4));
                    assertThat(WaterContent.radiatorWattsAt50Kelvin(type, height, 1000).likely())
                            .isCloseTo(expected.get("watt_per_m").asDouble(), Percentage.withPercentage(1));
                    assertThat(type.exponent()).isCloseTo(expected.get("exponent").asDouble(), within(0.06));
                })
                .check("VOL-02", (in, expected) -> assertThat(ContentRule
                        .byRadiators(in.get("radiators").asInt()).litres().likely()).isEqualTo(expected.asDouble()))
                .tests();
    }

    @Test
    void aDoublePanelByHand() {
        // Type 22, 600 high, 1.2 m long: two panels of (0.40 + 4.75 x 0.6) = 3.25 L/m, so 2 x 3.25 x 1.2 = 7.8 L.
        Estimate litres = WaterContent.radiatorLitres(RadiatorType.TYPE_22, 600, 1200);
        assertThat(litres.likely()).isCloseTo(7.8, within(1e-9));
        assertThat(litres.low()).isCloseTo(7.8 * 0.85, within(1e-9));
        assertThat(litres.high()).isCloseTo(7.8 * 1.15, within(1e-9));
    }

    /** The old estimate 41 k (1 + 8 h) watts a metre at 80/60/20 (public engineering handbook page), to 25 %. */
    @Test
    void outputOfPanelsIsNearTheHandbookEstimate() {
        Map<RadiatorType, Double> constants = Map.of(RadiatorType.TYPE_10, 3.1, RadiatorType.TYPE_11, 4.1,
                RadiatorType.TYPE_20, 4.9, RadiatorType.TYPE_21, 5.8, RadiatorType.TYPE_22, 7.0,
                RadiatorType.OLD_SINGLE_PANEL, 3.1, RadiatorType.OLD_DOUBLE_PANEL, 4.9);
        constants.forEach((type, k) -> {
            for (double height : new double[] {300, 450, 600, 750}) {
                assertThat(type.wattsPerMetreAt50Kelvin(height).likely()).as("%s, %s mm", type, height)
                        .isCloseTo(41 * k * (1 + 8 * height / 1000), Percentage.withPercentage(25));
            }
        });
    }

    /** Figures held from memory, at 600 mm: 0.9 L a section at 46 mm is 19.6 L/m for three columns of steel. */
    @Test
    void columnsHoldSeveralTimesAPanel() {
        assertThat(RadiatorType.COLUMN_3.litresPerMetre(600).overlaps(Estimate.exactly(0.9 / 0.046))).isTrue();
        // Cast iron, two columns, 588 mm high: 1.45 L a section 93 mm long (from memory).
        assertThat(RadiatorType.COLUMN_2.litresPerMetre(588).overlaps(Estimate.exactly(1.45 / 0.093))).isTrue();
        // Cast iron, four columns, 660 mm high: 1.8 L a section 60 mm long (from memory).
        assertThat(RadiatorType.COLUMN_4.litresPerMetre(660).overlaps(Estimate.exactly(1.8 / 0.060))).isTrue();
        assertThat(RadiatorType.COLUMN_2.litresPerMetre(600).likely())
                .isGreaterThan(RadiatorType.TYPE_22.litresPerMetre(600).high());
        // A ladder rail 1200 high and 500 wide: some 5 L and 550 W (from memory).
        assertThat(WaterContent.radiatorLitres(RadiatorType.TOWEL_RAIL, 1200, 500).overlaps(Estimate.exactly(5))).isTrue();
        assertThat(WaterContent.radiatorWattsAt50Kelvin(RadiatorType.TOWEL_RAIL, 1200, 500).overlaps(Estimate.exactly(550))).isTrue();
    }

    @Test
    void anOldPressingHoldsMoreThanAModernPanel() {
        for (double height : new double[] {300, 600, 900}) {
            assertThat(RadiatorType.OLD_SINGLE_PANEL.litresPerMetre(height).likely()
                    / RadiatorType.TYPE_10.litresPerMetre(height).likely()).isCloseTo(1.4, within(0.01));
            assertThat(RadiatorType.OLD_DOUBLE_PANEL.litresPerMetre(height))
                    .isEqualTo(RadiatorType.OLD_SINGLE_PANEL.litresPerMetre(height).times(2));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aTallerOrLongerRadiatorHoldsAndGivesMore(RadiatorType type) {
        for (long seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            double height = 100 + random.nextDouble() * 2300;
            double length = 100 + random.nextDouble() * 5800;
            for (Estimate[] grown : new Estimate[][] {
                {WaterContent.radiatorLitres(type, height, length), WaterContent.radiatorLitres(type, height + 50, length)},
                {WaterContent.radiatorLitres(type, height, length), WaterContent.radiatorLitres(type, height, length + 50)},
                {WaterContent.radiatorWattsAt50Kelvin(type, height, length),
                    WaterContent.radiatorWattsAt50Kelvin(type, height + 50, length)},
                {WaterContent.radiatorWattsAt50Kelvin(type, height, length),
                    WaterContent.radiatorWattsAt50Kelvin(type, height, length + 50)}}) {
                assertThat(grown[1].low()).as("seed %d", seed).isGreaterThan(grown[0].low());
                assertThat(grown[1].high()).as("seed %d", seed).isGreaterThan(grown[0].high());
                assertThat(grown[0].low()).as("seed %d: never said as if exact", seed)
                        .isLessThan(grown[0].high() * 0.8);
            }
        }
    }

    @Test
    void sizesThatNoRadiatorHasAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> WaterContent.radiatorLitres(RadiatorType.TYPE_11, 99, 1000))
                .withMessage("The radiator's height in millimetres is 99.0; it must lie between 100.0 and 2500.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> RadiatorType.TYPE_11.wattsPerMetreAt50Kelvin(2501));
        assertThatIllegalArgumentException().isThrownBy(() -> WaterContent.radiatorLitres(RadiatorType.TYPE_11, 600, 99))
                .withMessage("The radiator's length in millimetres is 99.0; it must lie between 100.0 and 6000.0.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WaterContent.radiatorWattsAt50Kelvin(RadiatorType.TYPE_11, 600, 6001));
        assertThatNoException().isThrownBy(() -> WaterContent.radiatorLitres(RadiatorType.TYPE_11, 100, 100));
        assertThatNoException().isThrownBy(() -> WaterContent.radiatorLitres(RadiatorType.TYPE_11, 2500, 6000));
    }

    @Test
    void pipesHoldLittleBesideRadiators() {
        // 40 to 60 m of 15 mm at 0.14527 L/m: 5.81 to 8.72 L.
        Estimate litres = WaterContent.pipeLitres(Tube.usual(Material.COPPER, 15), new Estimate(40, 50, 60));
        assertThat(litres.low()).isCloseTo(5.811, within(0.001));
        assertThat(litres.likely()).isCloseTo(7.263, within(0.001));
        assertThat(litres.high()).isCloseTo(8.716, within(0.001));
        assertThat(WaterContent.pipeLitres(Tube.usual(Material.COPPER, 22), 10).likely()).isCloseTo(3.205, within(0.001));
        assertThat(WaterContent.pipeLitres(Tube.usual(Material.COPPER, 22), 0)).isEqualTo(Estimate.NOTHING);
    }

    @Test
    void lengthsOfPipeThatNoHouseHasAreRefused() {
        Tube tube = Tube.usual(Material.COPPER, 15);
        assertThatIllegalArgumentException().isThrownBy(() -> WaterContent.pipeLitres(tube, -1))
                .withMessageContaining("-1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> WaterContent.pipeLitres(tube, new Estimate(0, 1, 10_001)))
                .withMessageContaining("10001.0");
        assertThatNoException().isThrownBy(() -> WaterContent.pipeLitres(tube, 10_000));
    }

    @Test
    void aCoilIsSomeMetresOfTube() {
        // 8 m of 28 mm tube: 8 x 0.539 = 4.3 L; 7 m of 22 mm: 7 x 0.3205 = 2.2 L.
        assertThat(WaterContent.CYLINDER_COIL_LITRES.overlaps(Estimate.exactly(8 * Tube.copper(28, 0.9).litresPerMetre()))).isTrue();
        assertThat(WaterContent.CYLINDER_COIL_LITRES.overlaps(Estimate.exactly(7 * Tube.copper(22, 0.9).litresPerMetre()))).isTrue();
    }

    /** From memory of data plates. */
    @Test
    void anOldIronBoilerHoldsSeveralTimesAModernOne() {
        assertThat(BoilerKind.WALL_HUNG_LOW_CONTENT.litres()).isEqualTo(new Estimate(1, 2.5, 4));
        assertThat(BoilerKind.FLOOR_STANDING_CAST_IRON.litres()).isEqualTo(new Estimate(8, 12, 20));
        assertThat(BoilerKind.GAS_BACK_BOILER.litres().low())
                .isGreaterThanOrEqualTo(BoilerKind.WALL_HUNG_LOW_CONTENT.litres().high());
    }
}
