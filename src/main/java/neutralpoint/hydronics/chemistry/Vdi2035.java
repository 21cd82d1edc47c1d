package neutralpoint.hydronics.chemistry;

import java.util.OptionalDouble;
import neutralpoint.hydronics.Bounds;

/**
 * Limits for fill and circuit water after VDI 2035 Part 1. Arguments outside their range are refused with {@link IllegalArgumentException}.
 */
public final class Vdi2035 {
    /** Greatest conductivity in low-salt running, µS/cm (VDI-01). */
    public static final double LOW_SALT_MICROSIEMENS_PER_CENTIMETRE = 100;
    /** Greatest conductivity in saline running, µS/cm (VDI-02). */
    public static final double SALINE_MICROSIEMENS_PER_CENTIMETRE = 1500;

    /** Columns: to 20, to 40, over 40 L/kW. Rows: to 50, 200, 600 kW and beyond; all of heaters that hold little. In mmol/L. */
    private static final double[][] MILLIMOLES_2021 = {
        {3.0, 1.5, 0.05},
        {2.0, 1.0, 0.05},
        {1.5, 0.05, 0.05},
        {0.05, 0.05, 0.05},
    };
    private static final double[] KILOWATT_CLASSES = {50, 200, 600};
    /** Small plant whose heater holds 0.3 L/kW or more has no limit at all up to 20 L/kW, and this one to 40. */
    private static final double ROOMY_HEATER_TO_40 = 3.0;

    /** How the water is run by its conductivity. */
    public enum Running { LOW_SALT, SALINE, TOO_SALINE }

    private Vdi2035() {}

    /** @param microsiemensPerCentimetre conductivity at 25 °C, 0 to 50 000 µS/cm; the limits themselves are within */
    public static Running running(double microsiemensPerCentimetre) {
        Bounds.within("microsiemensPerCentimetre", microsiemensPerCentimetre, 0, 50_000);
        if (microsiemensPerCentimetre <= LOW_SALT_MICROSIEMENS_PER_CENTIMETRE) {
            return Running.LOW_SALT;
        }
        return microsiemensPerCentimetre <= SALINE_MICROSIEMENS_PER_CENTIMETRE ? Running.SALINE : Running.TOO_SALINE;
    }

    /**
     * Greatest alkaline earths in mmol/L by the 2021 edition (VDI21 entries; all values from memory).
     *
     * @param kilowatts            heat output of the plant, above 0 to 10 000 kW
     * @param litresPerKilowatt    water content of the system for each kilowatt, 0 to 1000 L/kW
     * @param lowContentHeater     whether the heater holds less than 0.3 L/kW or has an electric element
     * @return empty where no limit is set
     */
    public static OptionalDouble millimolesPerLitre2021(double kilowatts, double litresPerKilowatt,
            boolean lowContentHeater) {
        int row = kilowattClass(kilowatts);
        int column = litres(litresPerKilowatt) <= 20 ? 0 : litresPerKilowatt <= 40 ? 1 : 2;
        if (row == 0 && column < 2 && !lowContentHeater) {
            return column == 0 ? OptionalDouble.empty() : OptionalDouble.of(ROOMY_HEATER_TO_40);
        }
        return OptionalDouble.of(MILLIMOLES_2021[row][column]);
    }

    private static int kilowattClass(double kilowatts) {
        Bounds.above("kilowatts", kilowatts, 0, 10_000);
        int row = 0;
        while (row < KILOWATT_CLASSES.length && kilowatts > KILOWATT_CLASSES[row]) {
            row++;
        }
        return row;
    }

    private static double litres(double litresPerKilowatt) {
        return Bounds.within("litresPerKilowatt", litresPerKilowatt, 0, 1000);
    }
}
