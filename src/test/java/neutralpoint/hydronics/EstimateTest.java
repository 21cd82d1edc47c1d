package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Guessed figures keep their doubt through every sum. */
class EstimateTest {
    private static final Estimate BOILER = new Estimate(8, 12, 20);
    private static final Estimate COIL = new Estimate(2, 4, 6);

    @Test
    void aGuessGivenAsAShareSpreadsBothWays() {
        // 40 litres, 15 % either way: 34 to 46.
        Estimate radiators = Estimate.about(40, 0.15);
        assertThat(radiators.low()).isCloseTo(34, within(1e-12));
        assertThat(radiators.likely()).isEqualTo(40);
        assertThat(radiators.high()).isCloseTo(46, within(1e-12));
    }

    @Test
    void whatIsKnownHasNoSpread() {
        assertThat(Estimate.exactly(7)).isEqualTo(new Estimate(7, 7, 7));
        assertThat(Estimate.about(7, 0)).isEqualTo(Estimate.exactly(7));
    }

    @Test
    void endsAddToEnds() {
        assertThat(BOILER.plus(COIL)).isEqualTo(new Estimate(10, 16, 26));
        assertThat(Estimate.total(List.of(BOILER, COIL, Estimate.exactly(1)))).isEqualTo(new Estimate(11, 17, 27));
        assertThat(Estimate.total(List.of())).isEqualTo(new Estimate(0, 0, 0));
    }

    @Test
    void threeOfAKindHoldThreeTimesAsMuch() {
        assertThat(COIL.times(3)).isEqualTo(new Estimate(6, 12, 18));
        assertThat(COIL.times(0)).isEqualTo(Estimate.NOTHING);
    }

    @ParameterizedTest
    @CsvSource({"7.999, false", "8, true", "12, true", "20, true", "20.001, false"})
    void bothEndsBelongToIt(double value, boolean contained) {
        assertThat(BOILER.contains(value)).isEqualTo(contained);
    }

    @ParameterizedTest
    @CsvSource({"0, 7.9, false", "0, 8, true", "9, 10, true", "0, 30, true", "20, 30, true", "20.1, 30, false"})
    void twoGuessesAgreeWhenSomeFigureSatisfiesBoth(double low, double high, boolean overlaps) {
        Estimate other = new Estimate(low, low, high);
        assertThat(BOILER.overlaps(other)).isEqualTo(overlaps);
        assertThat(other.overlaps(BOILER)).isEqualTo(overlaps);
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 3", "1, 3, 2", "NaN, 1, 2", "0, NaN, 2", "0, 1, NaN", "0, 1, Infinity", "-Infinity, 1, 2",
        "Infinity, Infinity, Infinity"})
    void figuresOutOfOrderOrWithoutEndAreRefused(double low, double likely, double high) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(low, likely, high))
                .withMessage("A range must hold finite figures in ascending order, and was " + low + ", " + likely
                        + ", " + high + ".");
    }

    @Test
    void sharesAndFactorsBelowNothingAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.about(-1, 0.1)).withMessageContaining("-1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.about(1, -0.1)).withMessageContaining("0.0 and 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.about(1, 1.1)).withMessageContaining("1.1");
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.about(1, Double.NaN)).withMessageContaining("NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> COIL.times(-1))
                .withMessageStartingWith("The factor is ").withMessageContaining("must lie between 0.0 and");
        assertThatNoException().isThrownBy(() -> Estimate.about(1, 1));
    }

    @Test
    void aSumHoldsEverySumOfWhatItsPartsHold() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            Estimate a = any(random);
            Estimate b = any(random);
            double sum = inside(a, random) + inside(b, random);
            assertThat(a.plus(b).contains(sum)).as("seed %d: %s + %s holds %s", seed, a, b, sum).isTrue();
            assertThat(a.plus(b)).as("seed %d: either order", seed).isEqualTo(b.plus(a));
        }
    }

    private static Estimate any(Random random) {
        return Estimate.about(random.nextDouble() * 100, random.nextDouble());
    }

    private static double inside(Estimate range, Random random) {
        return range.low() + (range.high() - range.low()) * random.nextDouble() * 0.999;
    }

    /** 80 to 120 litres at 2 to 4 turnovers: 160 to 480. */
    @Test
    void leastByLeastAndMostByMost() {
        assertThat(new Estimate(80, 100, 120).times(new Estimate(2, 3, 4))).isEqualTo(new Estimate(160, 300, 480));
        assertThat(new Estimate(0, 1, 2).times(new Estimate(0, 5, 10))).isEqualTo(new Estimate(0, 5, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(-1, 1, 2).times(Estimate.exactly(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.exactly(1).times(new Estimate(-1, 1, 2)));
    }

    /** 80 to 120 litres at 8 to 20 a minute take 4 minutes at the least, 15 at the most. */
    @Test
    void theLeastTimeIsTheLeastWaterAtTheMostFlow() {
        assertThat(new Estimate(80, 100, 120).over(new Estimate(8, 10, 20))).isEqualTo(new Estimate(4, 10, 15));
        assertThat(Estimate.NOTHING.over(Estimate.exactly(3))).isEqualTo(Estimate.NOTHING);
        assertThatIllegalArgumentException().isThrownBy(() -> Estimate.exactly(1).over(new Estimate(0, 1, 2)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(-1, 1, 2).over(Estimate.exactly(1)));
    }
}
