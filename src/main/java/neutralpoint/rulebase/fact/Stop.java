package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * A red line: work stops until it is dealt with.
 *
 * @param course "refer", or the course by which the engineer can clear it on site
 */
public record Stop(String course, List<Seen> from) {

    /** True when somebody else must deal with it. */
    public boolean isReferral() {
        return course.equals("refer");
    }

    /** Nothing may go on here; somebody else must deal with it. */
    public static Stop refer(Seen... from) {
        return new Stop("refer", List.of(from));
    }

    /** The engineer can clear this on site by the named course before anything else. */
    public static Stop clearBy(String course, Seen... from) {
        return new Stop(course, List.of(from));
    }
}
