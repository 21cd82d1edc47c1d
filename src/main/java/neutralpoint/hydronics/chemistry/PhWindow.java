package neutralpoint.hydronics.chemistry;

import neutralpoint.hydronics.Bounds;

/** A window of pH that heating water should lie in; the limits themselves are within. */
public enum PhWindow {
    /** VDI 2035, no aluminium in the system (VDI-03). */
    VDI_2035(8.2, 10.0),
    /** VDI 2035 with aluminium; the source names no edition, the figure is that of 2009 (VDI-04). */
    VDI_2035_ALUMINIUM(8.2, 8.5),
    /** VDI 2035 with aluminium as the 2021 edition has it; from memory. */
    VDI_2035_ALUMINIUM_2021(8.2, 9.0),
    /** Where aluminium keeps its oxide film, about (COR-AL-PH). */
    ALUMINIUM_PASSIVE(4.0, 8.5),
    /** Heating water by a laboratory note of Swiss practice (COR-PH-H). */
    SWISS_PRACTICE(8.3, 9.5);

    private final double lowest;
    private final double highest;

    /** Where a reading lies. */
    public enum PhVerdict { TOO_ACID, WITHIN, TOO_ALKALINE }

    PhWindow(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The window to hold system water against: narrower with aluminium, in the safer of the two editions. */
    public static PhWindow of(boolean aluminium) {
        return aluminium ? VDI_2035_ALUMINIUM : VDI_2035;
    }

    public double lowest() {
        return lowest;
    }

    public double highest() {
        return highest;
    }

    /**
     * @param ph of a cooled sample, 0 to 14; anything else is refused with {@link IllegalArgumentException}
     */
    public PhVerdict verdict(double ph) {
        if (Bounds.within("ph", ph, 0, 14) < lowest) {
            return PhVerdict.TOO_ACID;
        }
        return ph > highest ? PhVerdict.TOO_ALKALINE : PhVerdict.WITHIN;
    }
}
