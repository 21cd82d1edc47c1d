package neutralpoint.hydronics;

/** The values an argument may have, both ends included. */
public record ValidRange(String quantity, String unit, double least, double most) {

    /** The value itself, when it is in range; not-a-number never is. */
    public double check(double value) {
        return Bounds.within(quantity + " in " + unit, value, least, most);
    }
}
