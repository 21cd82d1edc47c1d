package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Guesses multiplied and divided: the ends stay the ends. */
class RangeTest {

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

    /** Ends belong to a range: 60 litres lie in 40 to 60, and 40 to 60 meets 60 to 90. */
    @Test
    void endsBelongToIt() {
        Range range = new Range(40, 50, 60);
        assertThat(range.contains(40)).isTrue();
        assertThat(range.contains(60)).isTrue();
        assertThat(range.contains(39.9)).isFalse();
        assertThat(range.contains(60.1)).isFalse();
        assertThat(range.overlaps(new Range(60, 70, 90))).isTrue();
        assertThat(range.overlaps(new Range(10, 20, 40))).isTrue();
        assertThat(range.overlaps(new Range(61, 70, 90))).isFalse();
        assertThat(range.overlaps(new Range(10, 20, 39))).isFalse();
    }
}
