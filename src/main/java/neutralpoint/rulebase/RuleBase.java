package neutralpoint.rulebase;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import neutralpoint.document.Documents;
import neutralpoint.document.Lookup;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.Likely;
import neutralpoint.rulebase.fact.PlannedWork;
import neutralpoint.rulebase.fact.Settled;
import neutralpoint.rulebase.fact.Standing;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;

/**
 * The compiled rules. Loading goes straight to the model made at build time, which is several times
 * faster than the class-path container; this is the one class that knows that call.
 */
public final class RuleBase {
    private static final String MODEL = "/META-INF/kie/neutralpoint/neutralpoint/drools-model";
    private static final String MOVES = "/neutralpoint/moves.json";
    private static final String ABSENT = "/neutralpoint/absent.json";
    private static final String SENTENCES = "/neutralpoint/sentences.json";
    private static final String COUNT = "/neutralpoint/rule-count.txt";

    /** Facts that appear one after another while a job is judged; no rule may ask that one is absent. */
    public static final Set<Class<?>> NEVER_ABSENT =
            Set.of(Arrangement.class, Settled.class, Likely.class, Standing.class, PlannedWork.class);

    private final KieBase kieBase;
    private final Map<String, RuleInfo> rules;
    private final Map<String, Placed> placed = new HashMap<>();
    private final Map<String, List<String>> moves;
    private final Set<String> absent;

    private RuleBase(KieBase kieBase, Map<String, List<String>> moves, Collection<String> absent, Map<String, String> sentences) {
        this.kieBase = kieBase;
        this.moves = moves;
        this.absent = Set.copyOf(absent);
        Map<String, RuleInfo> byName = new TreeMap<>();
        kieBase.getKiePackages().forEach(p -> p.getRules().forEach(r -> byName.put(r.getName(), RuleInfo.of(r, sentences))));
        this.rules = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
        rules.values().forEach(rule -> placed.put(rule.id(), new Placed(rule, placed.size())));
    }

    /** A rule and its place in the order of rule ids. */
    record Placed(RuleInfo info, int place) {}

    /**
     * Rules compiled elsewhere.
     *
     * @param moves  for each finding, what some rule moves because of it
     * @param absent findings of which some rule asks that an answer was not given
     * @param sentences the sentences of rules that are not annotated with one
     */
    public static RuleBase of(KieBase kieBase, Map<String, List<String>> moves, Collection<String> absent,
            Map<String, String> sentences) {
        return new RuleBase(kieBase, moves, absent, sentences);
    }

    /** Loads the rules; fails if their number is not the one that was compiled. */
    public static RuleBase load() {
        Map<String, List<String>> moves = new TreeMap<>();
        Documents.json(MOVES, resource(MOVES), 1).asFields().fields()
                .forEach((finding, moved) -> moves.put(finding, moved.asTexts()));
        Map<String, String> sentences = new HashMap<>();
        Documents.json(SENTENCES, resource(SENTENCES), 1).asFields().fields()
                .forEach((rule, sentence) -> sentences.put(rule, sentence.asText()));
        RuleBase loaded = new RuleBase(KieBaseBuilder.createKieBaseFromModel(models()), moves,
                Documents.json(ABSENT, resource(ABSENT), 1).asTexts(), sentences);
        int expected = Integer.parseInt(resource(COUNT).trim());
        if (loaded.rules.size() != expected) {
            throw new IllegalStateException("the rule base holds " + loaded.rules.size() + " rules where "
                    + expected + " were written; the program was packaged wrongly");
        }
        return loaded;
    }

    /** Every rule by its id. */
    public Map<String, RuleInfo> rules() {
        return rules;
    }

    /** The causes and arrangements that some rule moves, and the courses one bars, because of this finding. */
    public List<String> movedBy(String finding) {
        return moves.getOrDefault(finding, List.of());
    }

    /** A fresh session that remembers which rule concluded what. */
    Session open() {
        return new FreshSession(kieBase.newKieSession(), this);
    }

    /** A session that goes from one job to another by what differs between them. */
    LiveSession openLive() {
        return new LiveSession(kieBase.newKieSession(), this);
    }

    /** True when some rule asks that an answer to this finding was not given. */
    boolean isAskedAbsent(String finding) {
        return absent.contains(finding);
    }

    Placed placed(Rule rule) {
        return Lookup.known(placed, rule.getName());
    }

    private static List<Model> models() {
        List<Model> models = new ArrayList<>();
        for (String name : resource(MODEL).lines().filter(line -> line.startsWith("rules.")).toList()) {
            try {
                models.add(Class.forName(name).asSubclass(Model.class).getDeclaredConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("the compiled rules " + name + " are missing from the program", e);
            }
        }
        return models;
    }

    private static String resource(String name) {
        try (InputStream in = RuleBase.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program was packaged without " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
