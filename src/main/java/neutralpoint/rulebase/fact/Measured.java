package neutralpoint.rulebase.fact;

/** A reading, in the unit its finding is catalogued with. */
public record Measured(String finding, double value, String unit) implements Seen {
    @Override
    public String shown() {
        String number = value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
