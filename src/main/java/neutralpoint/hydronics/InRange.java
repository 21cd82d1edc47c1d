package neutralpoint.hydronics;

/** Refuses an argument outside its valid range, in one sentence that names the value and the range. */
final class InRange {
    private InRange() {}

    /** The value itself when it lies from least to most, both included. */
    static double closed(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " is " + value + " but must lie from " + least + " to " + most + ".");
        }
        return value;
    }

    /** The value itself when it lies above a limit that is not included, up to most, which is. */
    static double above(String name, double value, double limit, double most) {
        if (!(value > limit && value <= most)) {
            throw new IllegalArgumentException(
                    name + " is " + value + " but must lie above " + limit + " and up to " + most + ".");
        }
        return value;
    }
}
