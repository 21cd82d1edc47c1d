package neutralpoint.workplan.figures;

import java.util.Set;
import neutralpoint.catalogue.Ids.CourseId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.hydronics.Estimate;

/**
 * What is to be done, as far as figures and lists depend on it.
 *
 * @param course a course of action
 * @param method the method of cleansing; empty where nothing is cleansed
 * @param traits what is certain of the system
 */
public record JobScope(String course, String method, Set<String> traits) {
    private static final Set<String> OPENS_THE_WATER = Set.of(CourseId.FULL_FLUSH, CourseId.PARTIAL_CLEANSE, CourseId.VALVE_REPAIR, CourseId.COMPONENT_REPAIR,
            CourseId.PIPEWORK_CORRECTION);
    /** What is let out to open one place: a bowlful when it is high up, everything when it is low. Common practice, no source. */
    private static final Estimate PART_DRAINED = new Estimate(0.1, 0.4, 1);

    /** @throws IllegalArgumentException for a method whose figures are not known */
    public JobScope {
        traits = Set.copyOf(traits);
        MethodEffects.of(method);
    }

    MethodEffects way() {
        return MethodEffects.of(method);
    }

    boolean has(String trait) {
        return traits.contains(trait);
    }

    boolean opensTheWater() {
        return OPENS_THE_WATER.contains(course);
    }

    /** True where water, level or pressure is set at the end. */
    boolean setsTheLevel() {
        return opensTheWater() || course.equals(CourseId.VENT_AND_BALANCE);
    }

    boolean isWhole() {
        return course.equals(CourseId.FULL_FLUSH);
    }

    /** Share of the system's water that is let out. */
    Estimate drainedShare() {
        return isWhole() || way() == MethodEffects.CHEMICAL ? Estimate.exactly(1) : opensTheWater() ? PART_DRAINED : Estimate.NOTHING;
    }

    /** Share of the system's water that is cleaned and rinsed: all of it, but for one leg of several. */
    Estimate cleansedShare() {
        return isWhole() || way() == MethodEffects.CHEMICAL ? Estimate.exactly(1) : PART_DRAINED;
    }

    /** Additives never go where heating water can reach the taps. */
    boolean mayBeDosed() {
        return !has(TraitId.NO_ADDITIVES);
    }
}
