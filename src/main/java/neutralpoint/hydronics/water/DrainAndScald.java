package neutralpoint.hydronics.water;

import neutralpoint.hydronics.Bounds;

/**
 * Hot water down the drain and on the skin. Arguments outside their range are refused with
 * {@link IllegalArgumentException}.
 */
public final class DrainAndScald {
    /** Hottest liquid a public sewer may be given where it could do harm (Water Industry Act 1991 s.111; SAF-43). */
    public static final double SEWER_LIMIT_CELSIUS = 43;

    private static final double[] SCALD_CELSIUS = {55, 60, 70};
    private static final double[] SCALD_SECONDS = {30, 5, 1};

    private DrainAndScald() {}

    /** @param celsius temperature of the water at the drain, 0 to 100 °C */
    public static boolean mayGoToSewer(double celsius) {
        return Bounds.within("celsius", celsius, 0, 100) <= SEWER_LIMIT_CELSIUS;
    }

    /**
     * Cold water to mix with hot before it may go to the sewer, by a balance of heat that takes both for equally heavy.
     *
     * @param hotLitres   0 to 10 000 L
     * @param hotCelsius  0 to 100 °C
     * @param coldCelsius 0 to 40 °C
     * @return litres; zero if the hot water is cool enough already
     */
    public static double coldLitresForSewer(double hotLitres, double hotCelsius, double coldCelsius) {
        Bounds.within("hotLitres", hotLitres, 0, 10_000);
        Bounds.within("coldCelsius", coldCelsius, 0, 40);
        return mayGoToSewer(hotCelsius)
                ? 0
                : hotLitres * (hotCelsius - SEWER_LIMIT_CELSIUS) / (SEWER_LIMIT_CELSIUS - coldCelsius);
    }

    /**
     * Seconds of contact until a full-thickness scald of healthy adult skin: an order of size (SAF-SCALD entries;
     * between them the logarithm is taken as straight). Children and the old scald far sooner.
     *
     * @param celsius 55 to 100 °C; below that the source is silent, which does not mean safe
     * @return seconds at most
     */
    public static double scaldSeconds(double celsius) {
        Bounds.within("celsius", celsius, SCALD_CELSIUS[0], 100);
        int last = SCALD_CELSIUS.length - 1;
        if (celsius >= SCALD_CELSIUS[last]) {
            return SCALD_SECONDS[last];
        }
        int i = celsius < SCALD_CELSIUS[1] ? 0 : 1;
        double share = (celsius - SCALD_CELSIUS[i]) / (SCALD_CELSIUS[i + 1] - SCALD_CELSIUS[i]);
        return SCALD_SECONDS[i] * Math.pow(SCALD_SECONDS[i + 1] / SCALD_SECONDS[i], share);
    }
}
