package neutralpoint.rulebase.fact;

/** A way of handling the water while cleansing that must not be used here. */
public record ForbidsHandling(String handling) {}
