package neutralpoint.rulebase;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The rule engine at work on one job: facts are told stage by stage, and what rules conclude from them can be read. */
interface Session extends AutoCloseable {
    /** Far above what any call-out can fire; reaching it means rules feed each other. */
    int LIMIT = 20_000;

    /** Tells the facts of the next stage and lets the rules conclude what they can. */
    void insertAndFire(Collection<?> facts);

    /** Everything of one kind that some rules concluded from what was told so far, in the order of rule ids. */
    <T> List<Derived<T>> all(Class<T> kind, Predicate<RuleInfo> rules);

    /** The same, of all rules. */
    default <T> List<Derived<T>> all(Class<T> kind) {
        return all(kind, rule -> true);
    }

    /** Ledgers drawn up so far of the evidence of one folder of rules, by the id of what they are about. */
    Map<String, Ledger.Kept> ledgers(String folder);

    /** Ids of all rules that concluded something so far. */
    Set<String> rulesFired();

    @Override
    void close();
}
