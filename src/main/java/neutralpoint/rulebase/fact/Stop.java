package neutralpoint.rulebase.fact;

import java.util.List;
import neutralpoint.catalogue.Ids.CourseId;

/**
 * A red line: work stops until the danger is over.
 *
 * @param course "refer", or the course by which the engineer can clear it on site
 * @param danger id of the danger that stands
 */
public record Stop(String course, String danger, List<Sign> from) {

    /** True when somebody else must deal with it. */
    public boolean isReferral() {
        return course.equals(CourseId.REFER);
    }

    /** Nothing may go on here; somebody else must deal with the danger. */
    public static Stop refer(String danger, Sign... from) {
        return new Stop(CourseId.REFER, danger, List.of(from));
    }

    /** The engineer can clear the danger on site by the named course before anything else. */
    public static Stop clearBy(String course, String danger, Sign... from) {
        return new Stop(course, danger, List.of(from));
    }
}
