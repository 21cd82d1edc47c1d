package neutralpoint.report;

/**
 * How a report is shown.
 *
 * @param width  columns to write in, 39 or more
 * @param colour true for colour and block characters, false for plain words and ASCII
 */
public record Look(int width, boolean colour) {
    /** The narrowest screen, less the column kept free at its right edge. */
    public static final int NARROWEST = 39;

    public Look {
        if (width < NARROWEST) {
            throw new IllegalArgumentException("The width is " + width + "; it must be " + NARROWEST + " columns or more.");
        }
    }

    /** Plain words and ASCII. */
    public static Look plain(int width) {
        return new Look(width, false);
    }
}
