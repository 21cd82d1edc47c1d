package neutralpoint.hydronics.pipework;

import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Root;

/**
 * The Darcy friction factor of a round pipe, f in loss = f · (length / bore) · density · velocity² / 2. It is four
 * times the Fanning factor that some course notes use.
 */
public final class Friction {
    /** Reynolds number up to which the flow is laminar. */
    public static final double LAMINAR_BELOW = 2000;
    /** Reynolds number from which the flow is fully turbulent. */
    public static final double TURBULENT_FROM = 4000;

    private static final double LEAST_REYNOLDS = 1;
    private static final double MOST_REYNOLDS = 1e8;
    private static final double ROUGHEST = 0.05;
    private static final double LAMINAR_FACTOR_TIMES_REYNOLDS = 64;

    private Friction() {}

    /**
     * The Darcy friction factor: 64 / Re where the flow is laminar, Colebrook where it is turbulent, and from Reynolds
     * 2000 to 4000 a straight line from the one to the other. Nobody knows the factor in that stretch; the line is
     * chosen because it is continuous and lets the loss rise with the flow throughout.
     *
     * @param reynolds          Reynolds number, 1 to 1e8
     * @param relativeRoughness roughness over bore, 0 (smooth) to 0.05
     * @return the factor, without unit
     * @throws IllegalArgumentException if either is out of range
     */
    public static double darcyFactor(double reynolds, double relativeRoughness) {
        Bounds.within("reynolds", reynolds, LEAST_REYNOLDS, MOST_REYNOLDS);
        Bounds.within("relativeRoughness", relativeRoughness, 0, ROUGHEST);
        return factorTimesReynolds(reynolds, relativeRoughness) / reynolds;
    }

    /** The factor times the Reynolds number, which stays finite down to still water. */
    static double factorTimesReynolds(double reynolds, double relativeRoughness) {
        if (reynolds < LAMINAR_BELOW) {
            return LAMINAR_FACTOR_TIMES_REYNOLDS;
        }
        if (reynolds >= TURBULENT_FROM) {
            return reynolds * colebrook(reynolds, relativeRoughness);
        }
        double laminarEnd = LAMINAR_FACTOR_TIMES_REYNOLDS / LAMINAR_BELOW;
        double turbulentStart = colebrook(TURBULENT_FROM, relativeRoughness);
        double way = (reynolds - LAMINAR_BELOW) / (TURBULENT_FROM - LAMINAR_BELOW);
        return reynolds * (laminarEnd + way * (turbulentStart - laminarEnd));
    }

    /** Colebrook's equation 1/√f = −2 log10(roughness / 3.7 + 2.51 / (Re √f)), solved for x = 1/√f. */
    private static double colebrook(double reynolds, double relativeRoughness) {
        // From the roughest pipe to the smoothest and fastest allowed, x lies well between 1 and 40.
        double x = Root.between(1, 40, t -> t + 2 * Math.log10(relativeRoughness / 3.7 + 2.51 * t / reynolds));
        return 1 / (x * x);
    }
}
