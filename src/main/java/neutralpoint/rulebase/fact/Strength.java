package neutralpoint.rulebase.fact;

/**
 * How strongly one observation speaks for or against something, in five coarse grades.
 *
 * <p>The figure is a weight of evidence in decibans, 10·log10 of the likelihood ratio (I. J. Good,
 * <i>Probability and the Weighing of Evidence</i>, 1950). The grade given to a rule is trade
 * judgement, not a measured frequency.
 */
public enum Strength {
    SLIGHT(1, "slightly"),
    SOME(3, "somewhat"),
    GOOD(6, "well"),
    STRONG(10, "strongly"),
    DECISIVE(20, "almost decisively");

    private final int decibans;
    private final String words;

    Strength(int decibans, String words) {
        this.decibans = decibans;
        this.words = words;
    }

    public int decibans() {
        return decibans;
    }

    /** The adverb that goes before "for" or "against" on screen. */
    public String words() {
        return words;
    }
}
