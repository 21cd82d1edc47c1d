package neutralpoint.hydronics;

/** Refuses a figure outside what can be, with one sentence that names it and what is valid. */
final class Bounds {
    private Bounds() {}

    /** The value, if it is a number from least to most, both included. */
    static double within(String name, double value, double least, double most) {
        // Written so that a value that is not a number is refused too.
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " must be from " + least + " to " + most + ", and was " + value + ".");
        }
        return value;
    }
}
