package neutralpoint.catalogue;

/** A way of treating the water while cleansing that some systems do not bear. */
public record Handling(String id, String title, String means) {}
