package neutralpoint.hydronics.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import neutralpoint.hydronics.chemistry.Hardness.Scale;
import neutralpoint.hydronics.chemistry.Langelier.Analysis;
import neutralpoint.hydronics.chemistry.Langelier.Saturation;
import neutralpoint.hydronics.chemistry.Langelier.Tendency;
import org.junit.jupiter.api.Test;

/** Hard water: how it is written, what it does when hot, and how hard a fill may be. */
class ScalingTest {
    /** The textbook's water (LSI-25 and LSI-82). */
    private static final Analysis TEXTBOOK = new Analysis(7.5, 320, 150, 34);

    @Test
    void oneHardnessIsWrittenInFiveWays() {
        // 178.48 mg/L is ten German degrees: 100 mg/L of calcium oxide, by molar masses.
        assertThat(Hardness.on(Scale.GERMAN_DEGREES, 178.48)).isCloseTo(10, within(0.001));
        assertThat(Hardness.on(Scale.CLARK_DEGREES, 14.254)).isCloseTo(1, within(0.0001));
        assertThat(Hardness.on(Scale.FRENCH_DEGREES, 250)).isEqualTo(25);
        assertThat(Hardness.on(Scale.MILLIMOLES_PER_LITRE, 300.26)).isCloseTo(3, within(0.0001));
        assertThat(Hardness.on(Scale.MILLIGRAMS_CALCIUM_PER_LITRE, 100)).isCloseTo(40.043, within(0.001));
    }

