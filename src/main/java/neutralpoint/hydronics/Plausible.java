package neutralpoint.hydronics;

/** Refuses an argument outside its valid range with one sentence that names the value and the range. */
final class Plausible {
    private Plausible() {}

    static double value(String name, double value, double lowest, double highest) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must lie between " + lowest + " and " + highest + ".");
        }
        return value;
    }
}
