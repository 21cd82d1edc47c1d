package neutralpoint.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * The units an engineer writes readings in, and how one becomes another. The factors are by definition: the foot, the inch
 * and the pound of the international yard and pound agreement of 1959, the UK gallon of the Units of Measurement
 * Regulations 1995, the Btu of the International Table, standard gravity (9.80665 m/s²) on water of 1000 kg/m³. From memory.
 */
public final class Units {
    /** What a unit measures. Units of one kind convert; a metre of pipe and a metre of head do not. */
    public enum Dimension {
        TEMPERATURE_DIFFERENCE("a difference of temperature"), TEMPERATURE("a temperature"), PRESSURE("a pressure"),
        LENGTH("a length"), VOLUME("a volume"), FLOW("a flow"), POWER("a power"), CONDUCTIVITY("a conductivity"),
        CONCENTRATION("a concentration"), SHARE("a share");

        private final String words;

        Dimension(String words) {
            this.words = words;
        }

        /** The kind in words that follow "measures". */
        public String words() {
            return words;
        }
    }

    /**
     * A unit as it is shown, and the other ways to write it once blanks, capitals and signs are taken off.
     *
     * @param factor how many of the unit of its kind that has the factor 1 it is worth
     * @param zero   what it reads where that unit reads nought
     */
    private record Written(Dimension kind, double factor, double zero, String shown, List<String> names) {
        boolean named(String plain) {
            return plain(shown).equals(plain) || names.contains(plain);
        }

        double in(Written other, double value) {
            return (value - zero) * factor / other.factor + other.zero;
        }
    }

    private static final double FAHRENHEIT_DEGREE = 5.0 / 9;
    private static final double FREEZING_FAHRENHEIT = 32;
    private static final double METRE_HEAD_PASCAL = 9806.65;
    private static final double FOOT_METRES = 0.3048;
    private static final double GALLON_LITRES = 4.54609;

    // spotless:off
    /** In this order the first that fits a unit asked for decides its kind: "degrees" asked for are a difference. */
    private static final List<Written> KNOWN = List.of(
            unit(Dimension.TEMPERATURE_DIFFERENCE, 1, "K", "kelvin", "kelvins", "degrees", "degree", "deg"),
            unit(Dimension.TEMPERATURE, 1, "°C", "celsius", "centigrade", "degc", "degreesc", "degreescelsius",
                    "degrees", "degree", "deg"),
            new Written(Dimension.TEMPERATURE, FAHRENHEIT_DEGREE, FREEZING_FAHRENHEIT, "°F",
                    List.of("fahrenheit", "degf", "degreesf", "degreesfahrenheit")),
            unit(Dimension.TEMPERATURE_DIFFERENCE, 1, "°C", "celsius", "centigrade", "degc", "degreesc",
                    "degreescelsius"),
            unit(Dimension.TEMPERATURE_DIFFERENCE, FAHRENHEIT_DEGREE, "°F", "fahrenheit", "degf", "degreesf",
                    "degreesfahrenheit"),
            unit(Dimension.PRESSURE, 100_000, "bar", "bars", "barg"),
            unit(Dimension.PRESSURE, 100, "mbar", "millibar", "millibars"),
            unit(Dimension.PRESSURE, 6894.757293168, "psi", "psig", "lb/in2", "lbf/in2"),
            unit(Dimension.PRESSURE, 1000, "kPa", "kilopascal", "kilopascals"),
            unit(Dimension.PRESSURE, 1, "Pa", "pascal", "pascals"),
            unit(Dimension.PRESSURE, METRE_HEAD_PASCAL, "m head", "mofhead", "mofwater", "mwater", "mh2o", "metreshead",
                    "metresofhead", "metresofwater"),
            unit(Dimension.PRESSURE, METRE_HEAD_PASCAL * FOOT_METRES, "ft head", "ftofhead", "ftofwater", "fthead", "fth2o",
                    "feethead", "feetofhead", "feetofwater"),
            unit(Dimension.LENGTH, 1000, "m", "metre", "metres", "meter", "meters"),
            unit(Dimension.LENGTH, 10, "cm", "centimetre", "centimetres"),
            unit(Dimension.LENGTH, 1, "mm", "millimetre", "millimetres"),
            unit(Dimension.LENGTH, 304.8, "ft", "foot", "feet"),
            unit(Dimension.LENGTH, 25.4, "in", "inch", "inches"),
            unit(Dimension.VOLUME, 1, "l", "litre", "litres", "liter", "liters"),
            unit(Dimension.VOLUME, 1000, "m3", "cubicmetre", "cubicmetres"),
            unit(Dimension.VOLUME, GALLON_LITRES, "gal", "gallon", "gallons"),
            unit(Dimension.FLOW, 60, "l/min", "litres/minute", "litre/minute", "litres/min", "lpm"),
            unit(Dimension.FLOW, 3600, "l/s", "litres/second", "litre/second", "l/sec"),
            unit(Dimension.FLOW, 1, "l/h", "l/hr", "litres/hour", "litre/hour"),
            unit(Dimension.FLOW, 1000, "m3/h", "m3/hr", "cubicmetres/hour"),
            unit(Dimension.FLOW, 60 * GALLON_LITRES, "gal/min", "gallons/minute", "gallons/min", "gpm"),
            unit(Dimension.POWER, 1000, "kW", "kilowatt", "kilowatts"),
            unit(Dimension.POWER, 1, "W", "watt", "watts"),
            unit(Dimension.POWER, 0.29307107017222, "Btu/h", "btu/hr", "btuh", "btu/hour"),
            unit(Dimension.CONDUCTIVITY, 1, "µS/cm", "microsiemens/cm"),
            unit(Dimension.CONDUCTIVITY, 1000, "mS/cm", "millisiemens/cm"),
            // A litre of heating water weighs near enough a kilogram, so a part in a million is a milligram in a litre.
            unit(Dimension.CONCENTRATION, 1, "mg/l", "mg/litre", "milligrams/litre", "ppm"),
            unit(Dimension.CONCENTRATION, 1000, "g/l", "g/litre", "grams/litre"),
            unit(Dimension.SHARE, 1, "%", "percent", "pc"));
    // spotless:on

