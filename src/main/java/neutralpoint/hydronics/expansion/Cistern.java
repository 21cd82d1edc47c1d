package neutralpoint.hydronics.expansion;

/**
 * The feed-and-expansion cistern: whether there is room above its cold water line for what the heated water gains.
 * Every sum refuses an argument outside its range with an IllegalArgumentException.
 */
public final class Cistern {
    /** The share of the system's content for which room is usually left (a Level 3 plumbing textbook). */
    public static final double USUAL_ALLOWANCE = 0.04;

    private Cistern() {}

    /** The room usually left for expansion: 4 % of the content, which is 1 to 5000 litres. */
    public static double usualAllowanceLitres(double systemLitres) {
        return ThermalExpansion.litres(systemLitres, USUAL_ALLOWANCE);
    }
}
