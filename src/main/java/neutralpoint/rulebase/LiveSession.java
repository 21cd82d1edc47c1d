package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import neutralpoint.rulebase.fact.Sign;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;

/**
 * A session that goes from one job to the next by what differs between them: of each stage the facts that are no
 * longer so are taken out with everything concluded from them, and the new ones are put in. For what-ifs only; not for
 * more than one thread.
 *
 * <p>A conclusion drawn from a later stage, left over from the job before, is not read until that stage has been told
 * again. Where something changes that a rule asks to be absent, or that is counted, {@link NotExchangeable} is thrown
 * and the job has to be judged in a fresh session; this one stays of use.
 */
final class LiveSession implements Session {
    private final KieSession kie;
    private final RuleBase ruleBase;
    private final Conclusions conclusions = new Conclusions();
    private final List<StageFacts> stages = new ArrayList<>();
    private final IdentityHashMap<FactHandle, Inserted> told = new IdentityHashMap<>();
    private final Map<String, Map<String, Ledger.Kept>> ledgers = new HashMap<>();
    private List<? extends FactHandle> matched = List.of();
    private int stage = -1;
    private boolean begun;

    /** A change that cannot be followed by exchanging facts. */
    static final class NotExchangeable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotExchangeable() {
            super("what is asked to be absent, or is counted, changes", null, false, false);
        }
    }

    /** The facts of one stage as they were last told. */
    private static final class StageFacts {
        private List<?> facts = List.of();
        private final Map<Object, FactHandle> handles = new HashMap<>();
    }

    /** The stage of one fact, told or concluded, and what rests on it. */
    private record Inserted(int stage, List<Resting> resting) {}

    private record Resting(Conclusions.Entry conclusion, FactHandle handle) {}

    LiveSession(KieSession kie, RuleBase ruleBase) {
        this.kie = kie;
        this.ruleBase = ruleBase;
        kie.addEventListener(new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                matched = event.getMatch().getFactHandles();
            }
        });
        kie.addEventListener(new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() != null) {
                    conclude(event);
                }
            }
        });
    }

    private void conclude(ObjectInsertedEvent event) {
        List<Inserted> from = matched.stream().map(told::get).filter(t -> t != null).toList();
        int latest = from.stream().mapToInt(Inserted::stage).max().orElse(0);
        Resting resting = new Resting(conclusions.add(ruleBase.placed(event.getRule()), event.getObject(), latest), event.getFactHandle());
        from.forEach(t -> t.resting().add(resting));
        told.put(event.getFactHandle(), new Inserted(latest, new ArrayList<>()));
    }

    /** Begins with the first stage of the same or another job. */
    void begin() {
        begun |= stage >= 0;
        stage = -1;
    }

    @Override
    public void insertAndFire(Collection<?> facts) {
        stage++;
        if (stage == stages.size()) {
            stages.add(new StageFacts());
        }
        StageFacts now = stages.get(stage);
        List<?> wanted = List.copyOf(facts);
        if (!wanted.equals(now.facts)) {
            exchange(now, wanted);
            if (kie.fireAllRules(LIMIT) >= LIMIT) {
                throw new IllegalStateException("the rules did not come to rest");
            }
        }
    }

    private void exchange(StageFacts now, List<?> wanted) {
        Set<Object> kept = new HashSet<>(wanted);
        List<Object> gone = now.handles.keySet().stream().filter(fact -> !kept.contains(fact)).toList();
        List<?> fresh = wanted.stream().filter(fact -> !now.handles.containsKey(fact)).toList();
        boolean followed = gone.stream().allMatch(this::isExchangeable) && fresh.stream().allMatch(this::isExchangeable)
                && kept.size() == wanted.size() && now.handles.size() == now.facts.size();
        if (begun && !followed) {
            throw new NotExchangeable();
        }
        gone.forEach(fact -> takeOut(now.handles.remove(fact)));
        for (Object fact : fresh) {
            FactHandle handle = kie.insert(fact);
            told.put(handle, new Inserted(stage, new ArrayList<>()));
            now.handles.put(fact, handle);
        }
        now.facts = wanted;
    }

    private boolean isExchangeable(Object fact) {
        return fact instanceof Sign seen ? !ruleBase.isAskedAbsent(seen.finding()) : RuleBase.NEVER_ABSENT.contains(fact.getClass());
    }

    private void takeOut(FactHandle handle) {
        kie.delete(handle);
        for (Resting r : told.remove(handle).resting()) {
            if (conclusions.withdraw(r.conclusion())) {
                takeOut(r.handle());
            }
        }
    }

    @Override
    public <T> List<Derived<T>> all(Class<T> kind, Predicate<RuleInfo> rules) {
        return conclusions.all(kind, rules, stage);
    }

    @Override
    public Map<String, Ledger.Kept> ledgers(String folder) {
        return ledgers.computeIfAbsent(folder, f -> new HashMap<>());
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
