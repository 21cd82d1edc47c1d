package neutralpoint.rulebase.fact;

/** One fault stands behind another: curing the second without the first would not last. */
public record LeadsTo(String root, String consequence) {

    public LeadsTo(Likely root, Likely consequence) {
        this(root.cause(), consequence.cause());
    }
}
