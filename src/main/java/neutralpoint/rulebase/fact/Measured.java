package neutralpoint.rulebase.fact;

import neutralpoint.document.Decimals;

/** A reading, in the unit its finding is catalogued with. */
public record Measured(String finding, double value, String unit) implements Sign {
    @Override
    public String shown() {
        String number = Decimals.given(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
