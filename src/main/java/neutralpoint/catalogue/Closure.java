package neutralpoint.catalogue;

/**
 * Something in a house that work may shut, take out or set, and that is put back afterwards.
 *
 * @param title  what it is called on screen
 * @param relief true when a heat source's water expands, is relieved or moves on by it; shut, it forbids firing
 */
public record Closure(String id, String title, boolean relief) {}
