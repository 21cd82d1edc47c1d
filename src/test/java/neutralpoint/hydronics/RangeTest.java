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
}
