package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/**
 * The feed-and-expansion cistern: whether there is room above its cold water line for what the heated water gains.
 * Every sum refuses an argument outside its range with an IllegalArgumentException.
 */
public final class Cistern {
    /** The share of the system's content for which room is usually left (a Level 3 plumbing textbook). */
    public static final double USUAL_ALLOWANCE = 0.04;

    private static final double CUBIC_MILLIMETRES_PER_LITRE = 1e6;

    private Cistern() {}

    /** The room usually left for expansion: 4 % of the content, which is 1 to 5000 litres. */
    public static double usualAllowanceLitres(double systemLitres) {
        return ThermalExpansion.litres(systemLitres, USUAL_ALLOWANCE);
    }

    /**
     * What the cistern still takes before water reaches the overflow.
     *
     * @param lengthMillimetres             inside, 1 to 5000
     * @param widthMillimetres              inside, 1 to 5000
     * @param levelBelowOverflowMillimetres cold water line below the overflow's lip, 0 to 2000
     */
    public static double roomLitres(double lengthMillimetres, double widthMillimetres,
            double levelBelowOverflowMillimetres) {
        return planSquareMillimetres(lengthMillimetres, widthMillimetres)
                * Bounds.within("levelBelowOverflowMillimetres", levelBelowOverflowMillimetres, 0, 2000)
                / CUBIC_MILLIMETRES_PER_LITRE;
    }

    /**
     * Room left when hot; negative is what spills.
     *
     * @param roomLitres      room above the cold water line, 0 to 50 000
     * @param expansionLitres gain on heating, 0 to 500
     */
    public static double marginLitres(double roomLitres, double expansionLitres) {
        return Bounds.within("roomLitres", roomLitres, 0, 50_000)
                - Bounds.within("expansionLitres", expansionLitres, 0, 500);
    }

    /**
     * How far the water line moves for a volume of water.
     *
     * @param lengthMillimetres inside, 1 to 5000
     * @param widthMillimetres  inside, 1 to 5000
     * @param litres            gained, -500 to 500; negative when drawn off
     */
    public static double riseMillimetres(double lengthMillimetres, double widthMillimetres, double litres) {
        return Bounds.within("litres", litres, -500, 500) * CUBIC_MILLIMETRES_PER_LITRE
                / planSquareMillimetres(lengthMillimetres, widthMillimetres);
    }

    private static double planSquareMillimetres(double lengthMillimetres, double widthMillimetres) {
        return Bounds.within("lengthMillimetres", lengthMillimetres, 1, 5000)
                * Bounds.within("widthMillimetres", widthMillimetres, 1, 5000);
    }
}
