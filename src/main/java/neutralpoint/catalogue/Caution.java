package neutralpoint.catalogue;

import java.util.Comparator;

/**
 * Something that must be said with a verdict, and who has the last word on it.
 *
 * @param harm   what can come of not heeding it
 * @param moment when it has to be heeded
 */
public record Caution(String id, String text, String authority, Harm harm, Moment moment, String source) {
    /** The worst first, and what has to be heeded sooner before what can wait. */
    public static final Comparator<Caution> WORST_FIRST = Comparator.comparing(Caution::harm).thenComparing(Caution::moment);

    /** A few words that name it where it has been read in full before. */
    public String inShort() {
        return id.replace('-', ' ');
    }
}
