package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Phase;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Where;
import neutralpoint.rulebase.RuleBase;
import neutralpoint.rulebase.fact.HouseNote;

/** Holds every id that a rule names against the catalogue; to the rule compiler they are just strings. */
public final class ReferenceCheck {
    /** Facts that are something found on site. */
    static final Set<String> SEEN = Set.of("Observed", "Absent", "Measured", "Radiators");

    private static final Set<String> CONCLUSIONS = Set.of("Evidence.supports", "Evidence.against", "Evidence.settles",
            "Evidence.excludes", "Explains.awayFrom", "LeadsTo", "AttachCaution", "BarsCourse", "Remedy", "Needs", "InsideAppliance", "Stop.refer",
            "Stop.clearBy", "ForbidsHandling", "ExtraStep", "ComesBefore.must", "ComesBefore.usually", "AlsoCures", "Contradiction.between", "SurveyFinding.of", "Step.called", "Step.asked",
            "Step.clearing", "WaterPath.shut", "WaterPath.shared", "WaterPath.doubtful", "Pressure.limit");
    private static final Pattern STANDS_OUT = Pattern.compile("active|answered|chief|probability\\s*>=?\\s*0\\.[1-9]\\d*");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern TRAIT = Pattern.compile("(?:possibleT|t)raits\\s+(?:not\\s+)?contains\\s+\"([^\"]*)\"");
    private static final Pattern FEATURE = Pattern.compile("features\\s+(?:not\\s+)?contains\\s+\"([^\"]*)\"");

    private static final Pattern NEEDS = Pattern.compile("needs\\s+(?:not\\s+)?contains\\s+\"([^\"]*)\"");

    private final Catalogue catalogue;
    private final Set<String> weighed = new HashSet<>();

