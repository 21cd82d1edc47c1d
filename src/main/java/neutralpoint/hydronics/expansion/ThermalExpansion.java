package neutralpoint.hydronics.expansion;

import neutralpoint.hydronics.Bounds;

/** What a system's water gains on heating, wherever it then goes. */
public final class ThermalExpansion {
    private ThermalExpansion() {}

    /**
     * Litres gained; refuses an argument outside its range with an IllegalArgumentException.
     *
     * @param systemLitres      content of the system when cold, 1 to 5000
     * @param expansionFraction gain as a fraction of the cold content, 0 to 0.1; 0.0287 is 2.87 %
     */
    public static double litres(double systemLitres, double expansionFraction) {
        return Bounds.within("systemLitres", systemLitres, 1, 5000)
                * Bounds.within("expansionFraction", expansionFraction, 0, 0.1);
    }
}
