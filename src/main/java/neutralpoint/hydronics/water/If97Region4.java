package neutralpoint.hydronics.water;

/**
 * Where water boils, after IAPWS R7-97(2012), region 4 (equations 29 to 31 and table 34). One quadratic in the two
 * variables is solved for either, so each function is the exact inverse of the other. Valid from 273.15 K, 611.213 Pa,
 * to the critical point at 647.096 K, 22.064 MPa; the caller sees to that.
 */
final class If97Region4 {
    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    private If97Region4() {}

    static double pressureMegapascals(double kelvin) {
        double theta = kelvin + N9 / (kelvin - N10);
        double a = theta * theta + N1 * theta + N2;
        double b = N3 * theta * theta + N4 * theta + N5;
        double c = N6 * theta * theta + N7 * theta + N8;
        return Math.pow(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4);
    }

    static double temperatureKelvin(double megapascals) {
        double beta = Math.pow(megapascals, 0.25);
        double e = beta * beta + N3 * beta + N6;
        double f = N1 * beta * beta + N4 * beta + N7;
        double g = N2 * beta * beta + N5 * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
    }
}
