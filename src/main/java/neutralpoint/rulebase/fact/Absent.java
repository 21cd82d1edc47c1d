package neutralpoint.rulebase.fact;

/** An option of a several-of finding that was looked for and is not there. */
public record Absent(String finding, String answer) implements Sign {
    @Override
    public String shown() {
        return "not " + answer;
    }
}
