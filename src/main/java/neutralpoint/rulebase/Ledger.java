package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import neutralpoint.rulebase.fact.Evidence;

/**
 * The sum of the evidence about one thing. Within a family of findings the strongest piece on each
 * side counts in full and the rest a quarter, so that one observation seen twice is not counted
 * twice and one more supporting observation never lowers the sum.
 */
final class Ledger {
    private static final double DAMPED = 0.25;
    private static final Comparator<Derived<Evidence>> STRONGEST_FIRST =
            Comparator.comparingInt(e -> -Math.abs(e.fact().getDecibans()));
    private static final Comparator<WeighedEvidence> MOST_FIRST =
            Comparator.comparing((WeighedEvidence e) -> -Math.abs(e.decibans())).thenComparing(e -> e.rule().id());

    private final List<WeighedEvidence> entries;
    private final double decibans;

    private Ledger(int priorDecibans, List<WeighedEvidence> entries) {
        this.entries = entries;
        double sum = priorDecibans;
        for (WeighedEvidence e : entries) {
            sum += e.decibans();
        }
        this.decibans = sum;
    }

    /**
     * @param family    finds the family of a finding
     * @param explained signs that no longer count
     */
    static Ledger of(int priorDecibans, List<Derived<Evidence>> evidence, UnaryOperator<String> family, ExplainingAway explained) {
        if (evidence.isEmpty()) {
            return new Ledger(priorDecibans, List.of());
        }
        Map<String, List<Derived<Evidence>>> families = new LinkedHashMap<>();
        List<WeighedEvidence> entries = new ArrayList<>();
        for (Derived<Evidence> e : evidence) {
            Optional<String> by = explained.by(e.fact());
            if (by.isPresent()) {
                entries.add(weighed(e, 0, by));
            } else {
                String kin = e.fact().from().isEmpty() ? e.rule().id() : family.apply(finding(e.fact()));
                boolean positive = e.fact().getDecibans() > 0;
                families.computeIfAbsent(kin + (positive ? " for" : " against"), f -> new ArrayList<>()).add(e);
            }
        }
        families.values().forEach(members -> entries.addAll(damp(members)));
        entries.sort(MOST_FIRST);
        return new Ledger(priorDecibans, List.copyOf(entries));
    }

    /** A ledger with the evidence it was drawn up from. */
    record Kept(List<Derived<Evidence>> evidence, Ledger ledger) {

        /** True when this is the evidence, piece by piece, that the ledger was drawn up from. */
        @SuppressWarnings("ReferenceEquality")
        boolean isOf(List<Derived<Evidence>> other) {
            if (evidence.size() != other.size()) {
                return false;
            }
            for (int i = 0; i < evidence.size(); i++) {
                if (evidence.get(i) != other.get(i)) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * A ledger for each of the things that evidence can be about, in their own order.
     *
     * @param kept ledgers drawn up before, by id; one whose evidence is still the same is taken as it is
     */
    static <T> Map<T, Ledger> each(Collection<T> things, Function<T, String> id, ToIntFunction<T> priorDecibans,
            List<Derived<Evidence>> evidence, UnaryOperator<String> family, Map<String, Kept> kept) {
        Map<String, List<Derived<Evidence>>> byThing = new HashMap<>();
        evidence.forEach(e -> byThing.computeIfAbsent(e.fact().about(), about -> new ArrayList<>()).add(e));
        Map<T, Ledger> ledgers = new LinkedHashMap<>(2 * things.size());
        for (T thing : things) {
            List<Derived<Evidence>> about = byThing.getOrDefault(id.apply(thing), List.of());
            Kept before = kept.get(id.apply(thing));
            if (before == null || !before.isOf(about)) {
                before = new Kept(about, of(priorDecibans.applyAsInt(thing), about, family, ExplainingAway.NOTHING));
                kept.put(id.apply(thing), before);
            }
            ledgers.put(thing, before.ledger());
        }
        return ledgers;
    }

    private static List<WeighedEvidence> damp(List<Derived<Evidence>> members) {
        members.sort(STRONGEST_FIRST);
        List<WeighedEvidence> damped = new ArrayList<>();
        for (Derived<Evidence> e : members) {
            damped.add(weighed(e, damped.isEmpty() ? 1 : DAMPED, Optional.empty()));
        }
        return damped;
    }

    private static WeighedEvidence weighed(Derived<Evidence> e, double share, Optional<String> explainedBy) {
        return new WeighedEvidence(finding(e.fact()), shown(e.fact()), e.fact().getDecibans() * share, e.fact().kind(),
                e.rule(), explainedBy);
    }

    private static String finding(Evidence evidence) {
        return evidence.from().isEmpty() ? "" : evidence.from().get(0).finding();
    }

    private static String shown(Evidence evidence) {
        return evidence.from().size() == 1 ? evidence.from().get(0).shown()
                : String.join("; ", evidence.from().stream().map(f -> f.shown()).toList());
    }

    List<WeighedEvidence> entries() {
        return entries;
    }

    double decibans() {
        return decibans;
    }

    boolean has(Evidence.Kind kind) {
        for (WeighedEvidence e : entries) {
            if (e.kind() == kind) {
                return true;
            }
        }
        return false;
    }

    /** A weight in decibans as a probability: 10^(w/10) are the odds. */
    static double probability(double decibans) {
        return 1 / (1 + Math.pow(10, -decibans / 10));
    }
}
