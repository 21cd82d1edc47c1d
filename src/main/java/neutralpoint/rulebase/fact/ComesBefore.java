package neutralpoint.rulebase.fact;

/**
 * The remedy of one cause comes before that of another.
 *
 * @param must true for a particular order that beats the general one
 */
public record ComesBefore(String first, String then, boolean must) {

    /** A particular order of two remedies. */
    public static ComesBefore must(Standing first, Standing then) {
        return new ComesBefore(first.cause(), then.cause(), true);
    }

    /** The general order by phase; gives way where a particular order says otherwise. */
    public static ComesBefore usually(Standing first, Standing then) {
        return new ComesBefore(first.cause(), then.cause(), false);
    }
}
