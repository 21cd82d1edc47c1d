package neutralpoint.workings;

import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Job;

/**
 * How warm the heating's water is when hot: as read at the boiler, or as usual where it was not. A flow read while the
 * boiler stood cool tells nothing of that, and counts as not read.
 *
 * @param flowCelsius 40 to 120
 * @param meanCelsius half-way between flow and return, which is what most of the water has; 30 to 120
 */
public record HotSystem(double flowCelsius, double meanCelsius) {
    /** Flow below this is no heating at work, floor heating apart. Common practice, no source. */
    private static final double LEAST_FLOW_CELSIUS = 40;

    static HotSystem of(Job job) {
        double flow = wasReadCool(job) ? UsualTemperatures.FLOW_CELSIUS : Readings.of(job, FindingId.BOILER_FLOW_CELSIUS).orElse(UsualTemperatures.FLOW_CELSIUS);
        // Water comes back no colder than the rooms it was sent to.
        double drop = Math.min(Readings.of(job, FindingId.BOILER_FLOW_RETURN_KELVIN).orElse(UsualTemperatures.DROP_KELVIN),
                flow - UsualTemperatures.ROOM_CELSIUS);
        return new HotSystem(flow, flow - drop / 2);
    }

    /** True when the flow was read and the boiler cannot have been heating. */
    static boolean wasReadCool(Job job) {
        return Readings.of(job, FindingId.BOILER_FLOW_CELSIUS).orElse(UsualTemperatures.FLOW_CELSIUS) < LEAST_FLOW_CELSIUS;
    }
}
