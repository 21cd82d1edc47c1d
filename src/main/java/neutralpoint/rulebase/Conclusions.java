package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What rules have concluded, kept by kind in the order of rule ids so that the order of firing never shows. */
final class Conclusions {
    private static final Comparator<Entry> BY_RULE =
            Comparator.comparingInt(Entry::place).thenComparing(e -> e.derived.fact().toString());

    private final Map<Class<?>, List<Entry>> byKind = new HashMap<>();
    /** The kinds that stand in order, nothing having been concluded since. */
    private final Set<Class<?>> sorted = new HashSet<>();
    /** The kinds of which something was withdrawn since. */
    private final Set<Class<?>> thinned = new HashSet<>();

    /** One conclusion, and the stage of the facts it rests on. */
    static final class Entry {
        private final RuleBase.Placed rule;
        private final Derived<Object> derived;
        private final int stage;
        private boolean withdrawn;

        private Entry(RuleBase.Placed rule, Object fact, int stage) {
            this.rule = rule;
            this.derived = new Derived<>(rule.info(), fact);
            this.stage = stage;
        }

        private int place() {
            return rule.place();
        }
    }

    /**
     * @param stage the latest stage of the facts it was concluded from
     */
    Entry add(RuleBase.Placed rule, Object fact, int stage) {
        Entry entry = new Entry(rule, fact, stage);
        byKind.computeIfAbsent(fact.getClass(), kind -> new ArrayList<>()).add(entry);
        sorted.remove(fact.getClass());
        return entry;
    }

    /** Takes a conclusion back, once what it rested on is no longer so; false if it was taken back before. */
    boolean withdraw(Entry entry) {
        if (entry.withdrawn) {
            return false;
        }
        entry.withdrawn = true;
        thinned.add(entry.derived.fact().getClass());
        return true;
    }

    /** Everything of one kind that certain rules concluded from facts up to a stage. */
    <T> List<Derived<T>> all(Class<T> kind, Predicate<RuleInfo> rules, int stage) {
        List<Entry> found = byKind.getOrDefault(kind, List.of());
        if (thinned.remove(kind)) {
            found.removeIf(e -> e.withdrawn);
        }
        if (sorted.add(kind) && found.size() > 1) {
            found.sort(BY_RULE);
        }
        List<Derived<T>> all = new ArrayList<>(found.size());
        for (Entry e : found) {
            if (e.stage <= stage && rules.test(e.derived.rule())) {
                all.add(e.derived.as(kind));
            }
        }
        return all;
    }

    /** Ids of all rules that concluded something that still stands. */
    Set<String> rules() {
        return byKind.values().stream().flatMap(List::stream).filter(e -> !e.withdrawn).map(e -> e.derived.rule().id())
                .collect(Collectors.toSet());
    }
}
