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

    /** A cause with its evidence added up, and what deciding tests have said. */
    record WeighedCause(Cause cause, Ledger ledger, boolean settles, boolean excludes) implements Chances.Weight {

        String id() {
            return cause.id();
        }

        @Override
        public double decibans() {
            return ledger.decibans();
        }

        /** True when a deciding test says yes and none says no. */
        @Override
        public boolean isSettled() {
            return settles && !excludes;
        }

        /** True when a deciding test or the kind of system says no and no deciding test says yes. */
        @Override
        public boolean isExcluded() {
            return excludes && !settles;
        }
    }

    static List<WeighedCause> weigh(Catalogue catalogue, Assessment.RecognisedSystem system, List<Derived<Evidence>> evidence,
            UnaryOperator<String> family, Map<String, Ledger.Kept> kept) {
        Map<Cause, Ledger> ledgers = Ledger.each(catalogue.causes().values(), Cause::id, Cause::priorDecibans, evidence, family, kept);
        List<WeighedCause> weighed = new ArrayList<>(ledgers.size());
        ledgers.forEach((cause, ledger) -> weighed.add(weighed(cause, system, ledger)));
        return weighed;
    }

    /** Weighs those causes again of which some sign is explained; the others stay as they stood. */
    static List<WeighedCause> again(List<WeighedCause> first, Assessment.RecognisedSystem system, List<Derived<Evidence>> evidence,
            UnaryOperator<String> family, ExplainingAway explained) {
        List<WeighedCause> again = new ArrayList<>(first.size());
        for (WeighedCause w : first) {
            again.add(explained.speaksOf(w.id()) ? weighed(w.cause(), system, Ledger.of(w.cause().priorDecibans(),
                    evidence.stream().filter(e -> e.fact().about().equals(w.id())).toList(), family, explained)) : w);
        }
        return again;
    }

    /** Where each cause stands, best first. */
    static List<Assessment.CauseStanding> ranked(List<WeighedCause> weighed) {
        double[] chances = Chances.of(weighed);
        List<Ranked> ranked = new ArrayList<>(weighed.size());
        for (int i = 0; i < chances.length; i++) {
            WeighedCause w = weighed.get(i);
            ranked.add(Ranked.of(new Assessment.CauseStanding(w.cause(), status(w, chances[i]), w.decibans(), chances[i],
                    w.ledger().entries())));
        }
        ranked.sort(RANKING);
        return ranked.stream().map(Ranked::standing).toList();
    }

    private static WeighedCause weighed(Cause cause, Assessment.RecognisedSystem system, Ledger ledger) {
        return new WeighedCause(cause, ledger, ledger.has(Evidence.Kind.SETTLES),
                ledger.has(Evidence.Kind.EXCLUDES) || !canBe(cause, system.possibleTraits()));
    }

    /** A cause that needs a part which no plausible system has cannot be the trouble. */
    private static boolean canBe(Cause cause, Set<String> possibleTraits) {
        return cause.onlyOn().isEmpty() || cause.onlyOn().stream().anyMatch(possibleTraits::contains);
    }

    private static String status(WeighedCause cause, double chance) {
        if (cause.isSettled()) {
            return "settled";
        }
        return cause.isExcluded() ? "excluded" : chance >= LIKELY ? "likely" : chance >= POSSIBLE ? "possible" : "unlikely";
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
