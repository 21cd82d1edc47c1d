package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;
import org.hipparchus.analysis.interpolation.LinearInterpolator;

/**
 * Fittings by the length of straight tube that loses as much. Source: copper trade association, publication 150,
 * table 1, for tube of 6, 8, 10, 12, 15, 22 and 28 mm.
 */
public enum Fitting {
    STRAIGHT_VALVE(0.07, 0.11, 0.15, 0.2, 0.3, 0.4, 0.6),
    ANGLE_VALVE(0.9, 1.0, 1.5, 1.8, 2.0, 4.3, 6.0),
    MINIMUM_RADIUS_BEND(0.08, 0.12, 0.16, 0.2, 0.26, 0.41, 0.58),
    CAPILLARY_ELBOW(0.1, 0.16, 0.21, 0.28, 0.37, 0.6, 0.83),
    COMPRESSION_ELBOW(0.16, 0.24, 0.33, 0.42, 0.6, 1.0, 1.3);

    private static final double[] TUBE_MILLIMETRES = {6, 8, 10, 12, 15, 22, 28};

    private final double[] equivalentLengthsMetres;

    Fitting(double... equivalentLengthsMetres) {
        this.equivalentLengthsMetres = equivalentLengthsMetres;
    }

    /**
     * The length of straight tube that loses as much as the fitting; between two tabled sizes on the straight line.
     *
     * @param tubeMillimetres outside diameter of the tube, 6 to 28 mm
     * @return m
     * @throws IllegalArgumentException if the size is out of range
     */
    public double equivalentLengthMetres(double tubeMillimetres) {
        Bounds.within("tubeMillimetres", tubeMillimetres, 6, 28);
        return new LinearInterpolator().interpolate(TUBE_MILLIMETRES, equivalentLengthsMetres).value(tubeMillimetres);
    }
}
