package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Source;
import neutralpoint.document.Where;
import neutralpoint.rulebase.fact.Strength;
import neutralpoint.workings.Workings;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;

/** Looks over the whole set of rules for what no single rule can show. */
public final class RuleAudit {
    private static final int LEAST_FOR = 2;

    private final Catalogue catalogue;
    private final List<RuleText> rules;
    private final List<Fault> faults = new ArrayList<>();

    /** Something wrong with the set of rules. */
    public record Fault(String where, String what) {}

    private RuleAudit(Catalogue catalogue, List<RuleText> rules) {
        this.catalogue = catalogue;
        this.rules = rules;
    }

    /**
     * @param firing for each rule, how many of the cases fire it
     * @param cases  how many cases there are
     */
    public static List<Fault> of(Catalogue catalogue, List<RuleText> rules, Map<String, Integer> firing, int cases) {
        RuleAudit audit = new RuleAudit(catalogue, rules);
        audit.firings(firing, cases);
        audit.sameConditions();
        audit.sentences();
        audit.sources();
        audit.causes();
        audit.findings();
        audit.orphans();
        audit.particularOrders();
        audit.closures();
        return List.copyOf(audit.faults);
    }

    private void firings(Map<String, Integer> firing, int cases) {
        for (RuleText rule : rules) {
            int fired = firing.getOrDefault(rule.id(), 0);
            if (fired == 0) {
                fault(rule.where(), rule.id() + ": no case fires it.");
            } else if (fired == cases && rule.note("always").isBlank()) {
                fault(rule.where(), rule.id() + ": every case fires it; if that is meant, say why in @always.");
            }
        }
    }

    /** Two rules that ask the same and conclude about the same thing are one too many, or contradict each other. */
    private void sameConditions() {
        Map<String, RuleText> before = new HashMap<>();
        for (RuleText rule : rules) {
            Conclusion c = rule.conclusion();
            String about = c.isEvidence() ? "evidence " + c.ids().get(0) : c.call() + c.ids();
            RuleText other = before.putIfAbsent(rule.folder() + ": " + rule.conditions() + " -> " + about, rule);
            if (other != null && !c.call().startsWith("Stop.")) {
                boolean contrary = other.conclusion().speaksFor() != c.speaksFor();
                fault(rule.where(), rule.id() + (contrary ? ": contradicts " : ": says the same as ") + other.id() + ".");
            }
        }
    }

    /** A sentence that is written says what the rule concludes: for or against, in the adverb of its grade, or that it settles or rules out. */
    private void sentences() {
        for (RuleText rule : rules) {
            String should = saying(rule.conclusion());
            if (!rule.note("says").isBlank() && !rule.note("says").matches(".*\\b" + should + "\\b.*")) {
                fault(rule.where(), rule.id() + ": the sentence should say \"" + should + "\", like its conclusion.");
            }
        }
    }

    private static String saying(Conclusion c) {
        return switch (c.call()) {
            case "Evidence.supports" -> c.strength().map(Strength::words).orElse("") + " for";
            case "Evidence.against" -> c.strength().map(Strength::words).orElse("") + " against";
            case "Evidence.settles" -> "settles?";
            case "Evidence.excludes" -> "rules?";
            default -> "";
        };
    }

    /** Common practice is what a rule rests on that names no source. */
    private void sources() {
        rules.stream().filter(r -> r.note("source").equals(Source.COMMON_PRACTICE)).forEach(r -> fault(r.where(),
                r.id() + ": leave @source out; a rule that names no source rests on common practice."));
    }

    private void causes() {
        Map<String, List<RuleText>> byCause = rules.stream().filter(r -> r.folder().equals("evidence"))
                .collect(Collectors.groupingBy(r -> r.conclusion().ids().get(0)));
        for (Cause cause : catalogue.causes().values()) {
            List<RuleText> about = byCause.getOrDefault(cause.id(), List.of());
            long speakingFor = about.stream().filter(r -> r.conclusion().speaksFor()).count();
            boolean decided = about.stream().anyMatch(r -> nearlySettles(r.conclusion()));
            if (speakingFor < LEAST_FOR) {
                fault("cause " + cause.id(), "has " + speakingFor + " rules for it; it needs at least two.");
            }
            if (about.stream().noneMatch(r -> r.conclusion().speaksAgainst())) {
                fault("cause " + cause.id(), "has no rule against it.");
            }
            if (!decided && cause.noDecidingTest().isBlank()) {
                fault("cause " + cause.id(), "no rule settles it; name its deciding test, or say in no-deciding-test why the trade has none.");
            } else if (decided && !cause.noDecidingTest().isBlank()) {
                fault("cause " + cause.id(), "a rule settles it though its entry says that no test does.");
            }
            if (!decided && cause.priorDecibans() + mostThatCanBeSaidFor(about) < 0) {
                fault("cause " + cause.id(), "cannot become likely even when every sign of it is found; its weights are out of scale.");
            }
        }
    }

    private static boolean nearlySettles(Conclusion c) {
        return c.decidesFor() || c.speaksFor() && c.strength().map(Strength.DECISIVE::equals).orElse(false);
    }

    /** The strongest sign of each family, added up. */
    private int mostThatCanBeSaidFor(List<RuleText> about) {
        Map<String, Integer> strongest = new HashMap<>();
        about.stream().filter(r -> r.conclusion().speaksFor()).forEach(r -> strongest.merge(family(r),
                r.conclusion().strength().map(Strength::decibans).orElse(Strength.DECISIVE.decibans()), Math::max));
        return strongest.values().stream().mapToInt(Integer::intValue).sum();
    }

