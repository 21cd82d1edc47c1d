package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.hipparchus.stat.interval.ConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many of how many, and how far that can be trusted. */
class ShareTest {
    private static final Offset<Double> ROUNDED = Offset.offset(0.00006);

    /**
     * R. G. Newcombe, Two-sided confidence intervals for the single proportion: comparison of seven methods, Statistics in
     * Medicine 17 (1998), table I, method 3 (Wilson's score); doi 10.1002/(SICI)1097-0258(19980430)17:8. From memory.
     */
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void limitsAreAsPublished(int holds, int of, double low, double high) {
        ConfidenceInterval limits = new Share(holds, of).interval();
        assertThat(limits.getLowerBound()).isCloseTo(low, ROUNDED);
        assertThat(limits.getUpperBound()).isCloseTo(high, ROUNDED);
    }

    @Test
    void nothingCountedSaysNothing() {
        assertThat(new Share(0, 0)).hasToString("none");
    }
}
