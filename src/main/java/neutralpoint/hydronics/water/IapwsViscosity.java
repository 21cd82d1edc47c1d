package neutralpoint.hydronics.water;

import java.util.List;

/**
 * Viscosity of water and steam after IAPWS R12-08 (equations 10 to 12, tables 1 and 2), the critical enhancement left
 * out: it is felt only within a few kelvin of the critical point, and the release itself leaves it out for industry.
 */
final class IapwsViscosity {
    private static final double REDUCING_KELVIN = 647.096;
    private static final double REDUCING_KG_PER_CUBIC_METRE = 322;

    private record SeriesTerm(int i, int j, double h) {}

    /** Table 2. */
    private static final List<SeriesTerm> TERMS = List.of(
            new SeriesTerm(0, 0, 5.20094e-1),
            new SeriesTerm(1, 0, 8.50895e-2),
            new SeriesTerm(2, 0, -1.08374),
            new SeriesTerm(3, 0, -2.89555e-1),
            new SeriesTerm(0, 1, 2.22531e-1),
            new SeriesTerm(1, 1, 9.99115e-1),
            new SeriesTerm(2, 1, 1.88797),
            new SeriesTerm(3, 1, 1.26613),
            new SeriesTerm(5, 1, 1.20573e-1),
            new SeriesTerm(0, 2, -2.81378e-1),
            new SeriesTerm(1, 2, -9.06851e-1),
            new SeriesTerm(2, 2, -7.72479e-1),
            new SeriesTerm(3, 2, -4.89837e-1),
            new SeriesTerm(4, 2, -2.57040e-1),
            new SeriesTerm(0, 3, 1.61913e-1),
            new SeriesTerm(1, 3, 2.57399e-1),
            new SeriesTerm(0, 4, -3.25372e-2),
            new SeriesTerm(3, 4, 6.98452e-2),
            new SeriesTerm(4, 5, 8.72102e-3),
            new SeriesTerm(3, 6, -4.35673e-3),
            new SeriesTerm(5, 6, -5.93264e-4));

    private IapwsViscosity() {}

    static double micropascalSeconds(double kelvin, double densityKgPerCubicMetre) {
        double warmth = kelvin / REDUCING_KELVIN;
        return diluteGas(warmth) * finiteDensity(warmth, densityKgPerCubicMetre / REDUCING_KG_PER_CUBIC_METRE);
    }

    /** Equation 11 with table 1. */
    private static double diluteGas(double warmth) {
        double inverse = 1 / warmth;
        double sum = 1.67752 + inverse * (2.20462 + inverse * (0.6366564 - inverse * 0.241605));
        return 100 * Math.sqrt(warmth) / sum;
    }

    private static double finiteDensity(double warmth, double density) {
        double sum = 0;
        for (SeriesTerm t : TERMS) {
            sum += t.h * Math.pow(1 / warmth - 1, t.i) * Math.pow(density - 1, t.j);
        }
        return Math.exp(density * sum);
    }
}
