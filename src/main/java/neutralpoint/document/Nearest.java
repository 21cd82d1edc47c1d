package neutralpoint.document;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** The nearest valid name to one that was misspelt. */
public final class Nearest {
    private static final double TOO_FAR = 0.6;

    private Nearest() {}

    public static Optional<String> to(String word, Collection<String> valid) {
        JaroWinklerSimilarity similarity = new JaroWinklerSimilarity();
        return valid.stream()
                .sorted()
                .max(Comparator.comparingDouble(v -> similarity.apply(word, v)))
                .filter(v -> similarity.apply(word, v) > TOO_FAR);
    }

    /** The end of a sentence about an unknown name: names the nearest valid one, or lists a few. */
    public static String hint(String word, Collection<String> valid) {
        return to(word, valid)
                .map(near -> "; did you mean \"" + near + "\"?")
                .orElseGet(() -> valid.isEmpty() || valid.size() > 12
                        ? "."
                        : "; one of " + String.join(", ", valid.stream().sorted().toList()) + " belongs here.");
    }
}