    public ReferenceCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
        weighed.addAll(catalogue.causes().keySet());
        weighed.addAll(catalogue.arrangements().keySet());
        weighed.addAll(catalogue.methods().keySet());
    }

    /** Refuses the first rule that lacks a note or names something that is not catalogued. */
    public void check(List<RuleText> rules) {
        rules.forEach(this::check);
        PlanStepCheck.check(rules, catalogue);
    }

    /** For each finding, the causes and arrangements that some rule moves, and the courses one bars, because of it. */
    public static Map<String, List<String>> moves(List<RuleText> rules) {
        Map<String, Set<String>> moves = new TreeMap<>();
        for (RuleText rule : rules) {
            Conclusion c = rule.conclusion();
            if (c.call().startsWith("WaterPath.")) {
                findings(rule).forEach(f -> moves.computeIfAbsent(f, x -> new TreeSet<>()).addAll(PathCheck.CLEANSES));
            } else if ((c.isEvidence() && !rule.folder().equals("method")) || c.call().equals("BarsCourse")) {
                findings(rule).forEach(f -> moves.computeIfAbsent(f, x -> new TreeSet<>()).add(c.ids().get(0)));
            }
        }
        Map<String, List<String>> sorted = new TreeMap<>();
        moves.forEach((finding, moved) -> sorted.put(finding, List.copyOf(moved)));
        return sorted;
    }

    /** The findings a rule looks at. */
    public static List<String> findings(RuleText rule) {
        return rule.patterns().stream().filter(p -> SEEN.contains(p.fact()))
                .flatMap(p -> of(p, "finding").stream()).distinct().toList();
    }

    /** The findings of which some rule asks that an answer was not given; an answer more can take its conclusion away. */
    public static List<String> absent(List<RuleText> rules) {
        return rules.stream().filter(r -> r.patterns().stream().noneMatch(p -> p.fact().equals("Planning")))
                .flatMap(r -> r.patterns().stream()).filter(p -> p.absent() && SEEN.contains(p.fact()))
                .flatMap(p -> of(p, "finding").stream()).distinct().sorted().toList();
    }

    private void check(RuleText rule) {
        if (rule.note("because").isBlank()) {
            throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs @because, the mechanism behind it.");
        }
        RuleSentence.check(rule);
        known(rule.source(), catalogue.sources().keySet(), "source", rule.where());
        rule.patterns().forEach(this::check);
        boolean planned = rule.patterns().stream().anyMatch(p -> p.fact().equals("Planning"));
        rule.patterns().stream().filter(p -> p.absent() && !planned && !SEEN.contains(p.fact()) && !p.fact().equals("RadiatorSurvey")).findFirst()
                .ifPresent(p -> {
                    throw new BadInput(p.where(), "\"not\" goes with what was found or surveyed, not with " + p.fact()
                            + ", which other rules conclude; only work plan rules may ask that.");
                });
        check(rule.conclusion(), rule);
    }

    private void check(RuleText.Pattern pattern) {
        of(pattern, "cause").forEach(id -> known(id, catalogue.causes().keySet(), "cause", pattern.where()));
        of(pattern, "danger").forEach(id -> known(id, catalogue.dangers().keySet(), "danger", pattern.where()));
        of(pattern, "about").forEach(id -> known(id, HouseNote.ABOUT, "thing told", pattern.where()));
        of(pattern, "course").forEach(id -> known(id, catalogue.courses().keySet(), "course", pattern.where()));
        of(pattern, "method").forEach(id -> known(id, catalogue.methods().keySet(), "method", pattern.where()));
        of(pattern, "system").forEach(id -> known(id, catalogue.arrangements().keySet(), "arrangement", pattern.where()));
        pattern.constraints().forEach(c -> all(FEATURE, c).forEach(id ->
                known(id, catalogue.arrangements().keySet(), "feature", pattern.where())));
        PathCheck.check(pattern);
        of(pattern, "phase").forEach(id -> known(id, Phase.words(), "phase", pattern.where()));
        pattern.constraints().forEach(c -> all(TRAIT, c).forEach(id -> known(id, catalogue.traits(), "trait", pattern.where())));
        kindsOfWork(pattern).forEach(id -> known(id, catalogue.workKinds().keySet(), "kind of work", pattern.where()));
        if (pattern.absent() && RuleBase.NEVER_ABSENT.stream().anyMatch(kind -> kind.getSimpleName().equals(pattern.fact()))) {
            throw new BadInput(pattern.where(), "\"not\" cannot go with " + pattern.fact() + ", which appears one after another; "
                    + "ask for what is there instead.");
        }
        if (pattern.fact().equals("Standing") && pattern.constraints().stream().noneMatch(c -> STANDS_OUT.matcher(c).matches())) {
            throw new BadInput(pattern.where(), "a condition on Standing says active, answered, chief or probability >= 0.1 or more: "
                    + "of causes that are less than possible the rules are not told.");
        }
        if (SEEN.contains(pattern.fact())) {
            if (pattern.absent() && of(pattern, "finding").isEmpty()) {
                throw new BadInput(pattern.where(), "a condition that nothing was found names its finding, such as "
                        + "not Observed(finding == \"…\", answer == \"…\").");
            }
            List<String> findings = of(pattern, "finding");
            findings.forEach(id -> known(id, catalogue.findings().keySet(), "finding", pattern.where()));
            findings.forEach(id -> checkAnswers(catalogue.finding(id), pattern));
        }
    }

    private static void checkAnswers(Finding finding, RuleText.Pattern pattern) {
        Set<String> valid = new HashSet<>(finding.optionIds());
        if (finding.type() == AnswerType.SEVERAL_OF) {
            valid.add("none");
        }
        of(pattern, "answer").forEach(word -> known(word, valid, "answer of " + finding.id(), pattern.where()));
    }

    private void check(Conclusion c, RuleText rule) {
        Where where = c.where();
        known(c.call(), CONCLUSIONS, "conclusion", where);
        switch (c.call()) {
            case "Evidence.supports", "Evidence.against", "Evidence.settles", "Evidence.excludes" -> {
                known(c.ids().get(0), weighed, "cause, arrangement or method", where);
                if (rule.folder().equals("evidence")) {
                    liesWithItsCause(rule);
                }
                if (c.call().equals("Evidence.excludes") && rule.folder().equals("method")) {
                    needsWayOut(rule);
                }
            }
            case "Explains.awayFrom" -> c.ids().forEach(id -> known(id, catalogue.causes().keySet(), "cause", where));
            case "AttachCaution" -> known(c.ids().get(0), catalogue.cautions().keySet(), "caution", where);
            case "BarsCourse" -> {
                c.ids().forEach(id -> known(id, catalogue.courses().keySet(), "course", where));
                needsWayOut(rule);
            }
            case "Stop.refer" -> known(c.ids().get(0), catalogue.dangers().keySet(), "danger", where);
            case "Stop.clearBy" -> {
                known(c.ids().get(0), catalogue.courses().keySet(), "course", where);
                known(c.ids().get(1), catalogue.dangers().keySet(), "danger", where);
                clearedOnSite(catalogue.danger(c.ids().get(1)), rule);
            }
            case "Remedy" -> c.ids().forEach(id -> known(id, catalogue.courses().keySet(), "course", where));
            case "Needs" -> known(c.ids().get(0), catalogue.competences().keySet(), "competence", where);
            case "ForbidsHandling" -> known(c.ids().get(0), catalogue.handlings().keySet(), "handling", where);
            case "SurveyFinding.of" -> {
                known(c.ids().get(0), catalogue.findings().keySet(), "finding", where);
                known(c.ids().get(1), catalogue.finding(c.ids().get(0)).optionIds(), "answer of " + c.ids().get(0), where);
            }
            case "WaterPath.shut", "WaterPath.shared", "WaterPath.doubtful" -> PathCheck.check(c, rule);
            case "ExtraStep" -> {
                known(c.ids().get(0), Phase.words(), "phase", where);
                needsAction(rule);
            }
            default -> { }
        }
    }

    /** All that is known of a cause stands in one file. */
    private void liesWithItsCause(RuleText rule) {
        String cause = rule.conclusion().ids().get(0);
        known(cause, catalogue.causes().keySet(), "cause", rule.conclusion().where());
        String file = catalogue.cause(cause).subject() + "/" + cause;
        if (!rule.subject().equals(file)) {
            throw new BadInput(rule.where(), "\"" + rule.id() + "\" is about " + cause + "; its place is rules/evidence/" + file + ".drl.");
        }
    }

    /** What can be cleared on site has what clears it in its catalogue entry. */
    private static void clearedOnSite(Danger danger, RuleText rule) {
        if (danger.clearing().isEmpty()) {
            throw new BadInput(rule.conclusion().where(), "\"" + rule.id() + "\" has the danger \"" + danger.id()
                    + "\" cleared on site, and its entry in dangers.yaml has no \"clearing\".");
        }
    }

    /** What forbids a cleanse says what comes first, and when a cleanse may be planned after all. */
    private static void needsWayOut(RuleText rule) {
        if (rule.note("first").isBlank() || rule.note("then").isBlank()) {
            throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs @first, the work that must come first, "
                    + "and @then, when a cleanse may be planned.");
        }
    }

    private static void needsAction(RuleText rule) {
        if (rule.note("action").isBlank()) {
            throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs an @action that says what to do.");
        }
    }

    /** The kinds of work a condition asks for. */
    static List<String> kindsOfWork(RuleText.Pattern pattern) {
        return pattern.constraints().stream().flatMap(c -> all(NEEDS, c).stream()).toList();
    }

    /** The quoted words a condition compares a field with. */
    static List<String> of(RuleText.Pattern pattern, String field) {
        Pattern comparison = Pattern.compile("^\\s*" + field + "\\s*(?:==|!=|(?:not\\s+)?in\\b)(.*)", Pattern.DOTALL);
        List<String> words = new ArrayList<>();
        for (String constraint : pattern.constraints()) {
            Matcher m = comparison.matcher(constraint);
            if (m.matches()) {
                words.addAll(all(QUOTED, m.group(1)));
            }
        }
        return words;
    }

    static void known(String id, Collection<String> valid, String what, Where where) {
        if (!valid.contains(id)) {
            throw new BadInput(where, "\"" + id + "\" is not a known " + what + Nearest.hint(id, valid));
        }
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher m = pattern.matcher(text);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found;
    }
}
