package neutralpoint.property;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;

/** Call-outs made at random from the catalogue: the same number and seed always make the same one. */
final class RandomCallouts {
    private static final int MOST_RADIATORS = 40;
    private static final int A_FEW = 6;
    private static final int SOME = 25;
    /** One call-out in so many is a case study a little changed, and in that one answer in so many is left out. */
    private static final int HOUSE_ONE_IN = 3;
    private static final int LEFT_OUT_ONE_IN = 12;
    private static final List<CaseStudy> CASES = Shared.allCases();
    /** One call-out in so many comes with readings. */
    private static final int READ_ONE_IN = 3;
    private static final List<String> FLOORS = List.of("ground", "first", "second", "unknown");

    private RandomCallouts() {}

    /**
     * One in three is a case study with a few answers changed, added or left out; the others are of a few, of many or of
     * nearly all findings, half of them without a red line, a few answers left open.
     */
    static Job callout(long seed, int number) {
        Random random = new Random(seed * 1_000_003 + number);
        return random.nextInt(HOUSE_ONE_IN) == 0 ? likeACase(random, number) : anything(random, number);
    }

    private static Job likeACase(Random random, int number) {
        Job house = any(CASES, random).job();
        List<Finding> findings = new ArrayList<>(Shared.CATALOGUE.findings().values());
        Collections.shuffle(findings, random);
        Job job = new Job("random-" + number, "", house.radiators(), house.answers(), Optional.empty(), house.gauge(), List.of());
        for (Finding f : findings.subList(0, random.nextInt(A_FEW))) {
            job = job.with(f.id(), answer(f, job.radiators(), random));
        }
        for (String finding : house.answers().keySet()) {
            job = random.nextInt(LEFT_OUT_ONE_IN) == 0 ? job.without(finding) : job;
        }
        return RandomReadings.possible(job);
    }

    private static Job anything(Random random, int number) {
        List<Finding> findings = new ArrayList<>(Shared.CATALOGUE.findings().values());
        Collections.shuffle(findings, random);
        int most = List.of(A_FEW, SOME, findings.size()).get(random.nextInt(3));
        List<Radiator> radiators = radiators(random);
        Map<String, Answer> answers = new LinkedHashMap<>();
        findings.subList(0, 1 + random.nextInt(most)).forEach(f -> answers.put(f.id(), answer(f, radiators, random)));
        if (random.nextBoolean()) {
            answers.put(FindingId.RED_LINES, new Answer.Several(List.of()));
        }
        Job job = Job.begin("random-" + number).withAnswers(answers).withRadiators(radiators);
        return random.nextInt(READ_ONE_IN) == 0 ? RandomReadings.possible(read(job, random)) : job;
    }

    /** The same call-out with instruments in hand: temperatures, the gauge over time and figures. */
    private static Job read(Job job, Random random) {
        Job more = job.withRadiators(RandomReadings.radiators(random)).withGauge(RandomReadings.gauge(random));
        for (Finding f : Shared.CATALOGUE.findings().values()) {
            if (f.type() == AnswerType.NUMBER && random.nextBoolean()) {
                more = more.with(f.id(), answer(f, more.radiators(), random));
            }
        }
        return more;
    }

    private static List<Radiator> radiators(Random random) {
        return IntStream.range(0, random.nextInt(MOST_RADIATORS + 1))
                .mapToObj(i -> new Radiator("radiator " + (i + 1), any(FLOORS, random))).toList();
    }

    static Answer answer(Finding finding, List<Radiator> radiators, Random random) {
        if (random.nextInt(20) == 0) {
            return Answer.NOT_CHECKED;
        }
        return switch (finding.type()) {
            case YES_NO, ONE_OF -> new Answer.One(any(finding.optionIds(), random));
            case SEVERAL_OF -> new Answer.Several(finding.optionIds().stream().filter(o -> random.nextInt(4) == 0).toList());
            case NUMBER -> new Answer.Reading(RandomReadings.within(finding.lowest(), finding.highest(), random), finding.unit());
            case PER_RADIATOR -> radiators.isEmpty() ? Answer.NOT_CHECKED : table(finding, radiators, random);
        };
    }

    private static Answer table(Finding finding, List<Radiator> radiators, Random random) {
        Map<String, String> choices = new LinkedHashMap<>();
        radiators.subList(0, 1 + random.nextInt(radiators.size()))
                .forEach(r -> choices.put(r.name(), any(finding.optionIds(), random)));
        return new Answer.ByRadiator(choices);
    }

    static boolean isUnfinished(Job job) {
        return job.answers().size() < Shared.CATALOGUE.findings().size();
    }

    /** One finding more than the job has, with a random answer. */
    static Job withOneMore(Job job, Random random) {
        List<Finding> open = Shared.CATALOGUE.findings().values().stream().filter(f -> !job.isAnswered(f.id())).toList();
        Finding more = any(open, random);
        return job.with(more.id(), answer(more, job.radiators(), random));
    }

    static Job withUnchecked(Job job, Random random) {
        Job more = job;
        for (String finding : Shared.CATALOGUE.findings().keySet()) {
            if (!job.isAnswered(finding) && random.nextInt(10) == 0) {
                more = more.with(finding, Answer.NOT_CHECKED);
            }
        }
        return more;
    }

    static Job shuffled(Job job, Random random) {
        List<String> findings = new ArrayList<>(job.answers().keySet());
        Collections.shuffle(findings, random);
        Map<String, Answer> answers = new LinkedHashMap<>();
        findings.forEach(f -> answers.put(f, job.answers().get(f)));
        return job.withAnswers(answers);
    }

    static <T> T any(List<T> items, Random random) {
        return items.get(random.nextInt(items.size()));
    }
}
