package neutralpoint.workings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.expansion.SealedSystem;
import neutralpoint.hydronics.expansion.Vessel;
import neutralpoint.hydronics.water.Water;
import neutralpoint.job.Job;

/**
 * The gauge cold and hot, and what it is compared with.
 *
 * @param measuredBar charge of the vessel, if it was measured
 * @param litres      content of the system
 * @param hotCelsius  mean temperature of its water when the hot gauge was read
 */
record HotGauge(double coldBar, double hotBar, double vesselLitres, OptionalDouble measuredBar, Estimate litres, double hotCelsius) {
    /** Setting of the usual safety valve. */
    static final double SAFETY_VALVE_BAR = 3;
    /** Working pressure is kept this far under the safety valve. Source: sealed-system table practice, from memory. */
    static final double KEPT_UNDER_BAR = 0.35;
    /** Highest cold pressure that is usual in a house, and highest charge a vessel leaves the works with. Common practice, no source. */
    static final double USUAL_MOST_BAR = 1.5;
    /** Two readings of one gauge, and temperatures taken as usual, differ by this much. */
    private static final double READING_ERROR_BAR = 0.3;
    /** A vessel with less than half the charge it should have is one that has lost it. Common practice, no source. */
    private static final double LOST_SHARE = 0.5;
    /** A vessel has at least this charge when it is new. Common practice, no source. */
    private static final double LEAST_CHARGE_BAR = 0.5;

    /** What the hot gauge says of the vessel. */
    enum GaugeVerdict { CHARGE_LOST, TOO_SMALL, AS_EXPECTED, OVER_CHARGED, OVER_FILLED, UNCLEAR }

    /** The readings it is made of. */
    static List<String> needs(Job job) {
        return Check.withContent(job, FindingId.PRESSURE_COLD_BAR, FindingId.PRESSURE_HOT_BAR, FindingId.VESSEL_SIZE_LITRES);
    }

    /** Empty where a reading is missing, or where the hot one was not taken hot or lies below the cold one. */
    static Optional<HotGauge> of(Job job) {
        if (!Readings.has(job, needs(job).toArray(String[]::new)) || HotSystem.wasReadCool(job)
                || Readings.get(job, FindingId.PRESSURE_HOT_BAR) < Readings.get(job, FindingId.PRESSURE_COLD_BAR)) {
            return Optional.empty();
        }
        return SystemLitres.of(job).map(content -> new HotGauge(Readings.get(job, FindingId.PRESSURE_COLD_BAR),
                Readings.get(job, FindingId.PRESSURE_HOT_BAR), Readings.get(job, FindingId.VESSEL_SIZE_LITRES), Readings.of(job, FindingId.VESSEL_CHARGE_BAR),
                content.litres(), HotSystem.of(job).meanCelsius()));
    }

    double expansion() {
        return Water.expansionFraction(UsualTemperatures.STANDING_CELSIUS, hotCelsius);
    }

    boolean hasLostCharge() {
        return measuredBar.isPresent() && measuredBar.getAsDouble() < LOST_SHARE * Math.max(coldBar, LEAST_CHARGE_BAR);
    }

    /** The charge of a sound vessel here: the measured one if it is there, otherwise the fill. */
    double soundChargeBar() {
        return hasLostCharge() ? coldBar : measuredBar.orElse(coldBar);
    }

    /** What the gauge would show hot with a sound vessel; infinite when no air would be left in it. */
    double expectedBar(double systemLitres) {
        return expectedBar(soundChargeBar(), coldBar, systemLitres);
    }

    /** The charge, from all gone to the fill, that explains the hot gauge. */
    OptionalDouble explainedBar(double systemLitres) {
        return SealedSystem.preChargeThatExplainsBar(vesselLitres, coldBar, hotBar, systemLitres, expansion());
    }

    /** The verdict for one guess at the content. */
    GaugeVerdict verdict(double systemLitres) {
        if (hasLostCharge()) {
            return GaugeVerdict.CHARGE_LOST;
        }
        double expected = expectedBar(systemLitres);
        if (hotBar > expected + READING_ERROR_BAR) {
            return measuredBar.isPresent() ? GaugeVerdict.TOO_SMALL : unmeasured(systemLitres);
        }
        if (hotBar >= SAFETY_VALVE_BAR - KEPT_UNDER_BAR) {
            return runsUp(systemLitres);
        }
        // A gauge that hardly moves may be stuck, or the system was not hot: that is not the rise it should be.
        return hotBar < (coldBar + expected) / 2 - READING_ERROR_BAR ? GaugeVerdict.UNCLEAR : GaugeVerdict.AS_EXPECTED;
    }

    /** A pressure that runs up as this vessel must: is it the vessel, or how it was set? */
    private GaugeVerdict runsUp(double systemLitres) {
        double right = Math.min(coldBar, USUAL_MOST_BAR);
        if (expectedBar(right, right, systemLitres) >= SAFETY_VALVE_BAR - KEPT_UNDER_BAR) {
            return GaugeVerdict.TOO_SMALL;
        }
        if (measuredBar.orElse(0) > coldBar + READING_ERROR_BAR) {
            return GaugeVerdict.OVER_CHARGED;
        }
        return coldBar > USUAL_MOST_BAR ? GaugeVerdict.OVER_FILLED : GaugeVerdict.UNCLEAR;
    }

    /** A steep rise comes from a vessel that lost its charge, but also from one filled to less than a sound charge. */
    private GaugeVerdict unmeasured(double systemLitres) {
        OptionalDouble high = SealedSystem.highChargeThatExplainsBar(vesselLitres, coldBar, hotBar, systemLitres, expansion());
        OptionalDouble low = explainedBar(systemLitres);
        boolean mayBeSound = high.isPresent() && high.getAsDouble() <= USUAL_MOST_BAR;
        return !mayBeSound && low.isPresent() && low.getAsDouble() < LOST_SHARE * coldBar ? GaugeVerdict.CHARGE_LOST : GaugeVerdict.UNCLEAR;
    }

    private double expectedBar(double chargeBar, double fillBar, double systemLitres) {
        return SealedSystem.hotPressureBar(new Vessel(vesselLitres, chargeBar), fillBar, systemLitres, expansion())
                .orElse(Double.POSITIVE_INFINITY);
    }
}