    private String family(RuleText rule) {
        return ReferenceCheck.findings(rule).stream().findFirst().map(f -> catalogue.finding(f).family()).orElse(rule.id());
    }

    private void findings() {
        Set<String> read = rules.stream().flatMap(r -> ReferenceCheck.findings(r).stream()).collect(Collectors.toSet());
        read.addAll(Workings.TAKES);
        catalogue.competences().values().forEach(c -> read.addAll(c.shownBy().keySet()));
        catalogue.findings().keySet().stream().filter(f -> !read.contains(f))
                .forEach(f -> fault("finding " + f, "no rule and no sum reads it."));
    }

    private void orphans() {
        Set<String> sources = rules.stream().map(RuleText::source).collect(Collectors.toCollection(HashSet::new));
        catalogue.cautions().values().forEach(c -> sources.add(c.source()));
        catalogue.dangers().values().forEach(d -> sources.add(d.source()));
        catalogue.competences().values().forEach(c -> sources.add(c.source()));
        orphans("source", catalogue.sources().keySet(), sources, "nothing cites it.");
        Set<String> cautions = ids("AttachCaution"::equals);
        catalogue.dangers().values().forEach(d -> cautions.addAll(d.cautions()));
        catalogue.findings().values().forEach(f -> cautions.addAll(f.cautions()));
        catalogue.methods().values().forEach(m -> cautions.addAll(m.cautions()));
        rules.forEach(r -> cautions.add(r.note("caution")));
        orphans("caution", catalogue.cautions().keySet(), cautions, "no rule attaches it.");
        orphans("arrangement", catalogue.arrangements().keySet(), ids(call -> call.startsWith("Evidence.")), "no rule speaks of it.");
        orphans("method", catalogue.methods().keySet(), ids(call -> call.startsWith("Evidence.")), "no rule speaks of it.");
        orphans("danger", catalogue.dangers().keySet(), ids(call -> call.startsWith("Stop.")), "no rule stops for it.");
        orphans("competence", catalogue.competences().keySet(), ids("Needs"::equals), "no rule asks for it.");
        Set<String> asked = rules.stream().flatMap(r -> r.patterns().stream()).flatMap(p -> ReferenceCheck.kindsOfWork(p).stream()).collect(Collectors.toSet());
        orphans("kind of work", catalogue.workKinds().keySet(), asked, "no rule asks for it.");
        Set<String> done = catalogue.causes().values().stream().flatMap(c -> c.needs().stream()).collect(Collectors.toSet());
        orphans("kind of work", catalogue.workKinds().keySet(), done, "no cause is of it.");
        orphans("handling", catalogue.handlings().keySet(), ids("ForbidsHandling"::equals), "no rule forbids it.");
    }

    private Set<String> ids(Function<String, Boolean> call) {
        return rules.stream().filter(r -> call.apply(r.conclusion().call())).flatMap(r -> r.conclusion().ids().stream())
                .collect(Collectors.toCollection(HashSet::new));
    }

    private void orphans(String what, Collection<String> catalogued, Set<String> used, String says) {
        catalogued.stream().filter(id -> !used.contains(id)).forEach(id -> fault(what + " " + id, says));
    }

    /** What one step of a work plan closes another must put back, and the other way round. */
    private void closures() {
        for (RuleText rule : rules) {
            unpaired(rule, "closes", "reopens");
            unpaired(rule, "reopens", "closes");
        }
    }

    private void unpaired(RuleText rule, String word, String counterpart) {
        rule.conclusion().given(word).stream()
                .filter(thing -> rules.stream().noneMatch(r -> r.conclusion().given(counterpart).contains(thing)))
                .forEach(thing -> fault(rule.where(), rule.id() + ": " + word + " the " + thing + ", and no rule " + counterpart + " it."));
    }

    /** Particular orders must not run in a circle. */
    private void particularOrders() {
        DirectedAcyclicGraph<String, DefaultEdge> graph = new DirectedAcyclicGraph<>(DefaultEdge.class);
        catalogue.causes().keySet().forEach(graph::addVertex);
        for (RuleText rule : rules) {
            if (rule.conclusion().call().equals("ComesBefore.must")) {
                List<RuleText.Pattern> standings = rule.patterns().stream().filter(p -> p.fact().equals("Standing")).toList();
                for (String first : causes(standings.get(0))) {
                    for (String then : causes(standings.get(1))) {
                        addOrReport(graph, rule, first, then);
                    }
                }
            }
        }
    }

    private void addOrReport(DirectedAcyclicGraph<String, DefaultEdge> graph, RuleText rule, String first, String then) {
        try {
            graph.addEdge(first, then);
        } catch (IllegalArgumentException circle) {
            fault(rule.where(), rule.id() + ": puts " + first + " before " + then + ", which other rules turn round.");
        }
    }

    /** The causes that one standing of an order rule may be. */
    private List<String> causes(RuleText.Pattern standing) {
        List<String> named = ReferenceCheck.of(standing, "cause");
        List<String> phases = ReferenceCheck.of(standing, "phase");
        return named.isEmpty() ? catalogue.causes().values().stream().filter(c -> phases.contains(c.phase().word()))
                .map(Cause::id).toList() : named;
    }

    private void fault(Where where, String what) {
        fault(where.toString(), what);
    }

    private void fault(String where, String what) {
        faults.add(new Fault(where, what));
    }
}
