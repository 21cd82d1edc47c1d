package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.function.DoubleConsumer;

/** What every argument promises: both limits are valid; just beyond them, and no number at all, is refused by name. */
final class ValidRange {
    private ValidRange() {}

    static void of(String name, double lowest, double highest, DoubleConsumer call) {
        call.accept(lowest);
        call.accept(highest);
        for (double wrong : new double[] {Math.nextDown(lowest), Math.nextUp(highest), Double.NaN}) {
            assertThatIllegalArgumentException().as(name + " of " + wrong).isThrownBy(() -> call.accept(wrong))
                    .withMessage(name + " is " + wrong + "; it must lie between " + lowest + " and " + highest + ".");
        }
    }
}
