package neutralpoint.hydronics.water;

import neutralpoint.hydronics.ValidRange;

/**
 * Antifreeze of glycol and water, the glycol's share given by volume as it is poured. Good for reckoning an expansion
 * vessel or a flow, not for more: the tables are rounded from the published fit for pure glycols (International
 * Institute of Refrigeration, Properties of Secondary Working Fluids, 2010; its coefficients read in open-source code
 * that cites it, not in the book), volume share turned into mass share with
 * densities at 20 °C of 1036 (propylene), 1113 (ethylene) and 998.2 kg/m³ (water), which are from memory. Another
 * handbook differs by up to 0.5 % in density and 1.7 K in freezing point for propylene glycol; for the rest the
 * uncertainties given are estimates from memory. The inhibitors of a product on the shelf shift all values as much
 * again, and its own data sheet comes first. A share of 0 is exactly {@link Water} at 2 bar absolute. Every function
 * throws IllegalArgumentException outside its valid range.
 */
public enum Glycol {
    /** Propane-1,2-diol: the one for houses, as it is not poisonous. */
    PROPYLENE(new GlycolTable(
            new double[][] {
                {1009.7, 1006.5, 999.7, 990.0, 978.4, 965.7},
                {1020.8, 1015.3, 1006.8, 995.9, 983.5, 970.1},
                {1032.5, 1024.5, 1014.0, 1001.6, 987.9, 973.7},
                {1043.2, 1033.0, 1020.6, 1006.7, 992.0, 976.9},
                {1051.6, 1039.6, 1025.8, 1010.8, 995.1, 979.5}},
            new double[][] {
                {4.055, 4.073, 4.099, 4.128, 4.159, 4.189},
                {3.928, 3.970, 4.013, 4.056, 4.097, 4.135},
                {3.791, 3.846, 3.901, 3.953, 4.004, 4.052},
                {3.626, 3.692, 3.757, 3.821, 3.884, 3.947},
                {3.435, 3.513, 3.591, 3.669, 3.746, 3.824}},
            new double[] {-3.4, -7.4, -13.2, -22.0, -34.9})),
    /** Ethane-1,2-diol: poisonous. */
    ETHYLENE(new GlycolTable(
            new double[][] {
                {1015.2, 1011.9, 1005.6, 996.4, 984.6, 970.6},
                {1031.9, 1026.6, 1018.6, 1008.2, 995.6, 981.1},
                {1048.6, 1041.3, 1031.7, 1020.2, 1006.8, 991.9},
                {1064.3, 1055.4, 1044.6, 1032.2, 1018.4, 1003.4},
                {1078.3, 1068.3, 1056.6, 1043.4, 1029.2, 1014.3}},
            new double[][] {
                {4.020, 4.032, 4.050, 4.073, 4.098, 4.123},
                {3.826, 3.866, 3.906, 3.946, 3.984, 4.019},
                {3.607, 3.673, 3.735, 3.793, 3.845, 3.892},
                {3.373, 3.465, 3.549, 3.626, 3.694, 3.753},
                {3.140, 3.255, 3.361, 3.456, 3.538, 3.604}},
            new double[] {-3.7, -8.8, -15.7, -25.1, -37.4}));

    private static final ValidRange SHARE = new ValidRange("Glycol's share by volume", "of the whole", 0, 0.5);
    private static final ValidRange CELSIUS = new ValidRange("Antifreeze temperature", "°C", 0, 100);

    private final GlycolTable table;

    Glycol(GlycolTable table) {
        this.table = table;
    }

    /**
     * Density at 2 bar absolute, kg/m³; uncertain by 1 %.
     *
     * @param volumeShare 0 to 0.5 of the whole
     * @param celsius     0 to 100 °C
     */
    public double densityKgPerCubicMetre(double volumeShare, double celsius) {
        SHARE.check(volumeShare);
        CELSIUS.check(celsius);
        return Water.usualDensityKgPerCubicMetre(celsius) * table.densityRatio(volumeShare, celsius);
    }

    /**
     * Heat capacity at 2 bar absolute, kJ/(kg K); uncertain by 4 %.
     *
     * @param volumeShare 0 to 0.5 of the whole
     * @param celsius     0 to 100 °C
     */
    public double heatCapacityKilojoulesPerKgKelvin(double volumeShare, double celsius) {
        SHARE.check(volumeShare);
        CELSIUS.check(celsius);
        return Water.heatCapacityKilojoulesPerKgKelvin(celsius, Water.USUAL_BAR_ABSOLUTE)
                * table.heatCapacityRatio(volumeShare, celsius);
    }

    /**
     * How much the antifreeze grows from cold to hot, as a fraction of its cold volume: 0.04 means 4 %; uncertain by
     * one percentage point.
     *
     * @param volumeShare 0 to 0.5 of the whole
     * @param coldCelsius 0 to 100 °C
     * @param hotCelsius  0 to 100 °C
     */
    public double expansionFraction(double volumeShare, double coldCelsius, double hotCelsius) {
        return densityKgPerCubicMetre(volumeShare, coldCelsius) / densityKgPerCubicMetre(volumeShare, hotCelsius) - 1;
    }

    /**
     * Temperature at which the first ice forms, °C; uncertain by 2 K.
     *
     * @param volumeShare 0 to 0.5 of the whole
     */
    public double freezingPointCelsius(double volumeShare) {
        return table.freezingPointCelsius(SHARE.check(volumeShare));
    }
}
