package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;

/**
 * Some of a plan's figures.
 *
 * @param toMeasure sentences that say what to measure for those that could not be worked out, or only by a guess
 */
record Part(List<Figure> figures, List<String> toMeasure) {
    static final Part NOTHING = new Part(List.of(), List.of());

    Part {
        figures = List.copyOf(figures);
        toMeasure = List.copyOf(toMeasure);
    }

    static Part of(Figure... figures) {
        return new Part(List.of(figures), List.of());
    }

    static Part missing(String sentence) {
        return new Part(List.of(), List.of(sentence));
    }

    Part and(Part other) {
        List<Figure> all = new ArrayList<>(figures);
        all.addAll(other.figures);
        List<String> sentences = new ArrayList<>(toMeasure);
        sentences.addAll(other.toMeasure);
        return new Part(all, sentences);
    }
}
