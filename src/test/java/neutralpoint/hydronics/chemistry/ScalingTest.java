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
        assertThat(Hardness.milligramsPerLitre(Scale.GERMAN_DEGREES, 10)).isCloseTo(178.48, within(0.01));
        assertThat(Hardness.milligramsPerLitre(Scale.CLARK_DEGREES, 1)).isCloseTo(14.254, within(0.001));
        assertThat(Hardness.milligramsPerLitre(Scale.FRENCH_DEGREES, 25)).isCloseTo(250, within(1e-9));
        assertThat(Hardness.milligramsPerLitre(Scale.MILLIMOLES_PER_LITRE, 3)).isCloseTo(300.26, within(0.01));
        assertThat(Hardness.milligramsPerLitre(Scale.MILLIGRAMS_CALCIUM_PER_LITRE, 40.043)).isCloseTo(100, within(0.01));
    }

    @Test
    void hardnessBeyondAnyTapIsRefused() {
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
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.millimolesPerLitre2021(24, -1, true));
        assertThatIllegalArgumentException().isThrownBy(() -> Vdi2035.millimolesPerLitre2021(24, 1001, true));
    }
}
