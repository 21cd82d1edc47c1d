package neutralpoint.hydronics.emitter;

import neutralpoint.hydronics.Bounds;

/**
 * The temperatures of a radiator's two tails, once they have settled with the heating on. Which of them is the flow
 * does not matter: it is the hotter one.
 *
 * @param hotterCelsius −10 to 120 °C
 * @param coolerCelsius −10 °C to the hotter one
 */
public record TailReading(double hotterCelsius, double coolerCelsius) {
    public TailReading {
        Bounds.within("hotterCelsius", hotterCelsius, -10, 120);
        Bounds.within("coolerCelsius", coolerCelsius, -10, hotterCelsius);
    }

    /** Drop across the radiator, K. */
    public double dropKelvin() {
        return hotterCelsius - coolerCelsius;
    }
}
