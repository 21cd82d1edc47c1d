package neutralpoint.catalogue;

import java.util.List;
import java.util.Set;

/**
 * A way of cleansing.
 *
 * @param courses       the courses it can carry out
 * @param does          what it does with the water
 * @param priorDecibans how readily it is chosen before anything is known; trade judgement
 * @param cautions      ids of the cautions that go with it wherever it is used
 */
public record Method(String id, String title, String means, List<String> courses, Set<WaterWork> does, int priorDecibans,
        List<String> cautions) {

    /** By its id, which nothing else has: this is looked up many times in one assessment. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
