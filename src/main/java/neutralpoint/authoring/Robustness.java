package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Lookup;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;
import neutralpoint.rulebase.RuleInfo;
import neutralpoint.rulebase.fact.Strength;

/** Judges cases as they are, with an answer missing, with an answer wrong, and with every weight moved. */
public final class Robustness {
    /** Left alone: a danger or a complaint that is not named is another call-out, not a slip of the pen. */
    private static final Set<String> FIXED = Set.of(FindingId.RED_LINES, FindingId.COMPLAINT);

    private final RuleBase rules;
    private final Catalogue catalogue;
    private final Assessor assessor;

    public Robustness(RuleBase rules, Catalogue catalogue) {
        this.rules = rules;
        this.catalogue = catalogue;
        this.assessor = new Assessor(rules, catalogue);
    }

    public List<Score.JudgedCase> asTheyAre(List<CaseStudy> cases) {
        return cases.parallelStream().map(c -> new Score.JudgedCase(c, assessor.assess(c.job()))).toList();
    }

    /** Every case once for each of its answers, with that answer turned to not checked. */
    public List<Score.JudgedCase> oneAnswerMissing(List<CaseStudy> cases) {
        return cases.parallelStream().flatMap(c -> changeable(c).stream().map(f ->
                new Score.JudgedCase(c, assessor.assess(c.job().with(f, Answer.NOT_CHECKED))))).toList();
    }

    /** Every case once for each of its answers, with another answer in its place, drawn by the seed. */
    public List<Score.JudgedCase> oneAnswerWrong(List<CaseStudy> cases, long seed) {
        Random random = new Random(seed);
        List<Map.Entry<CaseStudy, Job>> wrong = new ArrayList<>();
        cases.forEach(c -> changeable(c).forEach(f -> other(catalogue.finding(f), c.job(), random)
                .ifPresent(answer -> wrong.add(Map.entry(c, c.job().with(f, answer))))));
        return wrong.parallelStream().map(e -> new Score.JudgedCase(e.getKey(), assessor.assess(e.getValue()))).toList();
    }

    /** Every case once, each answer hidden at this chance and so many of the rest taken for another, drawn by the seed. */
    public List<Score.JudgedCase> someHidden(List<CaseStudy> cases, double hidden, int slips, long seed) {
        Random random = new Random(seed);
        List<Map.Entry<CaseStudy, Job>> left = new ArrayList<>();
        for (CaseStudy c : cases) {
            Job job = c.job();
            for (String f : changeable(c)) {
                job = random.nextDouble() < hidden ? job.with(f, Answer.NOT_CHECKED) : job;
            }
            for (int slip = 0; slip < slips; slip++) {
                List<String> given = changeable(job);
                if (!given.isEmpty()) {
                    String f = given.get(random.nextInt(given.size()));
                    Job before = job;
                    job = other(catalogue.finding(f), job, random).map(answer -> before.with(f, answer)).orElse(job);
                }
            }
            left.add(Map.entry(c, job));
        }
        return left.parallelStream().map(e -> new Score.JudgedCase(e.getKey(), assessor.assess(e.getValue()))).toList();
    }

    /** Share of the cases whose course is still the same, for each seed, when every weight is moved by one grade up or down. */
    public double[] verdictsThatHold(List<CaseStudy> cases, int seeds) {
        List<String> before = courses(asTheyAre(cases));
        double[] shares = new double[seeds];
        for (int seed = 0; seed < seeds; seed++) {
            Map<String, Integer> moved = moves(seed);
            Assessor jittered = new Assessor(rules, catalogue, (rule, strength) -> moved(rule, strength, moved));
            List<String> after = courses(cases.parallelStream().map(c -> new Score.JudgedCase(c, jittered.assess(c.job()))).toList());
            int held = 0;
            for (int i = 0; i < before.size(); i++) {
                held += before.get(i).equals(after.get(i)) ? 1 : 0;
            }
            shares[seed] = (double) held / before.size();
        }
        return shares;
    }

    private Map<String, Integer> moves(long seed) {
        Random random = new Random(seed);
        Map<String, Integer> moves = new HashMap<>();
        rules.rules().keySet().forEach(id -> moves.put(id, random.nextBoolean() ? 1 : -1));
        return moves;
    }

    private static Strength moved(RuleInfo rule, Strength strength, Map<String, Integer> moves) {
        Strength[] grades = Strength.values();
        return grades[Math.max(0, Math.min(grades.length - 1, Arrays.asList(grades).indexOf(strength) + Lookup.known(moves, rule.id())))];
    }

    private static List<String> courses(List<Score.JudgedCase> judged) {
        return judged.stream().map(j -> j.assessment().verdict().course().id()).toList();
    }

    private static List<String> changeable(CaseStudy c) {
        return changeable(c.job());
    }

    private static List<String> changeable(Job job) {
        return job.answers().entrySet().stream()
                .filter(e -> !FIXED.contains(e.getKey()) && !e.getValue().equals(Answer.NOT_CHECKED)).map(Map.Entry::getKey).toList();
    }

    /** Another answer than the one given; none for a table, which is seldom wrong all at once. */
    private static Optional<Answer> other(Finding finding, Job job, Random random) {
        Answer given = job.answers().get(finding.id());
        if (given instanceof Answer.Reading) {
            double value = finding.lowest() + random.nextDouble() * (finding.highest() - finding.lowest());
            return Optional.of(new Answer.Reading(Math.rint(value * 10) / 10, finding.unit()));
        }
        if (given instanceof Answer.ByRadiator) {
            return Optional.empty();
        }
        List<Answer> others = finding.options().stream().map(finding::answering).filter(a -> !a.equals(given)).toList();
        return others.isEmpty() ? Optional.empty() : Optional.of(others.get(random.nextInt(others.size())));
    }
}
