package neutralpoint.hydronics.water;

/** Thermodynamic temperature, as the published formulations want it. */
final class Kelvin {
    private static final double ICE_POINT = 273.15;

    private Kelvin() {}

    static double ofCelsius(double celsius) {
        return celsius + ICE_POINT;
    }

    static double toCelsius(double kelvin) {
        return kelvin - ICE_POINT;
    }
}
