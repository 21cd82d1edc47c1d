package neutralpoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Units as they are written on gauges, meters and old drawings, and what they come to. */
class UnitsTest {

    /** By the definitions of the foot, the inch, the UK gallon, the pound force and the International Table Btu. */
    @TestFactory
    Stream<DynamicTest> oneUnitInAnother() {
        record Pair(double value, String written, double comesTo, String wanted) {}
        return Stream.of(
                new Pair(212, "°F", 100, "°C"), new Pair(32, "F", 0, "C"), new Pair(-40, "degF", -40, "celsius"),
                new Pair(150, "°F", 65.5556, "degC"), new Pair(100, "°C", 212, "°F"), new Pair(60, "degrees", 60, "°C"),
                new Pair(18, "°F", 10, "degrees"), new Pair(18, "F", 10, "kelvin"), new Pair(11, "°C", 11, "degrees"),
                new Pair(11, "K", 11, "degrees"), new Pair(-9, "°F", -5, "K"),
                new Pair(14.5037738, "psi", 1, "bar"), new Pair(300, "mbar", 0.3, "bar"),
                new Pair(150, "kPa", 1.5, "bar"), new Pair(20_000, "Pa", 0.2, "bar"), new Pair(10.19716, "m head", 1, "bar"),
                new Pair(10.19716, "mH2O", 1, "bar"), new Pair(5, "m of water", 49.03325, "kPa"),
                new Pair(33.4552, "ft head", 1, "bar"), new Pair(1, "bar", 14.5037738, "psi"),
                new Pair(9, "ft", 2.7432, "m"), new Pair(9, "feet", 2743.2, "mm"), new Pair(18, "in", 457.2, "mm"),
                new Pair(18, "in.", 45.72, "cm"), new Pair(70, "cm", 700, "mm"), new Pair(2, "metres", 2, "m"),
                new Pair(25, "gal", 113.65225, "litres"), new Pair(1, "m3", 1000, "l"), new Pair(20, "L", 20, "litres"),
                new Pair(900, "l/h", 15, "l/min"), new Pair(1.2, "m³/h", 20, "litres-per-minute"),
                new Pair(3, "gal/min", 13.63827, "litres per minute"), new Pair(0.25, "l/s", 15, "l/min"),
                new Pair(60_000, "Btu/h", 17.58426, "kW"), new Pair(1500, "W", 1.5, "kW"),
                new Pair(1.2, "mS/cm", 1200, "µS/cm"), new Pair(1200, "uS/cm", 1.2, "mS/cm"),
                new Pair(250, "ppm", 250, "mg per litre"), new Pair(250, "mg/l", 250, "mg per litre"),
                new Pair(0.3, "g/l", 300, "mg per litre"), new Pair(85, "%", 85, "percent"),
                new Pair(85, "per cent", 85, "percent"))
                .map(p -> DynamicTest.dynamicTest(p.value() + " " + p.written() + " in " + p.wanted(),
                        () -> assertThat(Units.convert(p.value(), p.written(), p.wanted()).orElseThrow())
                                .isCloseTo(p.comesTo(), within(1e-5 * Math.max(1, Math.abs(p.comesTo()))))));
    }

    @Test
    void unitsOfAnotherKindDoNotConvert() {
        assertThat(Units.convert(3, "m", "bar")).as("a height is not a pressure until someone says head").isEmpty();
        assertThat(Units.convert(3, "kelvin", "celsius")).as("a difference is not a temperature").isEmpty();
        assertThat(Units.convert(3, "litres", "l/min")).isEmpty();
        assertThat(Units.convert(3, "uS/cm", "mg/l")).as("that wants a factor").isEmpty();
        assertThat(Units.convert(12, "furlongs", "m")).isEmpty();
        assertThat(Units.convert(12, "m", "furlongs")).isEmpty();
        assertThat(Units.convert(12, "years", "years")).as("nothing to convert").isEmpty();
        assertThat(Units.kind("psi")).contains(Units.Dimension.PRESSURE);
        assertThat(Units.kind("furlongs")).isEmpty();
    }

    @Test
    void onlyANumberCanBeConverted() {
        assertThatIllegalArgumentException().isThrownBy(() -> Units.convert(Double.NaN, "m", "mm"))
                .withMessage("The value is NaN; it must be a finite number.");
        assertThatIllegalArgumentException().isThrownBy(() -> Units.convert(Double.POSITIVE_INFINITY, "m", "mm"));
    }

    @Test
    void thereAndBackIsTheSame() {
        long seed = 385;
        Random random = new Random(seed);
        for (String unit : List.of("°C", "bar", "m", "litres", "l/min", "kW", "µS/cm", "mg/l", "%")) {
            for (String other : Units.alike(unit)) {
                double value = random.nextDouble() * 100;
                double there = Units.convert(value, unit, other).orElseThrow();
                assertThat(Units.convert(there, other, unit).orElseThrow())
                        .as("seed %d, %f %s by way of %s", seed, value, unit, other).isCloseTo(value, within(1e-9));
            }
        }
    }

    @Test
    void everyUnitOfTheCatalogueIsKnownOrStandsAlone() {
        assertThat(Shared.CATALOGUE.findings().values().stream().filter(f -> f.type() == AnswerType.NUMBER)
                .map(Finding::unit).filter(unit -> Units.kind(unit).isEmpty()).distinct())
                .containsExactlyInAnyOrder("pH", "years");
    }
}
