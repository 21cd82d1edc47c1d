package neutralpoint.catalogue;

/** A course of action. Wet courses open or dose the water. */
public record Course(String id, String title, String means, boolean wet) {}
