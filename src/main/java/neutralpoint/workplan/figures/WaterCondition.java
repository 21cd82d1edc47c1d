package neutralpoint.workplan.figures;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.hydronics.Dilution;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/**
 * How dirty the water is, and so how far it must be thinned out before it runs clear: black water looks clear once less
 * of it is left than greyish water. The shares left are common practice, no source.
 */
enum WaterCondition {
    LIGHT(0.10), ORDINARY(0.05), HEAVY(0.02);

    private static final Set<String> CLEAR = Set.of("clear", "straw");
    private static final Set<String> DIRTY_ALL_ALONG = Set.of("black-all-along", "orange-all-along", "nothing");

    private final double shareLeft;

    WaterCondition(double shareLeft) {
        this.shareLeft = shareLeft;
    }

    /** Turnovers of a radiator's content, well mixed: ln(1 / share left). */
    double turnovers() {
        return Dilution.turnoversToShare(shareLeft);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Turnovers until a radiator runs clear; from light to heavy where nothing was seen of the dirt.
     *
     * @param says how dirty
     */
    record Turnovers(Estimate turnovers, String says) {
        static Turnovers of(Job job) {
            return seenIn(job).map(dirt -> new Turnovers(Estimate.exactly(dirt.turnovers()), dirt.word())).orElseGet(() -> new Turnovers(
                    new Estimate(LIGHT.turnovers(), ORDINARY.turnovers(), HEAVY.turnovers()),
                    "not looked at, taken as ordinary, light to heavy"));
        }

        boolean isSeen() {
            return turnovers.low() == turnovers.high();
        }
    }

    private static Optional<WaterCondition> seenIn(Job job) {
        Optional<String> bled = one(job, FindingId.BLEED_WATER);
        Optional<String> drained = one(job, FindingId.DRAIN_WATER);
        if (one(job, FindingId.COLD_BASE_COUNT).filter("most"::equals).isPresent() || drained.filter(DIRTY_ALL_ALONG::contains).isPresent()) {
            return Optional.of(HEAVY);
        }
        if (bled.isEmpty() && drained.isEmpty()) {
            return Optional.empty();
        }
        boolean clear = bled.map(CLEAR::contains).orElse(true) && drained.map(CLEAR::contains).orElse(true);
        return Optional.of(clear ? LIGHT : ORDINARY);
    }

    private static Optional<String> one(Job job, String finding) {
        return job.answer(finding).filter(Answer.One.class::isInstance).map(a -> ((Answer.One) a).choice());
    }
}
