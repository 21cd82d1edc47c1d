package neutralpoint.hydronics.emitter;

import java.util.Locale;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Estimate;

/**
 * Kinds of radiator, panels by their EN 442 number: the first figure counts panels, the second the rows of fins.
 *
 * <p>Water and output per metre of length are straight lines over height: a part for the headers, and a part that grows
 * with the height. Panel water is fitted to published records of types 11, 21 and 22 at 300 to 600 mm (5.2 to 6.1
 * litres per square metre of panel face), so other heights are an extension. Each line says where it is from and how
 * far out it may be.
 */
public enum RadiatorType {
    /** One panel, no fins. Output from memory. */
    TYPE_10(panels(1), line(50, 967, 0.25), 1.27),
    /** One panel, one row of fins. Output published at 300 and 600 mm. */
    TYPE_11(panels(1), line(123, 1427, 0.15), 1.27),
    /** Two panels, no fins. Output from memory. */
    TYPE_20(panels(2), line(140, 1430, 0.25), 1.28),
    /** Two panels, one row of fins. Output published at 300 mm, above that from memory. */
    TYPE_21(panels(2), line(160, 1870, 0.15), 1.28),
    /** Two panels, two rows of fins. Output published at 300 mm, above that from memory. */
    TYPE_22(panels(2), line(32, 2763, 0.15), 1.30),
    /** Three panels, three rows of fins. Output from memory. */
    TYPE_33(panels(3), line(110, 3730, 0.20), 1.32),
    /** Two columns deep, cast iron or steel. From memory; the two metals differ widely. */
    COLUMN_2(line(1.4, 21, 0.40), line(100, 1560, 0.30), 1.29),
    /** Three columns deep, cast iron or steel. From memory; the two metals differ widely. */
    COLUMN_3(line(2.0, 30, 0.40), line(130, 2080, 0.30), 1.30),
    /** Four columns deep, cast iron or steel. From memory; the two metals differ widely. */
    COLUMN_4(line(2.6, 40, 0.40), line(160, 2570, 0.30), 1.31),
    /** Seam-topped steel pressing with wide waterways. From memory: some four tenths more water than a modern panel. */
    OLD_SINGLE_PANEL(line(0.56, 6.65, 0.35), line(60, 1000, 0.25), 1.28),
    /** Two such pressings close together. From memory. */
    OLD_DOUBLE_PANEL(line(1.12, 13.3, 0.35), line(140, 1550, 0.25), 1.29),
    /** Ladder of tubes; its length is its width on the wall. From memory. */
    TOWEL_RAIL(line(0, 8.5, 0.40), line(0, 920, 0.30), 1.24);

    private final StraightLine litresPerMetre;
    private final StraightLine wattsPerMetre;
    private final double exponent;

    RadiatorType(StraightLine litresPerMetre, StraightLine wattsPerMetre, double exponent) {
        this.litresPerMetre = litresPerMetre;
        this.wattsPerMetre = wattsPerMetre;
        this.exponent = exponent;
    }

    /** The type by its word, such as "type-22" or "old-single-panel"; refuses a word that is none. */
    public static RadiatorType called(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How steeply output follows the difference to the room (EN 442); published records run from 1.22 to 1.33. */
    public double exponent() {
        return exponent;
    }

    /**
     * Water in a metre of length.
     *
     * @param heightMillimetres 100 to 2500
     */
    public Estimate litresPerMetre(double heightMillimetres) {
        return litresPerMetre.at(heightMillimetres);
    }

    /**
     * Output of a metre of length with the mean of flow and return 50 K over the room.
     *
     * @param heightMillimetres 100 to 2500
     */
    public Estimate wattsPerMetreAt50Kelvin(double heightMillimetres) {
        return wattsPerMetre.at(heightMillimetres);
    }

    private static StraightLine panels(int count) {
        return line(0.40 * count, 4.75 * count, 0.15);
    }

    private static StraightLine line(double atNoHeight, double perMetreOfHeight, double share) {
        return new StraightLine(atNoHeight, perMetreOfHeight, share);
    }

    private record StraightLine(double atNoHeight, double perMetreOfHeight, double share) {
        Estimate at(double heightMillimetres) {
            Bounds.within("The radiator's height in millimetres", heightMillimetres, 100, 2500);
            return Estimate.about(atNoHeight + perMetreOfHeight * heightMillimetres / 1000, share);
        }
    }
}
