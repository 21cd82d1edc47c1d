package neutralpoint.job;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One call-out: the house and what has been found there, in the order it was answered. Immutable;
 * every change makes another job.
 *
 * @param id        a short name, as in the file name
 * @param house     a line about the house, may be empty
 * @param radiators radiators whose floor is known; others may appear in per-radiator answers
 * @param answers   finding id to answer, in the order answered
 * @param asking    the finding being asked when the job was left, if the engineer chose it
 * @param gauge     the pressure gauge over time, oldest first
 * @param emergencies what went wrong during the work, in the order told
 */
public record Job(String id, String house, List<Radiator> radiators, Map<String, Answer> answers,
        Optional<String> asking, List<GaugeReading> gauge, List<EmergencyTold> emergencies) {

    public Job {
        radiators = List.copyOf(radiators);
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        gauge = gauge.stream().sorted(Comparator.comparing(GaugeReading::at)).toList();
        emergencies = List.copyOf(emergencies);
    }

    public static Job begin(String id) {
        return new Job(id, "", List.of(), Map.of(), Optional.empty(), List.of(), List.of());
    }

    public Optional<Answer> answer(String finding) {
        return Optional.ofNullable(answers.get(finding));
    }

    /** The options chosen in a several-of finding; empty when none were, or when it was not answered. */
    public Set<String> chosen(String finding) {
        return answers.get(finding) instanceof Answer.Several several ? Set.copyOf(several.choices()) : Set.of();
    }

    public boolean isAnswered(String finding) {
        return answers.containsKey(finding);
    }

    /** This job with one answer given or changed; a changed answer keeps its place in the order. */
    public Job with(String finding, Answer answer) {
        Map<String, Answer> changed = new LinkedHashMap<>(answers);
        changed.put(finding, answer);
        return withAnswers(changed);
    }

    /** This job as if the finding had never been asked. */
    public Job without(String finding) {
        Map<String, Answer> changed = new LinkedHashMap<>(answers);
        changed.remove(finding);
        return withAnswers(changed);
    }

    public Job withAnswers(Map<String, Answer> changed) {
        return new Job(id, house, radiators, changed, asking, gauge, emergencies);
    }

    public Job withRadiators(List<Radiator> changed) {
        return new Job(id, house, changed, answers, asking, gauge, emergencies);
    }

    public Job withGauge(List<GaugeReading> changed) {
        return new Job(id, house, radiators, answers, asking, changed, emergencies);
    }

    public Job withEmergencies(List<EmergencyTold> changed) {
        return new Job(id, house, radiators, answers, asking, gauge, changed);
    }

    /** Ids of the emergencies that have been told and not been said to be over. */
    public Set<String> emergenciesStanding() {
        return EmergencyLog.standing(emergencies);
    }

    /** The same job with this finding asked next. */
    public Job asking(String finding) {
        return new Job(id, house, radiators, answers, Optional.of(finding), gauge, emergencies);
    }

    /** The same job with the next question left to the program. */
    public Job askingNothing() {
        return new Job(id, house, radiators, answers, Optional.empty(), gauge, emergencies);
    }

    /** The floor of a radiator, "unknown" when it was not given. */
    public String floorOf(String radiator) {
        return radiators.stream().filter(r -> r.name().equals(radiator)).map(Radiator::floor).findFirst()
                .orElse("unknown");
    }
}
