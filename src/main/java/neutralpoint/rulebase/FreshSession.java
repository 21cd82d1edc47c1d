package neutralpoint.rulebase;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;

/** A session used for one assessment and thrown away; every verdict comes from one. */
final class FreshSession implements Session {
    private final KieSession kie;
    private final Conclusions conclusions = new Conclusions();

    FreshSession(KieSession kie, RuleBase ruleBase) {
        this.kie = kie;
        kie.addEventListener(new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() != null) {
                    conclusions.add(ruleBase.placed(event.getRule()), event.getObject(), 0);
                }
            }
        });
    }

    @Override
    public void insertAndFire(Collection<?> facts) {
        facts.forEach(kie::insert);
        if (!facts.isEmpty() && kie.fireAllRules(LIMIT) >= LIMIT) {
            throw new IllegalStateException("the rules did not come to rest");
        }
    }

    @Override
    public <T> List<Derived<T>> all(Class<T> kind, Predicate<RuleInfo> rules) {
        return conclusions.all(kind, rules, 0);
    }

    @Override
    public Map<String, Ledger.Kept> ledgers(String folder) {
        return new HashMap<>();
    }

    @Override
    public Set<String> rulesFired() {
        return conclusions.rules();
    }

    @Override
    public void close() {
        kie.dispose();
    }
}
