package neutralpoint.workplan.figures;

import java.util.Optional;
import java.util.Set;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.catalogue.Method;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.hydronics.Estimate;

/**
 * What is to be done, as far as figures and lists depend on it.
 *
 * @param how    the method of cleansing; empty where nothing is cleansed
 * @param traits what is certain of the system
 */
public record JobScope(Course action, Optional<Method> how, Set<String> traits) {
    /** What is let out to open one place: a bowlful when it is high up, everything when it is low. Common practice, no source. */
    private static final Estimate PART_DRAINED = new Estimate(0.1, 0.4, 1);

    public JobScope {
        traits = Set.copyOf(traits);
    }

    /** The course's id. */
    public String course() {
        return action.id();
    }

    /** The method's id; empty where nothing is cleansed. */
    public String method() {
        return how.map(Method::id).orElse("");
    }

    boolean does(WaterWork what) {
        return how.map(m -> m.does().contains(what)).orElse(false);
    }

    boolean has(String trait) {
        return traits.contains(trait);
    }

    boolean opensTheWater() {
        return action.opensWater();
    }

    /** True where water, level or pressure is set at the end. */
    boolean setsTheLevel() {
        return action.wet();
    }

    boolean isWhole() {
        return course().equals(CourseId.FULL_FLUSH);
    }

    /** Share of the system's water that is let out. */
    Estimate drainedShare() {
        return isWhole() || does(WaterWork.DRAINED) ? Estimate.exactly(1) : opensTheWater() ? PART_DRAINED : Estimate.NOTHING;
    }

    /** Share of the system's water that is cleaned and rinsed: all of it, but for one leg of several. */
    Estimate cleansedShare() {
        return isWhole() || does(WaterWork.DRAINED) ? Estimate.exactly(1) : PART_DRAINED;
    }

    /** Additives never go where heating water can reach the taps. */
    boolean mayBeDosed() {
        return !has(TraitId.NO_ADDITIVES);
    }
}
