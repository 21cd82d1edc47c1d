package neutralpoint.hydronics.emitter;

import java.util.Locale;
import neutralpoint.hydronics.Estimate;

/** The water counted part by part, held against a rule of thumb. */
public record ContentCheck(Estimate countedLitres, ContentRule rule) {

    /** False when no quantity would satisfy both: then something was left out, counted twice, or is unusual. */
    public boolean agrees() {
        return countedLitres.overlaps(rule.litres());
    }

    /** The outcome in one sentence. */
    public String inWords() {
        String compared = String.format(Locale.ROOT,
                "the parts add up to %.0f to %.0f litres, and %s makes %.0f to %.0f",
                countedLitres.low(), countedLitres.high(), rule.inWords(), rule.litres().low(), rule.litres().high());
        return agrees() ? "They agree: " + compared + "."
                : "They disagree: " + compared + "; look for a part left out or counted twice.";
    }
}
