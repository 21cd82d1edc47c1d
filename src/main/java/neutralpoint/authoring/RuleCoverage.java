package neutralpoint.authoring;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessor;

/** Which cases fire which rules. */
public record RuleCoverage(Map<CaseStudy, Set<String>> byCase) {

    public static RuleCoverage of(List<CaseStudy> cases, Assessor assessor) {
        Map<CaseStudy, Set<String>> fired = new LinkedHashMap<>();
        cases.forEach(c -> fired.put(c, assessor.rulesFired(c.job())));
        return new RuleCoverage(fired);
    }

    /** For each rule, how many cases fire it; rules that none fires are left out. */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts = new TreeMap<>();
        byCase.values().forEach(rules -> rules.forEach(r -> counts.merge(r, 1, Integer::sum)));
        return counts;
    }

    public List<String> casesThatFire(String rule) {
        return byCase.entrySet().stream().filter(e -> e.getValue().contains(rule)).map(e -> e.getKey().id()).toList();
    }

    /** A case in which all that the rule looks at was found out, or most of it, and yet the rule does not fire. */
    public Optional<String> nearestMiss(RuleText rule) {
        List<String> findings = ReferenceCheck.findings(rule);
        return byCase.entrySet().stream().filter(e -> !e.getValue().contains(rule.id()))
                .map(Map.Entry::getKey).filter(c -> answered(c.job(), findings) > 0)
                .min(Comparator.comparingLong((CaseStudy c) -> -answered(c.job(), findings)).thenComparing(CaseStudy::id))
                .map(CaseStudy::id);
    }

    private static long answered(Job job, List<String> findings) {
        return findings.stream().filter(job::isAnswered).count();
    }
}
