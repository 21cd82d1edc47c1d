package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleUnaryOperator;

/** Tries one argument of a sum at both ends of its range, just beyond them, and with what is no number. */
public final class ArgumentRange {
    private ArgumentRange() {}

    /** Both ends are taken and give a finite result. */
    public static void closed(String name, double least, double most, DoubleUnaryOperator sum) {
        taken(name, least, sum);
        taken(name, most, sum);
        refused(name, Math.nextDown(least), sum);
        refused(name, Math.nextUp(most), sum);
        refusesWhatIsNoNumber(name, sum);
    }

    /** The lower limit itself is refused; what lies next above it is taken. */
    public static void above(String name, double limit, double most, DoubleUnaryOperator sum) {
        refused(name, limit, sum);
        taken(name, Math.nextUp(limit), sum);
        taken(name, most, sum);
        refused(name, Math.nextUp(most), sum);
        refusesWhatIsNoNumber(name, sum);
    }

    /** The same for a sum whose result does not matter here. */
    public static void limits(String name, double least, double most, DoubleConsumer call) {
        closed(name, least, most, value -> {
            call.accept(value);
            return 0;
        });
    }

    /** An answer of "none" counts as zero: it is no error. */
    public static double orZero(OptionalDouble answer) {
        return answer.orElse(0);
    }

    private static void refusesWhatIsNoNumber(String name, DoubleUnaryOperator sum) {
        refused(name, Double.NaN, sum);
        refused(name, Double.POSITIVE_INFINITY, sum);
        refused(name, Double.NEGATIVE_INFINITY, sum);
    }

    private static void taken(String name, double value, DoubleUnaryOperator sum) {
        assertThat(sum.applyAsDouble(value)).as("result for %s %s", name, value).isFinite();
    }

    private static void refused(String name, double value, DoubleUnaryOperator sum) {
        assertThatThrownBy(() -> sum.applyAsDouble(value)).as("%s %s", name, value)
                .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith(name + " is " + value + "; it must lie")
                .hasMessageEndingWith(".");
    }
}
