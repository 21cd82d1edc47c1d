package neutralpoint.rulebase;

import java.util.function.Function;

/** A conclusion together with the rule that drew it. */
record Derived<T>(RuleInfo rule, T fact) {

    <R> Derived<R> map(Function<T, R> change) {
        return new Derived<>(rule, change.apply(fact));
    }
}
