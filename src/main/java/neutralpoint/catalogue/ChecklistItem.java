package neutralpoint.catalogue;

import java.util.List;
import java.util.Set;
import neutralpoint.job.Job;

/**
 * One line of a list that goes with a work plan, and the jobs it belongs to. Within a condition any one word is enough;
 * every condition that is given must hold.
 *
 * @param list    one of {@link #LISTS}
 * @param says    the line; words in braces, such as {largest}, stand for a size or a figure of this house
 * @param courses courses it belongs to; empty for any
 * @param methods methods of cleansing it belongs to; empty for any, and for none
 * @param traits  traits of which the system must have one; empty for any
 * @param without traits of which the system may have none
 * @param causes  causes of which the cleanse must answer one; empty for any
 * @param notFor  causes of which it may answer none
 * @param house   the answers and the dangers it hangs on
 * @param hot     true when it speaks of running hot: left out while a danger keeps the heat off
 */
public record ChecklistItem(String id, String list, String says, List<String> courses, List<String> methods, List<String> traits,
        List<String> without, List<String> causes, List<String> notFor, When house, boolean hot, String source) {
    /** What to bring, what to agree with the customer beforehand, what to record before starting, what to restore. */
    public static final List<String> LISTS = List.of("bring", "agree", "record-first", "restore");

    /** True when the line belongs to such a job; the method is empty where nothing is cleansed. */
    public boolean fits(String course, String method, Set<String> systemTraits) {
        return (courses.isEmpty() || courses.contains(course)) && (methods.isEmpty() || methods.contains(method))
                && (traits.isEmpty() || traits.stream().anyMatch(systemTraits::contains))
                && without.stream().noneMatch(systemTraits::contains);
    }

    /**
     * True when the line belongs to such a house.
     *
     * @param answered the causes that the work answers
     * @param dangers  ids of the dangers that stand
     * @param heatOff  true while a danger keeps the heat off
     */
    public boolean fits(Job known, Set<String> systemTraits, Set<String> answered, Set<String> dangers, boolean heatOff) {
        return (causes.isEmpty() || causes.stream().anyMatch(answered::contains)) && notFor.stream().noneMatch(answered::contains)
                && house.fits(known, systemTraits, dangers) && !(hot && heatOff);
    }
}
