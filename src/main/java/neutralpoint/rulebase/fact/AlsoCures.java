package neutralpoint.rulebase.fact;

/** Cleansing for one cause answers another as well, so that it needs no step of its own. */
public record AlsoCures(String cause, String covered) {

    public AlsoCures(Standing cause, Standing covered) {
        this(cause.cause(), covered.cause());
    }
}
