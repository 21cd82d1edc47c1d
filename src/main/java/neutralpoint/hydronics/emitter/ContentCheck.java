package neutralpoint.hydronics.emitter;

import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;

/** The water counted part by part, held against a rule of thumb. */
public record ContentCheck(Estimate countedLitres, ContentRule rule) {

    /** False when no quantity would satisfy both: then something was left out, counted twice, or is unusual. */
    public boolean agrees() {
        return countedLitres.overlaps(rule.litres());
    }

    /** The outcome in one sentence. */
    public String inWords() {
        String compared = "the parts add up to " + ends(countedLitres) + " litres, and " + rule.inWords() + " makes " + ends(rule.litres());
        return agrees() ? "They agree: " + compared + "."
                : "They disagree: " + compared + "; look for a part left out or counted twice.";
    }

    private static String ends(Estimate litres) {
        return Decimals.coarse(litres.low()) + " to " + Decimals.coarse(litres.high());
    }
}
