package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.rulebase.fact.Evidence;

/** Adds up the evidence for every cause and ranks them. */
final class CauseWeighing {
    private static final double LIKELY = 0.5;
    private static final double POSSIBLE = 0.1;

    /** A standing with the rank it has, worked out once. */
    private record Ranked(int rank, Assessment.CauseStanding standing) {
        static Ranked of(Assessment.CauseStanding standing) {
            return new Ranked(CauseWeighing.rank(standing), standing);
        }
    }

    private static final Comparator<Ranked> RANKING = Comparator.comparingInt(Ranked::rank)
            .thenComparingDouble(r -> -r.standing().decibans()).thenComparing(r -> r.standing().id());

    private CauseWeighing() {}

    static List<Assessment.CauseStanding> weigh(Catalogue catalogue, Assessment.RecognisedSystem system,
            List<Derived<Evidence>> evidence, UnaryOperator<String> family, Map<String, Ledger.Kept> kept) {
        Map<Cause, Ledger> ledgers = Ledger.each(catalogue.causes().values(), Cause::id, Cause::priorDecibans, evidence, family, kept);
        List<Ranked> ranked = new ArrayList<>(ledgers.size());
        ledgers.forEach((cause, ledger) -> ranked.add(Ranked.of(standing(cause, system, ledger))));
        return ranked(ranked);
    }

    /** Weighs those causes again of which some sign is explained; the others stay as they stood. */
    static List<Assessment.CauseStanding> again(List<Assessment.CauseStanding> first, Assessment.RecognisedSystem system,
            List<Derived<Evidence>> evidence, UnaryOperator<String> family, ExplainingAway explained) {
        List<Ranked> ranked = new ArrayList<>(first.size());
        for (Assessment.CauseStanding s : first) {
            ranked.add(Ranked.of(explained.speaksOf(s.id()) ? standing(s.cause(), system, Ledger.of(s.cause().priorDecibans(),
                    evidence.stream().filter(e -> e.fact().about().equals(s.id())).toList(), family, explained)) : s));
        }
        return ranked(ranked);
    }

    private static List<Assessment.CauseStanding> ranked(List<Ranked> standings) {
        standings.sort(RANKING);
        return standings.stream().map(Ranked::standing).toList();
    }

    private static Assessment.CauseStanding standing(Cause cause, Assessment.RecognisedSystem system, Ledger ledger) {
        boolean settles = ledger.has(Evidence.Kind.SETTLES);
        boolean excludes = ledger.has(Evidence.Kind.EXCLUDES) || !canBe(cause, system.possibleTraits());
        double probability = Ledger.probability(ledger.decibans());
        return new Assessment.CauseStanding(cause, status(settles, excludes, probability), ledger.decibans(),
                settled(settles, excludes, probability), ledger.entries());
    }

    /** A cause that needs a part which no plausible system has cannot be the trouble. */
    private static boolean canBe(Cause cause, Set<String> possibleTraits) {
        return cause.onlyOn().isEmpty() || cause.onlyOn().stream().anyMatch(possibleTraits::contains);
    }

    private static String status(boolean settles, boolean excludes, double probability) {
        if (settles != excludes) {
            return settles ? "settled" : "excluded";
        }
        return probability >= LIKELY ? "likely" : probability >= POSSIBLE ? "possible" : "unlikely";
    }

    /** A deciding test beats any sum; two that disagree leave the sum standing. */
    private static double settled(boolean settles, boolean excludes, double probability) {
        if (settles == excludes) {
            return probability;
        }
        return settles ? Math.max(probability, 0.99) : Math.min(probability, 0.001);
    }

    /** Settled first, then what something speaks for, then what nothing speaks for, excluded last. */
    private static int rank(Assessment.CauseStanding s) {
        return switch (s.status()) {
            case "settled" -> 0;
            case "excluded" -> 3;
            default -> s.isSupported() ? 1 : 2;
        };
    }
}
