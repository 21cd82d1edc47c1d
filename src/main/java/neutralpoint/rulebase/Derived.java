package neutralpoint.rulebase;

import java.util.function.Function;

/** A conclusion together with the rule that drew it. */
record Derived<T>(RuleInfo rule, T fact) {

    /** The same conclusion, known to be of this kind. */
    @SuppressWarnings("unchecked")
    <R> Derived<R> as(Class<R> kind) {
        if (!kind.isInstance(fact)) {
            throw new ClassCastException(fact + " is no " + kind.getSimpleName());
        }
        return (Derived<R>) this;
    }

    <R> Derived<R> map(Function<T, R> change) {
        return new Derived<>(rule, change.apply(fact));
    }
}
