package neutralpoint.rulebase;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.Lookup;
import neutralpoint.rulebase.fact.Contradiction;
import neutralpoint.rulebase.fact.Evidence;

/**
 * Which kind of system it is. Whole systems exclude each other, so their odds become shares of one;
 * features stand each by itself.
 */
final class ArrangementWeighing {
    private static final double SETTLED = 0.95;
    private static final double LIKELY = 0.6;
    /** A system with less than this share of probability is left out of what is plausible. */
    private static final double PLAUSIBLE = 0.03;

    private final Catalogue catalogue;
    private final UnaryOperator<String> family;

    ArrangementWeighing(Catalogue catalogue, UnaryOperator<String> family) {
        this.catalogue = catalogue;
        this.family = family;
    }

    Assessment.RecognisedSystem weigh(List<Derived<Evidence>> evidence, List<Derived<Contradiction>> contradictions, Map<String, Ledger.Kept> kept) {
        Map<ArrangementKind, Ledger> ledgers = Ledger.each(catalogue.arrangements().values(), ArrangementKind::id,
                ArrangementKind::priorDecibans, evidence, family, kept);
        Map<ArrangementKind, Double> shares = shares(ledgers);
        ArrangementKind chief = shares.entrySet().stream()
                .max(Comparator.comparingDouble((Map.Entry<ArrangementKind, Double> e) -> e.getValue())
                        .thenComparing(e -> e.getKey().id(), Comparator.reverseOrder()))
                .orElseThrow().getKey();
        List<ArrangementKind> features = catalogue.features().stream()
                .filter(f -> Ledger.probability(Lookup.known(ledgers, f).decibans()) >= LIKELY || settled(Lookup.known(ledgers, f))).toList();
        List<String> conflicts = contradictions.stream().map(c -> c.rule().because()).distinct().toList();
        return new Assessment.RecognisedSystem(chief.id(), chief.title(), status(Lookup.known(shares, chief), conflicts, settled(Lookup.known(ledgers, chief))),
                features.stream().map(ArrangementKind::id).toList(), conflicts, Lookup.known(shares, chief), byId(shares),
                certain(shares, features), possible(shares, ledgers));
    }

    private Map<ArrangementKind, Double> shares(Map<ArrangementKind, Ledger> ledgers) {
        Map<ArrangementKind, Double> odds = new LinkedHashMap<>();
        for (ArrangementKind system : catalogue.systems()) {
            Ledger ledger = Lookup.known(ledgers, system);
            odds.put(system, ledger.has(Evidence.Kind.EXCLUDES) && !ledger.has(Evidence.Kind.SETTLES)
                    ? 0 : Math.pow(10, ledger.decibans() / 10));
        }
        double total = odds.values().stream().mapToDouble(Double::doubleValue).sum();
        if (total == 0) {
            odds.replaceAll((system, zero) -> 1.0 / catalogue.systems().size());
            return odds;
        }
        odds.replaceAll((system, value) -> value / total);
        return odds;
    }

    private static Map<String, Double> byId(Map<ArrangementKind, Double> shares) {
        return shares.entrySet().stream().collect(Collectors.toMap(e -> e.getKey().id(), Map.Entry::getValue, (a, b) -> a, TreeMap::new));
    }

    private static boolean settled(Ledger ledger) {
        return ledger.has(Evidence.Kind.SETTLES) && !ledger.has(Evidence.Kind.EXCLUDES);
    }

    private static String status(double share, List<String> conflicts, boolean settled) {
        if (!conflicts.isEmpty()) {
            return "contradictory";
        }
        if (settled || share >= SETTLED) {
            return "settled";
        }
        return share >= LIKELY ? "likely" : "unclear";
    }

    /** Traits that every plausible system has, and those of the features found. */
    private static Set<String> certain(Map<ArrangementKind, Double> shares, List<ArrangementKind> features) {
        Set<String> traits = null;
        for (Map.Entry<ArrangementKind, Double> e : shares.entrySet()) {
            if (e.getValue() >= PLAUSIBLE) {
                Set<String> here = new HashSet<>(e.getKey().traits());
                if (traits == null) {
                    traits = here;
                } else {
                    traits.retainAll(here);
                }
            }
        }
        Set<String> all = new TreeSet<>(traits == null ? Set.of() : traits);
        features.forEach(f -> all.addAll(f.traits()));
        return all;
    }

    /** Traits of any plausible system, and of every feature not ruled out. */
    private Set<String> possible(Map<ArrangementKind, Double> shares, Map<ArrangementKind, Ledger> ledgers) {
        Set<String> all = new TreeSet<>();
        shares.forEach((system, share) -> {
            if (share >= PLAUSIBLE) {
                all.addAll(system.traits());
            }
        });
        catalogue.features().stream().filter(f -> !Lookup.known(ledgers, f).has(Evidence.Kind.EXCLUDES))
                .forEach(f -> all.addAll(f.traits()));
        return all;
    }
}
