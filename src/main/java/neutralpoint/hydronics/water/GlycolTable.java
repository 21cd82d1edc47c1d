package neutralpoint.hydronics.water;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.interpolation.BilinearInterpolatingFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * One glycol's tables, a row for each tenth of share from 0.1 to 0.5 and a column for each 20 °C from 0 to 100. What is
 * interpolated is the ratio to water, which changes far less than the property itself, so no share is as good as water.
 */
final class GlycolTable {
    private static final double[] SHARES = {0, 0.1, 0.2, 0.3, 0.4, 0.5};
    private static final double[] CELSIUS = {0, 20, 40, 60, 80, 100};

    private final BilinearInterpolatingFunction densityRatio;
    private final BilinearInterpolatingFunction heatCapacityRatio;
    private final PolynomialSplineFunction freezingPointCelsius;

    GlycolTable(double[][] densityKgPerCubicMetre, double[][] heatCapacityKilojoulesPerKgKelvin,
            double[] freezingPointCelsius) {
        this.densityRatio = ratioToWater(densityKgPerCubicMetre, Water::usualDensityKgPerCubicMetre);
        this.heatCapacityRatio = ratioToWater(heatCapacityKilojoulesPerKgKelvin,
                t -> Water.heatCapacityKilojoulesPerKgKelvin(t, Water.USUAL_BAR_ABSOLUTE));
        double[] withWater = new double[SHARES.length];
        System.arraycopy(freezingPointCelsius, 0, withWater, 1, freezingPointCelsius.length);
        this.freezingPointCelsius = new AkimaSplineInterpolator().interpolate(SHARES, withWater);
    }

    double densityRatio(double volumeShare, double celsius) {
        return densityRatio.value(volumeShare, celsius);
    }

    double heatCapacityRatio(double volumeShare, double celsius) {
        return heatCapacityRatio.value(volumeShare, celsius);
    }

    double freezingPointCelsius(double volumeShare) {
        return freezingPointCelsius.value(volumeShare);
    }

    private static BilinearInterpolatingFunction ratioToWater(double[][] mixture, DoubleUnaryOperator water) {
        double[][] ratios = new double[SHARES.length][CELSIUS.length];
        Arrays.fill(ratios[0], 1);
        for (int share = 1; share < SHARES.length; share++) {
            for (int t = 0; t < CELSIUS.length; t++) {
                ratios[share][t] = mixture[share - 1][t] / water.applyAsDouble(CELSIUS[t]);
            }
        }
        return new BilinearInterpolatingFunction(SHARES, CELSIUS, ratios);
    }
}
