package neutralpoint.catalogue;

import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Ids.CourseId;

/**
 * Something that can be wrong.
 *
 * @param saidAs       what it is called within a sentence, such as "a blocked vent"
 * @param means        what it is, in one sentence
 * @param priorDecibans how likely it is before anything is known; trade judgement
 * @param onlyOn       traits of which the system must have one; empty for any
 * @param course       the course that usually answers it
 * @param ownWork      the course in place of refer for somebody who has shown all that the remedy needs; empty for none
 * @param needs        kinds of work its remedy is
 * @param phase        where its remedy comes in the order of work
 * @param work         the remedy in one line
 * @param answers      complaints it explains
 * @param noDecidingTest why the trade has no test that settles it; empty where it has one
 * @param subject      the file it is catalogued in
 */
public record Cause(String id, String title, String saidAs, String means, int priorDecibans, List<String> onlyOn, String course,
        Optional<String> ownWork, List<String> needs, Phase phase, String work, List<String> answers, String noDecidingTest, String subject) {


    /** False for what is as it should be, or no matter of the water: it is only explained. */
    public boolean isFault() {
        return !course.equals(CourseId.NO_WET_SIDE_WORK);
    }

    /** By its id, which nothing else has: this is looked up many times in one assessment. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
