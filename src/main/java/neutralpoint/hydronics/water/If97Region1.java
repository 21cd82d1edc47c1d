package neutralpoint.hydronics.water;

import java.util.List;

/**
 * Liquid water after IAPWS R7-97(2012), region 1 (equation 7 and table 2): derivatives of the dimensionless Gibbs free
 * energy. Valid from 273.15 to 623.15 K and from saturation pressure to 100 MPa; the caller sees to that.
 */
final class If97Region1 {
    /** Specific gas constant of water, kJ/(kg K). */
    private static final double GAS_CONSTANT = 0.461526;
    private static final double REDUCING_MEGAPASCALS = 16.53;
    private static final double REDUCING_KELVIN = 1386;
    private static final double KILOPASCALS_PER_MEGAPASCAL = 1000;

    private record Term(int i, int j, double n) {}

    /** Table 2 without its terms I = 0, J = 0 and 1: those set where enthalpy and entropy are zero and nothing else. */
    private static final List<Term> TERMS = List.of(
            new Term(0, -2, 0.14632971213167),
            new Term(0, -1, -0.84548187169114),
            new Term(0, 2, -0.95791963387872),
            new Term(0, 3, 0.15772038513228),
            new Term(0, 4, -0.16616417199501e-1),
            new Term(0, 5, 0.81214629983568e-3),
            new Term(1, -9, 0.28319080123804e-3),
            new Term(1, -7, -0.60706301565874e-3),
            new Term(1, -1, -0.18990068218419e-1),
            new Term(1, 0, -0.32529748770505e-1),
            new Term(1, 1, -0.21841717175414e-1),
            new Term(1, 3, -0.52838357969930e-4),
            new Term(2, -3, -0.47184321073267e-3),
            new Term(2, 0, -0.30001780793026e-3),
            new Term(2, 1, 0.47661393906987e-4),
            new Term(2, 3, -0.44141845330846e-5),
            new Term(2, 17, -0.72694996297594e-15),
            new Term(3, -4, -0.31679644845054e-4),
            new Term(3, 0, -0.28270797985312e-5),
            new Term(3, 6, -0.85205128120103e-9),
            new Term(4, -5, -0.22425281908000e-5),
            new Term(4, -2, -0.65171222895601e-6),
            new Term(4, 10, -0.14341729937924e-12),
            new Term(5, -8, -0.40516996860117e-6),
            new Term(8, -11, -0.12734301741641e-8),
            new Term(8, -6, -0.17424871230634e-9),
            new Term(21, -29, -0.68762131295531e-18),
            new Term(23, -31, 0.14478307828521e-19),
            new Term(29, -38, 0.26335781662795e-22),
            new Term(30, -39, -0.11947622640071e-22),
            new Term(31, -40, 0.18228094581404e-23),
            new Term(32, -41, -0.93537087292458e-25));

    private If97Region1() {}

    static double specificVolumeCubicMetresPerKg(double kelvin, double megapascals) {
        double x = 7.1 - megapascals / REDUCING_MEGAPASCALS;
        double y = REDUCING_KELVIN / kelvin - 1.222;
        double gammaPi = 0;
        for (Term t : TERMS) {
            gammaPi -= t.n * t.i * Math.pow(x, t.i - 1) * Math.pow(y, t.j);
        }
        return GAS_CONSTANT * kelvin * gammaPi / (REDUCING_MEGAPASCALS * KILOPASCALS_PER_MEGAPASCAL);
    }

    static double heatCapacityKilojoulesPerKgKelvin(double kelvin, double megapascals) {
        double tau = REDUCING_KELVIN / kelvin;
        double x = 7.1 - megapascals / REDUCING_MEGAPASCALS;
        double y = tau - 1.222;
        double gammaTauTau = 0;
        for (Term t : TERMS) {
            gammaTauTau += t.n * Math.pow(x, t.i) * t.j * (t.j - 1) * Math.pow(y, t.j - 2);
        }
        return -GAS_CONSTANT * tau * tau * gammaTauTau;
    }
}
