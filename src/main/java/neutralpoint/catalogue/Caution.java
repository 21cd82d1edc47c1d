package neutralpoint.catalogue;

/** Something that must be said with a verdict, and who has the last word on it. */
public record Caution(String id, String text, String authority, String source) {}
