package neutralpoint.workings;

import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.expansion.SealedSystem;
import neutralpoint.job.Job;

/**
 * What the height of a house asks of the cold pressure on a sealed system.
 *
 * @param heightMetres of the highest radiator over the gauge, 0 where the gauge stands highest
 */
public record FillPressure(double heightMetres) {
    private static final double METRES_PER_BAR = 10;

    /** Empty where the height was not measured. */
    public static Optional<FillPressure> of(Job job) {
        return Readings.of(job, FindingId.HIGHEST_RADIATOR_ABOVE_GAUGE_M).stream().mapToObj(h -> new FillPressure(Math.max(0, h))).findFirst();
    }

    /** Least pressure to fill to, so that the top can still be vented. */
    public double leastBar() {
        return SealedSystem.minimumFillBar(heightMetres);
    }

    /** Below this there is no water at the top. */
    double staticBar() {
        return heightMetres / METRES_PER_BAR;
    }

    public String sum() {
        return Decimals.sum("0.1 x %s m + 0.3 bar to vent by = %s bar", heightMetres, leastBar());
    }
}
