package neutralpoint.rulebase;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Method;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.ForbidsHandling;

/** Chooses the method of a cleansing course: the one most is said for among those not forbidden here. */
final class MethodChoice {
    private final Map<Method, Ledger> ledgers;
    private final List<Assessment.Avoid> avoid;

    MethodChoice(Catalogue catalogue, List<Derived<Evidence>> evidence, List<Derived<ForbidsHandling>> forbids,
            UnaryOperator<String> family, Map<String, Ledger.Kept> kept) {
        this.ledgers = Ledger.each(catalogue.methods().values(), Method::id, Method::priorDecibans, evidence, family, kept);
        Map<String, Assessment.Avoid> first = new LinkedHashMap<>();
        forbids.forEach(f -> first.putIfAbsent(f.fact().handling(),
                new Assessment.Avoid(catalogue.handling(f.fact().handling()), f.rule().because())));
        this.avoid = List.copyOf(first.values());
    }

    Optional<Assessment.Cleansing> of(Course course) {
        return ledgers.entrySet().stream()
                .filter(e -> e.getKey().courses().contains(course.id()) && !e.getValue().has(Evidence.Kind.EXCLUDES))
                .min(Comparator.comparingDouble((Map.Entry<Method, Ledger> e) -> -e.getValue().decibans())
                        .thenComparing(e -> e.getKey().id()))
                .map(e -> new Assessment.Cleansing(course, e.getKey(), because(e.getValue()), ruledOut(course), avoid));
    }

    /** The methods that could carry out this course but are forbidden here. */
    List<Assessment.RuledOut> ruledOut(Course course) {
        return ledgers.entrySet().stream().filter(e -> e.getKey().courses().contains(course.id()))
                .flatMap(e -> e.getValue().entries().stream().filter(w -> w.kind() == Evidence.Kind.EXCLUDES).limit(1)
                        .map(w -> new Assessment.RuledOut(e.getKey(), w.rule().because())))
                .toList();
    }

    private static List<String> because(Ledger ledger) {
        return ledger.entries().stream().filter(WeighedEvidence::isFor).map(e -> e.rule().because()).distinct().toList();
    }
}
