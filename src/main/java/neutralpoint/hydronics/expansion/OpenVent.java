package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/**
 * Pressures round a circuit that is open to the loft. The cold feed's tee is the neutral point: there the pump changes
 * nothing. From the pump outlet to that tee, going with the flow, the water stands above its static head; from the tee
 * on to the pump inlet it stands below. All heads are metres of water.
 *
 * <p>Shares are of the resistance of the whole circuit that the pump drives, so that the pump's whole head is spent
 * over a share of one. Every sum refuses an argument outside its range with an IllegalArgumentException.
 */
public final class OpenVent {
    /** Feed and vent tees at most this far apart count as one place (a Level 3 plumbing textbook). */
    public static final double CLOSE_COUPLED_MILLIMETRES = 150;
    /** Least height of the cistern's water above the highest pumped pipe, fully pumped (the same textbook). */
    public static final double SMALLEST_CISTERN_HEIGHT_FULLY_PUMPED_METRES = 1.0;

    private static final double MOST_PUMP_HEAD_METRES = 20;
    private static final double MOST_HEIGHT_METRES = 50;
    /** A vent cannot rise or fall by more than the pump's head. */
    private static final double MOST_RISE_METRES = MOST_PUMP_HEAD_METRES;

    private OpenVent() {}

    /**
     * How far the running pump lifts the water in the vent: pump head times the share of resistance between the tees.
     * Follows from the neutral point; common practice, no source.
     *
     * @param pumpHeadMetres                head the pump makes as it runs, 0 to 20
     * @param shareOfResistanceBetweenTees  -1 to 1; positive when, going with the flow from the pump outlet, the vent
     *                                      tee comes before the feed tee (the vent is pushed up), negative when the feed
     *                                      tee comes first (the pump draws the vent down)
     * @return metres of rise; negative is a fall
     */
    public static double riseAtVentMetres(double pumpHeadMetres, double shareOfResistanceBetweenTees) {
        return pumpHead(pumpHeadMetres)
                * Bounds.within("shareOfResistanceBetweenTees", shareOfResistanceBetweenTees, -1, 1);
    }

    /**
     * How much further the vent could rise before it pours into the cistern; negative when it pumps over.
     *
     * @param ventHeightAboveWaterMetres top of the vent's bend above the cistern's water line, 0 to 50
     * @param riseMetres                 rise at the vent, -20 to 20
     */
    public static double marginBeforePumpingOverMetres(double ventHeightAboveWaterMetres, double riseMetres) {
        return height("ventHeightAboveWaterMetres", ventHeightAboveWaterMetres) - rise(riseMetres);
    }

    /**
     * How much further the vent could fall before it is empty down to its tee and air is drawn in; negative when it is.
     *
     * @param waterAboveVentTeeMetres cistern's water line above the vent's tee, 0 to 50
     * @param riseMetres              rise at the vent, -20 to 20
     */
    public static double marginBeforeDrawingAirMetres(double waterAboveVentTeeMetres, double riseMetres) {
        return height("waterAboveVentTeeMetres", waterAboveVentTeeMetres) + rise(riseMetres);
    }

    /**
     * Least height of the vent's top above the cistern's water line for a gravity circuit: 0.04 H + 0.15 m, because hot
     * water in the vent stands higher than the cold in the feed (Water Regulations Guide G20.3, as quoted by others).
     *
     * @param heightOfWaterAboveBoilerMetres H: cistern's water line above the boiler, 0 to 50
     */
    public static double requiredVentHeightMetres(double heightOfWaterAboveBoilerMetres) {
        return 0.04 * height("heightOfWaterAboveBoilerMetres", heightOfWaterAboveBoilerMetres) + 0.15;
    }

    /**
     * The same for a pumped circuit: the pump's rise at the vent comes on top (from memory). A fall takes nothing off,
     * for the pump is often at rest.
     *
     * @param heightOfWaterAboveBoilerMetres cistern's water line above the boiler, 0 to 50
     * @param riseMetres                     rise at the vent, -20 to 20
     */
    public static double requiredVentHeightMetres(double heightOfWaterAboveBoilerMetres, double riseMetres) {
        return requiredVentHeightMetres(heightOfWaterAboveBoilerMetres) + Math.max(0, rise(riseMetres));
    }

    /**
     * How far the hottest water is from boiling where it stands; negative when it boils.
     *
     * @param boilingPointCelsius at the pressure in the exchanger, 0 to 200
     * @param exchangerCelsius    hottest water in the exchanger, 0 to 200
     */
    public static double boilingMarginKelvin(double boilingPointCelsius, double exchangerCelsius) {
        return Bounds.within("boilingPointCelsius", boilingPointCelsius, 0, 200)
                - Bounds.within("exchangerCelsius", exchangerCelsius, 0, 200);
    }

    private static double pumpHead(double metres) {
        return Bounds.within("pumpHeadMetres", metres, 0, MOST_PUMP_HEAD_METRES);
    }

    private static double height(String name, double metres) {
        return Bounds.within(name, metres, 0, MOST_HEIGHT_METRES);
    }

    private static double rise(double metres) {
        return Bounds.within("riseMetres", metres, -MOST_RISE_METRES, MOST_RISE_METRES);
    }
}
