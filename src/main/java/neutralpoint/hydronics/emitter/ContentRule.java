package neutralpoint.hydronics.emitter;

import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Estimate;

/**
 * What a rule of thumb says of a whole system's water. The rules differ among themselves by nearly two to one, so they
 * serve to catch a slip in counting, not to replace the count.
 *
 * @param inWords the rule with its figures put in
 */
public record ContentRule(String inWords, Estimate litres) {
    /** Whole-system litres to a panel. Source: public worked example (VOL-01). */
    public static final double LITRES_PER_PANEL = 7;
    /** Whole-system litres to a radiator, the boiler apart. Source: a fitter's public answer (VOL-02). */
    public static final double LITRES_PER_RADIATOR = 10;
    /** What a modern boiler adds to those (VOL-02). */
    public static final double LITRES_PER_BOILER = 10;
    /** Litres to a kilowatt of small and microbore domestic systems (published trade guide). */
    public static final double LEAST_LITRES_PER_KILOWATT = 6;
    /** Litres to a kilowatt of steel panel radiators on larger pipe (published trade guide). */
    public static final double MOST_LITRES_PER_KILOWATT = 11;
    /** How far out a count of panels or radiators may be; a judgement, no source. */
    public static final double SHARE_OF_DOUBT = 0.25;

    /**
     * By the heat the radiators give. A combination boiler's plate rating is for hot water and would mislead.
     *
     * @param heatingKilowatts 1 to 100
     */
    public static ContentRule byKilowatts(double heatingKilowatts) {
        Bounds.within("The heating output in kilowatts", heatingKilowatts, 1, 100);
        double least = LEAST_LITRES_PER_KILOWATT * heatingKilowatts;
        double most = MOST_LITRES_PER_KILOWATT * heatingKilowatts;
        return new ContentRule("6 to 11 litres for each of " + heatingKilowatts + " kW",
                new Estimate(least, (least + most) / 2, most));
    }

    /**
     * By radiators of any kind, with a modern boiler.
     *
     * @param radiators 1 to 200
     */
    public static ContentRule byRadiators(int radiators) {
        Bounds.within("The number of radiators", radiators, 1, 200);
        return new ContentRule("10 litres for each of " + radiators + " radiators and 10 for the boiler",
                Estimate.about(LITRES_PER_RADIATOR * radiators + LITRES_PER_BOILER, SHARE_OF_DOUBT));
    }
}
