package neutralpoint.rulebase.fact;

/** An answer that was given: "yes", "no", or the id of an option that was chosen. */
public record Observed(String finding, String answer) implements Sign {
    @Override
    public String shown() {
        return answer;
    }
}
