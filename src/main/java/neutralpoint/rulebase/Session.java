package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;

/** One session of the rule engine, used for one assessment and thrown away. */
final class Session implements AutoCloseable {
    /** Far above what any call-out can fire; reaching it means rules feed each other. */
    private static final int LIMIT = 20_000;

    private final KieSession kie;
    private final Map<Class<?>, List<Derived<Object>>> derived = new HashMap<>();

    Session(KieSession kie, RuleBase ruleBase) {
        this.kie = kie;
        kie.addEventListener(new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() != null) {
                    derived.computeIfAbsent(event.getObject().getClass(), kind -> new ArrayList<>())
                            .add(new Derived<>(ruleBase.info(event.getRule()), event.getObject()));
                }
            }
        });
    }

    /** Puts facts in and lets the rules conclude what they can. */
    void tell(Collection<?> facts) {
        facts.forEach(kie::insert);
        if (kie.fireAllRules(LIMIT) >= LIMIT) {
            throw new IllegalStateException("the rules did not come to rest");
        }
    }

    /** Everything of one kind concluded so far, in the order of rule ids so that firing order never shows. */
    <T> List<Derived<T>> all(Class<T> kind) {
        return all(kind, rule -> true);
    }

    /** The same, of some rules only. */
    <T> List<Derived<T>> all(Class<T> kind, Predicate<RuleInfo> rules) {
        return derived.getOrDefault(kind, List.of()).stream().filter(d -> rules.test(d.rule()))
                .map(d -> new Derived<>(d.rule(), kind.cast(d.fact())))
                .sorted(Comparator.comparing((Derived<T> d) -> d.rule().id()).thenComparing(d -> d.fact().toString()))
                .toList();
    }

    /** Ids of all rules that concluded something so far. */
    Set<String> rulesFired() {
        return derived.values().stream().flatMap(List::stream).map(d -> d.rule().id()).collect(Collectors.toSet());
    }

    @Override
    public void close() {
        kie.dispose();
    }
}
