package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.Absent;
import neutralpoint.rulebase.fact.Measured;
import neutralpoint.rulebase.fact.Observed;
import neutralpoint.rulebase.fact.Radiators;
import neutralpoint.rulebase.fact.Sign;

/** A job's answers in the form rules read. What was not checked leaves no trace. */
final class Facts {
    private Facts() {}

    static List<Sign> of(Job job, Catalogue catalogue) {
        List<Sign> facts = new ArrayList<>();
        // In the order of finding ids, so that the order of answering never shows.
        new TreeMap<>(job.answers()).forEach((id, answer) -> facts.addAll(of(catalogue.finding(id), answer, job)));
        return facts;
    }

    private static List<Sign> of(Finding finding, Answer answer, Job job) {
        if (answer instanceof Answer.One one) {
            return List.of(new Observed(finding.id(), one.choice()));
        }
        if (answer instanceof Answer.Several several) {
            return several(finding, several.choices());
        }
        if (answer instanceof Answer.Reading reading) {
            return List.of(new Measured(finding.id(), reading.value(), reading.unit()));
        }
        return answer instanceof Answer.ByRadiator by ? radiators(finding.id(), by.choices(), job) : List.of();
    }

    private static List<Sign> several(Finding finding, List<String> chosen) {
        List<Sign> facts = new ArrayList<>();
        for (String option : finding.optionIds()) {
            facts.add(chosen.contains(option) ? new Observed(finding.id(), option) : new Absent(finding.id(), option));
        }
        if (chosen.isEmpty()) {
            facts.add(new Observed(finding.id(), "none"));
        }
        return facts;
    }

    private static List<Sign> radiators(String finding, Map<String, String> choices, Job job) {
        List<Sign> facts = new ArrayList<>();
        facts.addAll(count(finding, "any", choices));
        Map<String, Map<String, String>> floors = new TreeMap<>();
        choices.forEach((radiator, answer) ->
                floors.computeIfAbsent(job.floorOf(radiator), f -> new TreeMap<>()).put(radiator, answer));
        floors.remove("unknown");
        floors.forEach((floor, there) -> facts.addAll(count(finding, floor, there)));
        return facts;
    }

    private static List<Sign> count(String finding, String floor, Map<String, String> choices) {
        Map<String, Integer> counts = new TreeMap<>();
        choices.values().forEach(answer -> counts.merge(answer, 1, Integer::sum));
        List<Sign> facts = new ArrayList<>();
        counts.forEach((answer, count) -> facts.add(new Radiators(finding, answer, floor, count, choices.size())));
        return facts;
    }
}