    private Units() {}

    /**
     * A value in another unit of the same kind. Where a difference of temperature is wanted ("degrees", "K" or
     * "kelvin"), degrees Celsius and Fahrenheit are taken as differences, so that 18 °F are 10 and not minus 8.
     *
     * @param value any finite number, otherwise {@link IllegalArgumentException}
     * @return empty if either unit is unknown or they measure different things
     */
    public static OptionalDouble convert(double value, String writtenUnit, String wantedUnit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("The value is " + value + "; it must be a finite number.");
        }
        Optional<Written> wanted = first(w -> w.named(plain(wantedUnit)));
        Optional<Written> from = wanted.flatMap(to -> first(w -> w.kind() == to.kind() && w.named(plain(writtenUnit))));
        return from.isPresent() ? OptionalDouble.of(from.get().in(wanted.get(), value)) : OptionalDouble.empty();
    }

    /** What the unit measures; empty if it is unknown. */
    public static Optional<Dimension> kind(String unit) {
        return first(w -> w.named(plain(unit))).map(Written::kind);
    }

    /** Every unit that a reading in this unit may be given in, as shown, this one's own kind only. */
    public static List<String> alike(String unit) {
        return kind(unit).stream().flatMap(k -> KNOWN.stream().filter(w -> w.kind() == k)).map(Written::shown).toList();
    }

    /** A unit without capitals, blanks and degree signs, so that "55 °C" and "55 C" are one. */
    static String plain(String unit) {
        return unit.strip().toLowerCase(Locale.ROOT)
                .replaceAll("[\\s-]per[\\s-](?!cent)", "/")
                .replace('µ', 'u').replace('μ', 'u').replace('²', '2').replace('³', '3').replace('₂', '2')
                .replaceAll("[°º\\s-]|\\.$", "");
    }

    private static Written unit(Dimension kind, double factor, String shown, String... names) {
        return new Written(kind, factor, 0, shown, List.of(names));
    }

    private static Optional<Written> first(Predicate<Written> wanted) {
        return KNOWN.stream().filter(wanted).findFirst();
    }
}
