package neutralpoint.report.chart;

/**
 * How warm a surface is, as a shade and a colour that say the same, so that neither is needed to read the other. The
 * steps are for the eye alone; no sum uses them.
 */
enum TemperatureBand {
    COOL(30, "under 30", '░', 34), TEPID(45, "30 to 44", '▒', 36), WARM(60, "45 to 59", '▓', 33), HOT(Double.MAX_VALUE, "60 or over", '█', 31);

    private final double belowCelsius;
    private final String words;
    private final char shade;
    private final int colour;

    TemperatureBand(double belowCelsius, String words, char shade, int colour) {
        this.belowCelsius = belowCelsius;
        this.words = words;
        this.shade = shade;
        this.colour = colour;
    }

    static TemperatureBand at(double celsius) {
        for (TemperatureBand w : values()) {
            if (celsius < w.belowCelsius) {
                return w;
            }
        }
        return HOT;
    }

    /**
     * What each shade stands for, in degrees Celsius.
     *
     * @param middle what stands between the colder two and the warmer two
     */
    static String legend(String middle) {
        return COOL.meaning() + "  " + TEPID.meaning() + middle + WARM.meaning() + "  " + HOT.meaning();
    }

    private String meaning() {
        return cells(1) + " " + words;
    }

    /** Cells from one temperature to another, in equal steps. */
    static String strip(double fromCelsius, double toCelsius, int cells) {
        StringBuilder strip = new StringBuilder();
        int begun = 0;
        for (int i = 1; i <= cells; i++) {
            if (i == cells || between(fromCelsius, toCelsius, i, cells) != between(fromCelsius, toCelsius, begun, cells)) {
                strip.append(between(fromCelsius, toCelsius, begun, cells).cells(i - begun));
                begun = i;
            }
        }
        return strip.toString();
    }

    private static TemperatureBand between(double from, double to, int cell, int cells) {
        return at(from + (to - from) * cell / Math.max(1, cells - 1));
    }

    private String cells(int count) {
        return "\u001b[" + colour + "m" + String.valueOf(shade).repeat(count) + "\u001b[0m";
    }
}
