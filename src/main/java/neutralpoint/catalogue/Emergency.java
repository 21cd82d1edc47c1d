package neutralpoint.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.job.Job;

/**
 * Something that goes wrong while work is going on, as it is asked for at every prompt.
 *
 * @param say     what is happening, in a few words
 * @param words   other words by which it may be typed
 * @param tells   the dangers it may be, by answers which stand until it is over
 * @param shut    what to shut first, in order; dangers take these steps into their own
 * @param call    whom to ring, with the number; dangers take these steps into their own
 * @param reopen  when what was closed for the work is opened again
 */
public record Emergency(String id, String say, List<String> words, List<Tells> tells, List<Danger.Act> shut,
        List<Danger.Act> call, Reopen reopen, String source) {

    /**
     * A danger that it may be.
     *
     * @param by   finding to answers, by which the stop rules see it
     * @param when the houses in which it may be this danger
     */
    public record Tells(String danger, Map<String, List<String>> by, When when) {}

    /** What it tells in this house. */
    public List<Tells> tells(Job known, Set<String> traits) {
        return tells.stream().filter(t -> t.when().fits(known, traits)).toList();
    }

    /** When what was closed for the work, and gives relief, is opened again. */
    public enum Reopen {
        /** Now, where a valve can be turned by hand. */
        NOW,
        /** Before anything heats again. */
        BEFORE_HEAT
    }

    /** The emergency that is meant by its number in the list, its id or a word of it; none when it is not clear. */
    public static Optional<Emergency> meant(List<Emergency> all, String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        if (word.matches("[1-9]")) {
            int number = Integer.parseInt(word);
            return number <= all.size() ? Optional.of(all.get(number - 1)) : Optional.empty();
        }
        List<Emergency> meant = all.stream().filter(e -> e.isMeantBy(word)).toList();
        return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
    }

    private boolean isMeantBy(String typed) {
        return typed.equals(id) || List.of(typed.split("[^a-z0-9]+")).stream().anyMatch(words::contains);
    }
}
