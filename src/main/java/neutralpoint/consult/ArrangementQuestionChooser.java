package neutralpoint.consult;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Option;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/** Chooses the one observation that would best tell what kind of system it is. */
public final class ArrangementQuestionChooser {
    /** What tells most at a glance, asked first. */
    private static final List<String> FIRST = List.of(FindingId.HEATING_FILLED_BY, FindingId.HOT_WATER_MADE_BY);
    private static final Set<AnswerType> WITH_OPTIONS = Set.of(AnswerType.YES_NO, AnswerType.ONE_OF, AnswerType.SEVERAL_OF);
    /** An observation that leaves the certainty within this of what it was is not worth a walk. */
    private static final double LEAST_GAIN = 0.02;

    private final Assessor assessor;
    private final Catalogue catalogue;
    private final Set<String> systems;

    public ArrangementQuestionChooser(Assessor assessor, Catalogue catalogue) {
        this.assessor = assessor;
        this.catalogue = catalogue;
        this.systems = catalogue.systems().stream().map(ArrangementKind::id).collect(Collectors.toSet());
    }

    /** Empty when the system is settled, or nothing left to look at would make it more certain. */
    public Optional<Finding> best(Assessment now) {
        if (now.arrangement().status().equals("settled")) {
            return Optional.empty();
        }
        Optional<Finding> first = FIRST.stream().filter(f -> !now.known().isAnswered(f)).findFirst().map(catalogue::finding);
        return first.isPresent() ? first : catalogue.findings().values().stream().filter(f -> tells(f, now)).parallel()
                .map(f -> new Gain(f, certainty(f, now) - worth(now.arrangement())))
                .filter(g -> g.gain() > LEAST_GAIN)
                .max(Comparator.comparingDouble(Gain::each).thenComparing(g -> g.finding().id()))
                .map(Gain::finding);
    }

    /** What an observation adds to the certainty. */
    private record Gain(Finding finding, double gain) {
        /** For each minute; saying it takes one as well. */
        double each() {
            return gain / (1 + finding.minutes());
        }
    }

    private boolean tells(Finding f, Assessment now) {
        return WITH_OPTIONS.contains(f.type()) && !f.workedOut() && !now.known().isAnswered(f.id())
                && !f.id().equals(FindingId.COMPLAINT) && !f.id().equals(FindingId.RED_LINES)
                && (f.onlyOn().isEmpty() || f.onlyOn().stream().anyMatch(now.arrangement().possibleTraits()::contains))
                && assessor.movedBy(f.id()).stream().anyMatch(systems::contains);
    }

    /** The share the likeliest system would have, over the answers as often as they are usual. */
    private double certainty(Finding f, Assessment now) {
        double usual = f.options().stream().mapToDouble(Option::usual).sum();
        return f.options().stream().mapToDouble(o -> o.usual() / usual
                * worth(assessor.assess(now.job().with(f.id(), f.answering(o))).arrangement())).sum();
    }

    /** How sure a system is; answers that contradict each other make it no better than an even chance. */
    private static double worth(Assessment.RecognisedSystem system) {
        return system.status().equals("contradictory") ? system.share() / 2 : system.share();
    }
}
