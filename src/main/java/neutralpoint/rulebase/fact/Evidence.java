package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * One piece of evidence for or against a cause or an arrangement, as a rule derives it.
 *
 * @param about a cause id, or in arrangement rules an arrangement id
 * @param kind  whether it weighs, settles or excludes
 * @param from  what it was concluded from; the first is the observation it belongs to
 */
public record Evidence(String about, Kind kind, Strength strength, List<Sign> from) {

    /** What a piece of evidence does to the thing it is about. */
    public enum Kind { FOR, AGAINST, SETTLES, EXCLUDES }

    public static Evidence supports(String about, Strength strength, Sign... from) {
        return new Evidence(about, Kind.FOR, strength, List.of(from));
    }

    public static Evidence against(String about, Strength strength, Sign... from) {
        return new Evidence(about, Kind.AGAINST, strength, List.of(from));
    }

    /** A discriminating test came out positive: no sum of other evidence can outweigh it. */
    public static Evidence settles(String about, Sign... from) {
        return new Evidence(about, Kind.SETTLES, Strength.DECISIVE, List.of(from));
    }

    /** A discriminating test came out negative, or the thing cannot be on this system. */
    public static Evidence excludes(String about, Sign... from) {
        return new Evidence(about, Kind.EXCLUDES, Strength.DECISIVE, List.of(from));
    }

    /** This evidence with another strength; what decides stays as it is. */
    public Evidence graded(Strength other) {
        return other == strength || kind == Kind.SETTLES || kind == Kind.EXCLUDES ? this : new Evidence(about, kind, other, from);
    }

    /** Signed weight in decibans. */
    public int getDecibans() {
        return switch (kind) {
            case FOR, SETTLES -> strength.decibans();
            case AGAINST, EXCLUDES -> -strength.decibans();
        };
    }
}
