package neutralpoint.catalogue;

/** A kind of work that a remedy may be, such as mains electrical; what it needs of a person hangs on the house. */
public record WorkKind(String id, String means) {}
