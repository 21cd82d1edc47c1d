package neutralpoint.catalogue;

/**
 * A course of action.
 *
 * @param wet        work on the wet side, at the end of which level or pressure is set again
 * @param opensWater water is let out for it
 * @param cleanses   washes dirt out of the water's ways
 * @param repairs    mends a part
 */
public record Course(String id, String title, String means, boolean wet, boolean opensWater, boolean cleanses, boolean repairs) {}
