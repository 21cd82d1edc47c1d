package neutralpoint.report.text;

/**
 * How a report is shown.
 *
 * @param width  columns to write in, 39 or more
 * @param colour true for colour and block characters, false for plain words and ASCII
 */
public record DisplayOptions(int width, boolean colour) {
    /** The narrowest screen, less the column kept free at its right edge. */
    public static final int NARROWEST = 39;

    public DisplayOptions {
        if (width < NARROWEST) {
            throw new IllegalArgumentException("The width is " + width + "; it must be " + NARROWEST + " columns or more.");
        }
    }

    /** Plain words and ASCII. */
    public static DisplayOptions plain(int width) {
        return new DisplayOptions(width, false);
    }
}
