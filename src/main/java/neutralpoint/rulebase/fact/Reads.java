package neutralpoint.rulebase.fact;

/** What a survey reads as: one answer to a finding that is worked out and not asked. */
public record Reads(String finding, String answer) {

    public static Reads as(String finding, String answer) {
        return new Reads(finding, answer);
    }
}
