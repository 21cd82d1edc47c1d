package neutralpoint.rulebase.fact;

/**
 * How many radiators gave one answer to a per-radiator finding.
 *
 * @param floor "any" for the whole house, otherwise the floor the count is for
 * @param count radiators that gave the answer
 * @param outOf radiators that gave any answer on that floor
 */
public record Radiators(String finding, String answer, String floor, int count, int outOf)
        implements Sign {

    /** Share of the radiators looked at, 0 to 1. */
    public double getShare() {
        return outOf == 0 ? 0 : (double) count / outOf;
    }

    @Override
    public String shown() {
        return answer + " on " + count + " of " + outOf + (floor.equals("any") ? "" : " (" + floor + ")");
    }
}
