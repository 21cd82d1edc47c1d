package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * The greatest pressure some part of this system may see.
 *
 * @param bar over the air outside, from 0 to 10
 */
public record Pressure(double bar, List<Sign> from) {

    public static Pressure limit(double bar, Sign... from) {
        return new Pressure(bar, List.of(from));
    }
}
