package neutralpoint.console;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Option;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Matches a householder's words with the complaints that are catalogued. */
final class ComplaintWords {
    private static final double SAME_WORD = 0.88;
    private static final Set<String> EMPTY_WORDS = Set.of("the", "a", "an", "is", "are", "my", "it", "and", "or", "in",
            "of", "to", "when", "that", "they", "there", "at", "on", "all", "not", "very");

    private ComplaintWords() {}

    /** The options that share most words with what was typed; several if they share equally many. */
    static List<Option> match(Finding finding, String typed) {
        List<String> words = split(typed);
        int best = finding.options().stream().mapToInt(o -> score(o, words)).max().orElse(0);
        return best == 0 ? List.of() : finding.options().stream().filter(o -> score(o, words) == best)
                .sorted(Comparator.comparing(o -> finding.options().indexOf(o))).toList();
    }

    private static int score(Option option, List<String> words) {
        List<String> own = split(option.id().replace('-', ' ') + " " + option.say());
        JaroWinklerSimilarity same = new JaroWinklerSimilarity();
        return (int) words.stream().filter(w -> own.stream().anyMatch(o -> same.apply(w, o) >= SAME_WORD)).count();
    }

    private static List<String> split(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .filter(w -> w.length() > 1 && !EMPTY_WORDS.contains(w)).distinct().toList();
    }
}
