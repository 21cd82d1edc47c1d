package neutralpoint.rulebase.fact;

/** An option of a several-of finding that was looked for and is not there. */
public record Lacks(String finding, String answer) implements Seen {
    @Override
    public String shown() {
        return "not " + answer;
    }
}
