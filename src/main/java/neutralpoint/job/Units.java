package neutralpoint.job;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SIEMENS;
import static tech.units.indriya.unit.Units.WATT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/**
 * The units an engineer writes readings in, and how one becomes another. Kept out of the way until a reading comes in
 * another unit than its question shows.
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

    /** A unit as it is shown, and the other ways to write it once blanks, capitals and signs are taken off. */
    private record Written(Dimension kind, Unit<?> unit, String shown, List<String> names) {
        boolean named(String plain) {
            return plain(shown).equals(plain) || names.contains(plain);
        }
    }

    private static final Unit<Length> FOOT = METRE.multiply(0.3048);
    private static final Unit<Volume> GALLON = LITRE.multiply(4.54609);
    /** A Fahrenheit degree as a difference; as a temperature it starts 459.67 of them below zero. */
    private static final Unit<?> FAHRENHEIT_DEGREE = KELVIN.multiply(5).divide(9);
    /** A metre head of water under standard gravity at 1000 kg/m3. */
    private static final Unit<?> METRE_HEAD = PASCAL.multiply(9806.65);

    /** In this order the first that fits a unit asked for decides its kind: "degrees" asked for are a difference. */
    private static final List<Written> KNOWN = List.of(
            unit(Dimension.TEMPERATURE_DIFFERENCE, KELVIN, "K", "kelvin", "kelvins", "degrees", "degree", "deg"),
            unit(Dimension.TEMPERATURE, CELSIUS, "°C", "celsius", "centigrade", "degc", "degreesc", "degreescelsius",
                    "degrees", "degree", "deg"),
            unit(Dimension.TEMPERATURE, KELVIN.multiply(5).divide(9).shift(459.67), "°F", "fahrenheit", "degf", "degreesf",
                    "degreesfahrenheit"),
            unit(Dimension.TEMPERATURE_DIFFERENCE, KELVIN, "°C", "celsius", "centigrade", "degc", "degreesc",
                    "degreescelsius"),
            unit(Dimension.TEMPERATURE_DIFFERENCE, FAHRENHEIT_DEGREE, "°F", "fahrenheit", "degf", "degreesf",
                    "degreesfahrenheit"),
            unit(Dimension.PRESSURE, KILO(PASCAL).multiply(100), "bar", "bars", "barg"),
            unit(Dimension.PRESSURE, HECTO(PASCAL), "mbar", "millibar", "millibars"),
            unit(Dimension.PRESSURE, PASCAL.multiply(6894.757293168), "psi", "psig", "lb/in2", "lbf/in2"),
            unit(Dimension.PRESSURE, KILO(PASCAL), "kPa", "kilopascal", "kilopascals"),
            unit(Dimension.PRESSURE, PASCAL, "Pa", "pascal", "pascals"),
            unit(Dimension.PRESSURE, METRE_HEAD, "m head", "mofhead", "mofwater", "mwater", "mh2o", "metreshead",
                    "metresofhead", "metresofwater"),
            unit(Dimension.PRESSURE, METRE_HEAD.multiply(0.3048), "ft head", "ftofhead", "ftofwater", "fthead", "fth2o",
                    "feethead", "feetofhead", "feetofwater"),
            unit(Dimension.LENGTH, METRE, "m", "metre", "metres", "meter", "meters"),
            unit(Dimension.LENGTH, CENTI(METRE), "cm", "centimetre", "centimetres"),
            unit(Dimension.LENGTH, MILLI(METRE), "mm", "millimetre", "millimetres"),
            unit(Dimension.LENGTH, FOOT, "ft", "foot", "feet"),
            unit(Dimension.LENGTH, FOOT.divide(12), "in", "inch", "inches"),
            unit(Dimension.VOLUME, LITRE, "l", "litre", "litres", "liter", "liters"),
            unit(Dimension.VOLUME, CUBIC_METRE, "m3", "cubicmetre", "cubicmetres"),
            unit(Dimension.VOLUME, GALLON, "gal", "gallon", "gallons"),
            unit(Dimension.FLOW, LITRE.divide(MINUTE), "l/min", "litres/minute", "litre/minute", "litres/min", "lpm"),
            unit(Dimension.FLOW, LITRE.divide(SECOND), "l/s", "litres/second", "litre/second", "l/sec"),
            unit(Dimension.FLOW, LITRE.divide(HOUR), "l/h", "l/hr", "litres/hour", "litre/hour"),
            unit(Dimension.FLOW, CUBIC_METRE.divide(HOUR), "m3/h", "m3/hr", "cubicmetres/hour"),
            unit(Dimension.FLOW, GALLON.divide(MINUTE), "gal/min", "gallons/minute", "gallons/min", "gpm"),
            unit(Dimension.POWER, KILO(WATT), "kW", "kilowatt", "kilowatts"),
            unit(Dimension.POWER, WATT, "W", "watt", "watts"),
            unit(Dimension.POWER, WATT.multiply(0.29307107017222), "Btu/h", "btu/hr", "btuh", "btu/hour"),
            unit(Dimension.CONDUCTIVITY, MICRO(SIEMENS).divide(CENTI(METRE)), "µS/cm", "microsiemens/cm"),
            unit(Dimension.CONDUCTIVITY, MILLI(SIEMENS).divide(CENTI(METRE)), "mS/cm", "millisiemens/cm"),
            // A litre of heating water weighs near enough a kilogram, so a part in a million is a milligram in a litre.
            unit(Dimension.CONCENTRATION, MILLI(GRAM).divide(LITRE), "mg/l", "mg/litre", "milligrams/litre", "ppm"),
            unit(Dimension.CONCENTRATION, GRAM.divide(LITRE), "g/l", "g/litre", "grams/litre"),
            unit(Dimension.SHARE, PERCENT, "%", "percent", "pc"));

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
        return from.isPresent()
                ? OptionalDouble.of(convert(value, from.get().unit(), wanted.get().unit()))
                : OptionalDouble.empty();
    }

    private static double convert(double value, Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to).convert(value);
        } catch (IncommensurableException e) {
            throw new IllegalStateException("Units of one kind in the table do not convert.", e);
        }
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

    private static Written unit(Dimension kind, Unit<?> unit, String shown, String... names) {
        return new Written(kind, unit, shown, List.of(names));
    }

    private static Optional<Written> first(Predicate<Written> wanted) {
        return KNOWN.stream().filter(wanted).findFirst();
    }
}
