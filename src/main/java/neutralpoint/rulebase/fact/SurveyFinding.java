package neutralpoint.rulebase.fact;

/** What a survey reads as: one answer to a finding that is worked out and not asked. */
public record SurveyFinding(String finding, String answer) {

    public static SurveyFinding of(String finding, String answer) {
        return new SurveyFinding(finding, answer);
    }
}
