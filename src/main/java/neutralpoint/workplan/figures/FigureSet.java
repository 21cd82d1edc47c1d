package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * Some of a plan's figures.
 *
 * @param toMeasure sentences that say what to measure for those that could not be worked out, or only by a guess
 */
record FigureSet(List<Figure> figures, List<String> toMeasure) {
    static final FigureSet NOTHING = new FigureSet(List.of(), List.of());

    FigureSet {
        figures = List.copyOf(figures);
        toMeasure = List.copyOf(toMeasure);
    }

    static FigureSet of(Figure... figures) {
        return new FigureSet(List.of(figures), List.of());
    }

    static FigureSet missing(String sentence) {
        return new FigureSet(List.of(), List.of(sentence));
    }

    FigureSet and(FigureSet other) {
        List<Figure> all = new ArrayList<>(figures);
        all.addAll(other.figures);
        List<String> sentences = new ArrayList<>(toMeasure);
        sentences.addAll(other.toMeasure);
        return new FigureSet(all, sentences);
    }
}
