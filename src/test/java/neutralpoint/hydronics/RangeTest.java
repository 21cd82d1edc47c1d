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
class RangeTest {
    private static final Range BOILER = new Range(8, 12, 20);
    private static final Range COIL = new Range(2, 4, 6);

    @Test
    void aGuessGivenAsAShareSpreadsBothWays() {
        // 40 litres, 15 % either way: 34 to 46.
        Range radiators = Range.about(40, 0.15);
        assertThat(radiators.low()).isCloseTo(34, within(1e-12));
        assertThat(radiators.likely()).isEqualTo(40);
        assertThat(radiators.high()).isCloseTo(46, within(1e-12));
    }

    @Test
    void whatIsKnownHasNoSpread() {
        assertThat(Range.exactly(7)).isEqualTo(new Range(7, 7, 7));
        assertThat(Range.about(7, 0)).isEqualTo(Range.exactly(7));
    }

    @Test
    void endsAddToEnds() {
        assertThat(BOILER.plus(COIL)).isEqualTo(new Range(10, 16, 26));
        assertThat(Range.total(List.of(BOILER, COIL, Range.exactly(1)))).isEqualTo(new Range(11, 17, 27));
        assertThat(Range.total(List.of())).isEqualTo(new Range(0, 0, 0));
    }

    @Test
    void threeOfAKindHoldThreeTimesAsMuch() {
        assertThat(COIL.times(3)).isEqualTo(new Range(6, 12, 18));
        assertThat(COIL.times(0)).isEqualTo(Range.NOTHING);
    }

    @ParameterizedTest
    @CsvSource({"7.999, false", "8, true", "12, true", "20, true", "20.001, false"})
    void bothEndsBelongToIt(double value, boolean contained) {
        assertThat(BOILER.contains(value)).isEqualTo(contained);
    }

    @ParameterizedTest
    @CsvSource({"0, 7.9, false", "0, 8, true", "9, 10, true", "0, 30, true", "20, 30, true", "20.1, 30, false"})
    void twoGuessesAgreeWhenSomeFigureSatisfiesBoth(double low, double high, boolean overlaps) {
        Range other = new Range(low, low, high);
        assertThat(BOILER.overlaps(other)).isEqualTo(overlaps);
        assertThat(other.overlaps(BOILER)).isEqualTo(overlaps);
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 3", "1, 3, 2", "NaN, 1, 2", "0, NaN, 2", "0, 1, NaN", "0, 1, Infinity", "-Infinity, 1, 2",
        "Infinity, Infinity, Infinity"})
    void figuresOutOfOrderOrWithoutEndAreRefused(double low, double likely, double high) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Range(low, likely, high))
                .withMessage("A range must hold finite figures in ascending order, and was " + low + ", " + likely
                        + ", " + high + ".");
    }

    @Test
    void sharesAndFactorsBelowNothingAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Range.about(-1, 0.1)).withMessageContaining("-1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Range.about(1, -0.1)).withMessageContaining("0.0 and 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Range.about(1, 1.1)).withMessageContaining("1.1");
        assertThatIllegalArgumentException().isThrownBy(() -> Range.about(1, Double.NaN)).withMessageContaining("NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> COIL.times(-1))
                .withMessageStartingWith("The factor is ").withMessageContaining("must lie between 0.0 and");
        assertThatNoException().isThrownBy(() -> Range.about(1, 1));
    }

    @Test
    void aSumHoldsEverySumOfWhatItsPartsHold() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            Range a = any(random);
            Range b = any(random);
            double sum = inside(a, random) + inside(b, random);
            assertThat(a.plus(b).contains(sum)).as("seed %d: %s + %s holds %s", seed, a, b, sum).isTrue();
            assertThat(a.plus(b)).as("seed %d: either order", seed).isEqualTo(b.plus(a));
        }
    }

    private static Range any(Random random) {
        return Range.about(random.nextDouble() * 100, random.nextDouble());
    }

    private static double inside(Range range, Random random) {
        return range.low() + (range.high() - range.low()) * random.nextDouble() * 0.999;
    }

    /** 80 to 120 litres at 2 to 4 turnovers: 160 to 480. */
    @Test
    void leastByLeastAndMostByMost() {
        assertThat(new Range(80, 100, 120).times(new Range(2, 3, 4))).isEqualTo(new Range(160, 300, 480));
        assertThat(new Range(0, 1, 2).times(new Range(0, 5, 10))).isEqualTo(new Range(0, 5, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> new Range(-1, 1, 2).times(Range.exactly(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> Range.exactly(1).times(new Range(-1, 1, 2)));
    }

    /** 80 to 120 litres at 8 to 20 a minute take 4 minutes at the least, 15 at the most. */
    @Test
    void theLeastTimeIsTheLeastWaterAtTheMostFlow() {
        assertThat(new Range(80, 100, 120).over(new Range(8, 10, 20))).isEqualTo(new Range(4, 10, 15));
        assertThat(Range.NOTHING.over(Range.exactly(3))).isEqualTo(Range.NOTHING);
        assertThatIllegalArgumentException().isThrownBy(() -> Range.exactly(1).over(new Range(0, 1, 2)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Range(-1, 1, 2).over(Range.exactly(1)));
    }
}
