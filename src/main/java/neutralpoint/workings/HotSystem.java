package neutralpoint.workings;

import neutralpoint.job.Job;

/**
 * How warm the heating's water is when hot: as read at the boiler, or as usual where it was not. A flow read while the
 * boiler stood cool tells nothing of that, and counts as not read.
 *
 * @param flowCelsius 40 to 120
 * @param meanCelsius half-way between flow and return, which is what most of the water has; 30 to 120
 */
record HotSystem(double flowCelsius, double meanCelsius) {
    /** Flow below this is no heating at work, floor heating apart. Common practice, no source. */
    private static final double LEAST_FLOW_CELSIUS = 40;
    private static final double USUAL_FLOW_CELSIUS = 75;
    private static final double USUAL_DROP_KELVIN = 20;
    /** Water comes back no colder than the rooms it was sent to. */
    private static final double COLDEST_RETURN_CELSIUS = 20;

    static HotSystem of(Job job) {
        double flow = wasReadCool(job) ? USUAL_FLOW_CELSIUS : Readings.of(job, "boiler-flow-celsius").orElse(USUAL_FLOW_CELSIUS);
        double drop = Math.min(Readings.of(job, "boiler-flow-return-kelvin").orElse(USUAL_DROP_KELVIN), flow - COLDEST_RETURN_CELSIUS);
        return new HotSystem(flow, flow - drop / 2);
    }

    /** True when the flow was read and the boiler cannot have been heating. */
    static boolean wasReadCool(Job job) {
        return Readings.of(job, "boiler-flow-celsius").orElse(USUAL_FLOW_CELSIUS) < LEAST_FLOW_CELSIUS;
    }
}
