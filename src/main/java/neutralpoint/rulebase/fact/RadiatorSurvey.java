package neutralpoint.rulebase.fact;

/**
 * One radiator of a temperature survey, with what its readings say of it. Survey rules look over all of them at once.
 *
 * @param floor      ground, first, second or unknown
 * @param leg        the branch it hangs on; empty when not traced
 * @param old        true for the plain and column radiators of before finned panels
 * @param reach      near, middle, far or unknown: its place among the pipe runs from the pump
 * @param state      healthy, base-restricted, starved, gas-at-top, reversed, cold, lukewarm or over-fed
 * @param dropKelvin flow tail minus return tail
 */
public record RadiatorSurvey(String name, String floor, String leg, boolean old, String reach, String state, double dropKelvin) {

    /** Has the hot water it should have. */
    public boolean isFed() {
        return !state.equals("starved") && !state.equals("cold") && !state.equals("lukewarm");
    }
}
