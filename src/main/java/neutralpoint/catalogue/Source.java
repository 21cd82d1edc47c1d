package neutralpoint.catalogue;

/** Where a piece of knowledge comes from. */
public record Source(String id, String title, String address, String note) {}
