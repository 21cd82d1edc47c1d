package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.job.Job;

/** The heating tank's measured warmth in the words a hand would use. The limits are common practice, no source. */
final class TankWorkings {
    /** A hand cannot stay in it. */
    private static final double HOT_CELSIUS = 50;
    /** On most days a loft warms its tank no further than this. */
    private static final double WARM_CELSIUS = 25;

    private TankWorkings() {}

    static Optional<Calculation> of(Job job) {
        return Readings.of(job, FindingId.TANK_WATER_CELSIUS).stream().mapToObj(TankWorkings::warmth).findFirst();
    }

    private static Calculation warmth(double celsius) {
        if (celsius >= HOT_CELSIUS) {
            return warmth("hot", FAIL, celsius, Decimals.sum("%s is %s or more", celsius, HOT_CELSIUS));
        }
        return celsius >= WARM_CELSIUS
                ? warmth("warm", WARN, celsius, Decimals.sum("%s is %s or more and under %s", celsius, WARM_CELSIUS, HOT_CELSIUS))
                : warmth("cold", PASS, celsius, Decimals.sum("%s is under %s", celsius, WARM_CELSIUS));
    }

    private static Calculation warmth(String word, Calculation.Grade grade, double celsius, String sum) {
        return Calculation.finding(FindingId.TANK_WARMTH, word, grade, Decimals.sum("The heating tank is %s, at %s °C.", word, celsius), sum);
    }
}
