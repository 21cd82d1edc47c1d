package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.job.Job;

/** The system's own pressure gauge held against a second one, both read cold. */
final class GaugeWorkings {
    /** Two gauges that differ by no more are both right. Common practice, no source. */
    private static final double AGREES_BAR = 0.2;
    /** So much too high, it is the gauge and not the pressure. Common practice, no source. */
    private static final double TOO_HIGH_BAR = 0.5;
    private static final double READING_BAR = 1e-9;

    private GaugeWorkings() {}

    /** Empty unless both were read. */
    static Optional<Calculation> of(Job job) {
        if (!Readings.has(job, FindingId.PRESSURE_COLD_BAR, FindingId.SECOND_GAUGE_BAR)) {
            return Optional.empty();
        }
        double own = Readings.get(job, FindingId.PRESSURE_COLD_BAR);
        double second = Readings.get(job, FindingId.SECOND_GAUGE_BAR);
        double over = own - second;
        String sum = Decimals.sum("%s - %s = %s bar", own, second, over);
        if (Math.abs(over) <= AGREES_BAR + READING_BAR) {
            return Optional.of(Calculation.finding(FindingId.SECOND_GAUGE, "agrees", PASS, "The gauge agrees with a second one.", sum));
        }
        boolean tooHigh = over >= TOO_HIGH_BAR - READING_BAR && second < HotGauge.SAFETY_VALVE_BAR;
        return Optional.of(Calculation.finding(FindingId.SECOND_GAUGE, tooHigh ? "shows-less-under-3" : "reads-otherwise", tooHigh ? FAIL : WARN,
                Decimals.sum("The gauge shows %s bar where a second one shows %s.", own, second), sum));
    }
}