    @Test
    void everyScaleGoesBackAndForth() {
        long seed = 100_087;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double hardness = random.nextDouble() * 2000;
            for (Scale scale : Scale.values()) {
                assertThat(Hardness.milligramsPerLitre(scale, Hardness.on(scale, hardness)))
                        .as("seed %d, %s, %f", seed, scale, hardness).isCloseTo(hardness, within(1e-9));
            }
        }
    }

    @Test
    void hardnessBeyondAnyTapIsRefused() {
        assertThat(Hardness.band(0)).isEqualTo(Hardness.HardnessBand.SOFT);
        assertThatIllegalArgumentException().isThrownBy(() -> Hardness.band(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> Hardness.wantsScaleReduction(2001))
                .withMessage("milligramsPerLitre is 2001.0; it must lie between 0.0 and 2000.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Hardness.on(Scale.FRENCH_DEGREES, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Hardness.milligramsPerLitre(Scale.FRENCH_DEGREES, 201));
        assertThatIllegalArgumentException().isThrownBy(() -> Hardness.milligramsPerLitre(Scale.FRENCH_DEGREES, -1));
    }

    @Test
    void waterThatDissolvesScaleInTheTapMayLayItDownInTheBoiler() {
        assertThat(Langelier.saturation(TEXTBOOK, 25)).isEqualTo(Saturation.DISSOLVES_SCALE);
        assertThat(Langelier.saturation(TEXTBOOK, 60)).isEqualTo(Saturation.NEAR_BALANCE);
        assertThat(Langelier.saturation(new Analysis(7.8, 320, 250, 220), 82)).isEqualTo(Saturation.LAYS_DOWN_SCALE);
        assertThat(Langelier.tendency(TEXTBOOK, 25)).isEqualTo(Tendency.STEEL_CORRODES);
        assertThat(Langelier.tendency(TEXTBOOK, 82)).isEqualTo(Tendency.LITTLE_EITHER_WAY);
    }

    @Test
    void halfAUnitEitherSideOfZeroIsBalance() {
        // Common practice, no source.
        assertThat(Langelier.saturation(0.5)).isEqualTo(Saturation.NEAR_BALANCE);
        assertThat(Langelier.saturation(0.51)).isEqualTo(Saturation.LAYS_DOWN_SCALE);
        assertThat(Langelier.saturation(-0.5)).isEqualTo(Saturation.NEAR_BALANCE);
        assertThat(Langelier.saturation(-0.51)).isEqualTo(Saturation.DISSOLVES_SCALE);
    }

    @Test
    void theBandsOfTheRyznarIndexMeetAtSixSevenAndEight() {
        assertThat(Langelier.tendency(5.99)).isEqualTo(Tendency.SCALE_GROWS);
        assertThat(Langelier.tendency(6)).isEqualTo(Tendency.LITTLE_EITHER_WAY);
        assertThat(Langelier.tendency(7)).isEqualTo(Tendency.LITTLE_EITHER_WAY);
        assertThat(Langelier.tendency(7.01)).isEqualTo(Tendency.NO_PROTECTIVE_FILM);
        assertThat(Langelier.tendency(8)).isEqualTo(Tendency.NO_PROTECTIVE_FILM);
        assertThat(Langelier.tendency(8.01)).isEqualTo(Tendency.STEEL_CORRODES);
    }

    @Test
    void hotterHarderAndMoreAlkalineWaterScalesMore() {
        long seed = 1936;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            Analysis water = new Analysis(6 + 3 * random.nextDouble(), 50 + 900 * random.nextDouble(),
                    10 + 400 * random.nextDouble(), 10 + 300 * random.nextDouble());
            double celsius = 5 + 80 * random.nextDouble();
            double index = Langelier.index(water, celsius);
            Analysis harder = new Analysis(water.ph(), water.tdsMilligramsPerLitre(),
                    water.calciumMilligramsPerLitre() + 10, water.alkalinityMilligramsPerLitre() + 10);
            assertThat(Langelier.index(water, celsius + 1)).as("seed %d, %s", seed, water).isGreaterThan(index);
            assertThat(Langelier.index(harder, celsius)).as("seed %d, %s", seed, water).isGreaterThan(index);
            assertThat(Langelier.ryznar(water, celsius)).as("seed %d, %s", seed, water)
                    .isCloseTo(water.ph() - 2 * index, within(1e-9));
        }
    }

    @Test
    void anAnalysisOutsideNatureIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Analysis(3.9, 320, 150, 34))
                .withMessage("ph is 3.9; it must lie between 4.0 and 12.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> new Analysis(7.5, 9, 150, 34));
        assertThatIllegalArgumentException().isThrownBy(() -> new Analysis(7.5, 320, 0, 34));
        assertThatIllegalArgumentException().isThrownBy(() -> new Analysis(7.5, 320, 150, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Langelier.index(TEXTBOOK, 100.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Langelier.index(TEXTBOOK, -0.1));
    }

    @Test
    void theMoreWaterThePlantHoldsTheSofterTheFill() {
        assertThat(Vdi2035.germanDegrees2005(50, 19.9, true)).hasValue(16.8);
        assertThat(Vdi2035.germanDegrees2005(50, 20, true)).hasValue(11.2);
        assertThat(Vdi2035.germanDegrees2005(50, 50, true)).hasValue(11.2);
        assertThat(Vdi2035.germanDegrees2005(50, 50.1, true)).hasValue(0.1);
        assertThat(Vdi2035.germanDegrees2005(200, 30, true)).hasValue(8.4);
        // From memory: the remaining rows of the 2005 table.
        assertThat(Vdi2035.germanDegrees2005(50.1, 10, false)).hasValue(11.2);
        assertThat(Vdi2035.germanDegrees2005(600, 10, false)).hasValue(8.4);
        assertThat(Vdi2035.germanDegrees2005(601, 10, false)).hasValue(0.1);
        assertThat(Vdi2035.germanDegrees2005(24, 10, false)).isEmpty();
    }

    @Test
    void theLaterEditionBreaksAtTwentyAndForty() {
        // From memory, as the VDI21 entries are.
        assertThat(Vdi2035.millimolesPerLitre2021(50, 20, true)).hasValue(3.0);
        assertThat(Vdi2035.millimolesPerLitre2021(50, 20.1, true)).hasValue(1.5);
        assertThat(Vdi2035.millimolesPerLitre2021(50, 40, true)).hasValue(1.5);
        assertThat(Vdi2035.millimolesPerLitre2021(50, 40.1, true)).hasValue(0.05);
        assertThat(Vdi2035.millimolesPerLitre2021(50, 20.1, false)).hasValue(3.0);
        assertThat(Vdi2035.millimolesPerLitre2021(50, 20, false)).isEmpty();
        assertThat(Vdi2035.millimolesPerLitre2021(200, 20, false)).hasValue(2.0);
        assertThat(Vdi2035.millimolesPerLitre2021(600, 20, false)).hasValue(1.5);
        assertThat(Vdi2035.millimolesPerLitre2021(200.1, 20.1, false)).hasValue(0.05);
    }

    @Test
    void theTwoEditionsAgreeWhatTheSmallLowContentHeaterMayHave() {
        // 16.8 German degrees in 2005 and 3.0 mmol/L in 2021 are one and the same.
        assertThat(Hardness.milligramsPerLitre(Scale.GERMAN_DEGREES, 16.8))
                .isCloseTo(Hardness.milligramsPerLitre(Scale.MILLIMOLES_PER_LITRE, 3), within(1.0));
    }

    @Test
    void saltAndPlantOutsideTheTablesAreRefused() {
        assertThat(Vdi2035.running(101)).isEqualTo(Vdi2035.Running.SALINE);
        assertThat(Vdi2035.running(1501)).isEqualTo(Vdi2035.Running.TOO_SALINE);
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.running(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.germanDegrees2005(0, 10, true));
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.germanDegrees2005(10_001, 10, true));
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.millimolesPerLitre2021(24, -1, true));
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.millimolesPerLitre2021(24, 1001, true));
    }
}
