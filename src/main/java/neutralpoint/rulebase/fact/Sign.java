package neutralpoint.rulebase.fact;

/** Something found on site, in the form rules read: one fact for each single answer. */
public sealed interface Sign permits Observed, Absent, Measured, Radiators {

    /** The catalogue id of the finding this answer belongs to. */
    String finding();

    /** The answer in the catalogue's own terms, as it is shown beside evidence. */
    String shown();
}
