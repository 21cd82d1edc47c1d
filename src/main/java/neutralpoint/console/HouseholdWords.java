package neutralpoint.console;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Option;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Matches words as a householder says them with what is catalogued. */
final class HouseholdWords {
    private static final double SAME_WORD = 0.9;
    private static final Set<String> EMPTY_WORDS = Set.of("the", "a", "an", "is", "are", "my", "it", "and", "or", "in",
            "of", "to", "when", "that", "they", "there", "at", "on", "all", "not", "very", "what", "how", "which", "does");

    private HouseholdWords() {}

    /** The options that share most words with what was typed; several if they share equally many. */
    static List<Option> options(Finding finding, String typed) {
        return closest(finding.options(), typed, o -> o.id().replace('-', ' ') + " " + o.say());
    }

    /** The findings whose question, answers or household words share most with what was typed. */
    static List<Finding> findings(Collection<Finding> findings, String typed) {
        return closest(findings, typed, f -> f.id().replace('-', ' ') + " " + f.ask() + " " + String.join(" ", f.words())
                + " " + f.options().stream().map(Option::say).collect(Collectors.joining(" ")));
    }

    private static <T> List<T> closest(Collection<T> things, String typed, Function<T, String> text) {
        List<String> words = split(typed);
        return things.stream()
                .collect(Collectors.groupingBy(t -> score(split(text.apply(t)), words), TreeMap::new, Collectors.toList()))
                .entrySet().stream().filter(scored -> scored.getKey() > 0).reduce((lower, higher) -> higher)
                .map(Map.Entry::getValue).orElse(List.of());
    }

    private static long score(List<String> own, List<String> words) {
        JaroWinklerSimilarity same = new JaroWinklerSimilarity();
        return words.stream().filter(w -> own.stream().anyMatch(o -> same.apply(w, o) >= SAME_WORD)).count();
    }

    private static List<String> split(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .filter(w -> w.length() > 1 && !EMPTY_WORDS.contains(w)).distinct().toList();
    }
}
