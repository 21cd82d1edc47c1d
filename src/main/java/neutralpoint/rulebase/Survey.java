package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.HouseSurvey;
import neutralpoint.rulebase.fact.PipeLeg;
import neutralpoint.rulebase.fact.RadiatorSurvey;
import neutralpoint.rulebase.fact.SurveyFinding;
import neutralpoint.workings.Calculation;
import neutralpoint.workings.SurveyedRadiator;
import neutralpoint.workings.Workings;

/** A job's readings before the rules weigh anything: the sums of each, and what survey rules read in all radiators together. */
final class Survey {
    /** With fewer radiators read at top, base and both tails there is no pattern to see. */
    private static final int FEWEST = 4;

    private Survey() {}

    /** Tells the survey rules of the radiators and gives all that is worked out. */
    static List<Calculation> workOut(Job job, Session session) {
        List<SurveyedRadiator> survey = SurveyedRadiator.of(job);
        List<Calculation> out = new ArrayList<>(Workings.of(job, survey));
        List<SurveyedRadiator> complete = survey.stream().filter(r -> r.dropKelvin().isPresent()).toList();
        List<Object> facts = new ArrayList<>();
        if (complete.size() >= FEWEST) {
            facts.addAll(legs(complete));
            complete.forEach(r -> facts.add(fact(r)));
            facts.add(new HouseSurvey(complete.size()));
        }
        session.insertAndFire(facts);
        if (!facts.isEmpty()) {
            out.addAll(patterns(session.all(SurveyFinding.class)));
        }
        return List.copyOf(out);
    }

    /** The job with everything worked out put in, except where the engineer's own answer stands. */
    static Job complete(Job job, List<Calculation> workedOut) {
        Map<String, Answer> known = new LinkedHashMap<>(job.answers());
        workedOut.stream().flatMap(w -> w.finding().stream()).filter(f -> !isAnswered(job, f.id()))
                .forEach(f -> known.put(f.id(), f.answer()));
        return known.equals(job.answers()) ? job : job.withAnswers(known);
    }

    private static boolean isAnswered(Job job, String finding) {
        return job.answer(finding).map(a -> !a.equals(Answer.NOT_CHECKED)).orElse(false);
    }

    private static List<PipeLeg> legs(List<SurveyedRadiator> survey) {
        Map<String, Long> sizes = survey.stream().map(r -> r.radiator().leg()).filter(leg -> !leg.isEmpty())
                .collect(Collectors.groupingBy(leg -> leg, TreeMap::new, Collectors.counting()));
        return sizes.entrySet().stream().filter(e -> e.getValue() >= 2).map(e -> new PipeLeg(e.getKey())).toList();
    }

    private static RadiatorSurvey fact(SurveyedRadiator r) {
        return new RadiatorSurvey(r.name(), r.radiator().floor(), r.radiator().leg(), r.isOld(), r.reach(), r.stateWord(),
                r.dropKelvin().getAsDouble());
    }

    /** One finding for each that is read, with all its answers; a survey in which nothing is read says so too. */
    private static List<Calculation> patterns(List<Derived<SurveyFinding>> reads) {
        List<String> answers = reads.stream().map(r -> r.fact().answer()).distinct().toList();
        List<String> sums = reads.stream().map(r -> r.rule().says() + " " + r.rule().because()).toList();
        String says = answers.isEmpty() ? "No pattern over the whole house."
                : "Pattern: " + reads.stream().map(r -> r.fact().answer().replace('-', ' ')).distinct().collect(Collectors.joining("; ")) + ".";
        return List.of(new Calculation(Optional.of(new Calculation.Found(FindingId.SURVEY_PATTERN, new Answer.Several(answers))),
                answers.isEmpty() ? Calculation.Grade.PASS : Calculation.Grade.WARN, says, sums));
    }
}
