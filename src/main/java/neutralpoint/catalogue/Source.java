package neutralpoint.catalogue;

/** Where a piece of knowledge comes from. */
public record Source(String id, String title, String address, String note) {
    /** What a rule rests on that names no source: what the trade knows, and nobody has printed. */
    public static final String COMMON_PRACTICE = "common-practice";
}
