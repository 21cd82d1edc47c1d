package neutralpoint.rulebase;

import java.util.Locale;

/** How far a course is decided. */
public enum Certainty {
    /** A deciding test has settled its cause, or a danger asks for it. */
    SETTLED,
    /** What was found points to it before anything else. */
    LIKELY,
    /** More has to be seen before anything is opened, added or renewed. */
    UNDECIDED;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
