package neutralpoint.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** No figure is written finer than it was measured or guessed. */
class DecimalsTest {

    @Test
    void aReadingIsWrittenAsItWasGiven() {
        assertThat(Decimals.given(1.5)).isEqualTo("1.5");
        assertThat(Decimals.given(0.0123456)).isEqualTo("0.0123");
        assertThat(Decimals.given(20)).isEqualTo("20");
    }

    @Test
    void aGuessIsNoFinerThanItsSize() {
        assertThat(Decimals.coarse(123.45)).isEqualTo("123");
        assertThat(Decimals.coarse(12.34)).isEqualTo("12.3");
        assertThat(Decimals.coarse(1.234)).isEqualTo("1.23");
    }

    @Test
    void aProgramGetsFourDecimals() {
        assertThat(Decimals.rounded(0.123456)).isEqualTo(0.1235);
    }
}
