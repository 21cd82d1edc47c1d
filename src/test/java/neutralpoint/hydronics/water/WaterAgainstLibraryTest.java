package neutralpoint.hydronics.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.function.BiConsumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Holds water against an independent open-source library of the same published formulation. */
class WaterAgainstLibraryTest {
    private static final double ICE_POINT_KELVIN = 273.15;

    @Test
    void agreesWhereverAHeatingSystemRuns() {
        everyLiquidState(WaterAgainstLibraryTest::agreesWithLibrary);
    }

    /** Far from heating, where the terms of high order that hardly stir below 140 °C come to weigh. */
    @Test
    void agreesOverTheWholeRange() {
        for (double celsius = 0.5; celsius < 350; celsius += 10) {
            double boilingBar = Water.saturationPressureBarAbsolute(celsius);
            for (double share = 0.001; share <= 1; share += 0.0999) {
                agreesWithLibrary(celsius, boilingBar + share * (1000 - boilingBar));
            }
        }
    }

    private static void agreesWithLibrary(double celsius, double bar) {
        String state = celsius + " °C, " + bar + " bar";
        double kelvin = celsius + ICE_POINT_KELVIN;
        try {
            IF97 library = new IF97(IF97.UnitSystem.DEFAULT);
            double density = library.densityPT(bar / 10, kelvin);
            double heatCapacity = library.isobaricHeatCapacityPT(bar / 10, kelvin);
            double viscosity = library.dynamicViscosityPT(bar / 10, kelvin);
            assertThat(Water.densityKgPerCubicMetre(celsius, bar)).as(state)
                    .isCloseTo(density, relative(density, 1e-12));
            assertThat(Water.heatCapacityKilojoulesPerKgKelvin(celsius, bar)).as(state)
                    .isCloseTo(heatCapacity, relative(heatCapacity, 1e-12));
            assertThat(Water.viscosityPascalSeconds(celsius, bar)).as(state)
                    .isCloseTo(viscosity, relative(viscosity, 1e-12));
        } catch (OutOfRangeException e) {
            throw new AssertionError(state, e);
        }
    }

    @Test
    void boilsWhereTheLibrarySays() throws OutOfRangeException {
        IF97 library = new IF97(IF97.UnitSystem.DEFAULT);
        for (double celsius = 1; celsius <= 370; celsius += 0.5) {
            double bar = library.saturationPressureT(celsius + ICE_POINT_KELVIN) * 10;
            assertThat(Water.saturationPressureBarAbsolute(celsius)).as(celsius + " °C")
                    .isCloseTo(bar, relative(bar, 1e-11));
            assertThat(Water.boilingPointCelsius(bar)).as(bar + " bar")
                    .isCloseTo(library.saturationTemperatureP(bar / 10) - ICE_POINT_KELVIN, within(1e-9));
        }
    }

    @Test
    void expandsAsTheLibrarySays() throws OutOfRangeException {
        IF97 library = new IF97(IF97.UnitSystem.DEFAULT);
        for (double hot = 20; hot <= 120; hot += 5) {
            double expected = library.densityPT(0.2, 283.15) / library.densityPT(0.2, hot + ICE_POINT_KELVIN) - 1;
            assertThat(Water.expansionFraction(10, hot)).as("10 to " + hot + " °C").isCloseTo(expected, within(1e-12));
        }
    }

    /** 1 to 140 °C and 1 to 6 bar absolute, where water does not boil. */
    private static void everyLiquidState(BiConsumer<Double, Double> check) {
        int states = 0;
        for (double celsius = 1; celsius <= 140; celsius++) {
            for (double bar = 1; bar <= 6; bar += 0.5) {
                if (celsius < Water.boilingPointCelsius(bar)) {
                    check.accept(celsius, bar);
                    states++;
                }
            }
        }
        assertThat(states).isGreaterThan(1000);
    }

    private static Offset<Double> relative(double expected, double share) {
        return within(Math.abs(expected) * share);
    }
}
