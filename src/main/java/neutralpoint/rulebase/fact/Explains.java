package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * A sign that a settled cause accounts for, so that it no longer speaks for the rivals.
 *
 * @param by     the settled cause
 * @param sign   the observation explained
 * @param rivals causes the sign stops speaking for; what the settled cause leads to is no rival
 */
public record Explains(String by, Sign sign, List<String> rivals) {

    public static Explains awayFrom(Settled by, Sign sign, String... rivals) {
        return new Explains(by.cause(), sign, List.of(rivals));
    }
}
