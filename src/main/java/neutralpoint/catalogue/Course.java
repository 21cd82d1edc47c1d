package neutralpoint.catalogue;

/** A course of action. Wet courses open or dose the water; cleansing courses wash dirt out of it; repairing courses mend a part. */
public record Course(String id, String title, String means, boolean wet, boolean cleanses, boolean repairs) {}
