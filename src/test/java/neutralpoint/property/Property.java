package neutralpoint.property;

import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import neutralpoint.Shared;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;

/**
 * Something that holds of every call-out.
 *
 * @param speaksOf the call-outs it says something about
 * @param holds    throws an AssertionError where it does not hold
 * @param oneIn    it is tried on one call-out in so many: a property that judges anew costs as much as the call-out itself
 */
record Property(String name, Predicate<Assessment> speaksOf, BiConsumer<Assessment, Random> holds, int oneIn) {

    /** A property of the assessment alone, tried on every call-out. */
    static Property of(String name, Predicate<Assessment> speaksOf, Consumer<Assessment> holds) {
        return new Property(name, speaksOf, (a, random) -> holds.accept(a), 1);
    }

    /** A property that compares the assessment with that of a changed call-out. */
    static Property comparing(String name, Predicate<Assessment> speaksOf, BiConsumer<Assessment, Random> holds) {
        return new Property(name, speaksOf, holds, 5);
    }

    boolean isBrokenBy(Assessment a, long seed) {
        try {
            holds.accept(a, new Random(seed));
            return false;
        } catch (AssertionError broken) {
            return true;
        }
    }

    /** Leaves out answers, radiators and the gauge log one after another as long as the property stays broken. */
    Assessment smallest(Assessment broken, long seed) {
        for (String finding : broken.job().answers().keySet()) {
            Assessment smaller = Shared.ASSESSOR.assess(broken.job().without(finding));
            if (speaksOf.test(smaller) && isBrokenBy(smaller, seed)) {
                return smallest(smaller, seed);
            }
        }
        Job bare = broken.job().withRadiators(List.of()).withGauge(List.of());
        Assessment without = Shared.ASSESSOR.assess(bare);
        return !bare.equals(broken.job()) && speaksOf.test(without) && isBrokenBy(without, seed) ? without : broken;
    }
}
