package neutralpoint.hydronics;

/** The values an argument may have, both ends included. */
record ValidRange(String quantity, String unit, double least, double most) {

    /** The value itself, when it is in range; not-a-number never is. */
    double check(double value) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(quantity + " of " + value + " " + unit + " is outside the valid range "
                    + least + " to " + most + " " + unit + ".");
        }
        return value;
    }
}
