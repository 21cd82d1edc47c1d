package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.authoring.ReferenceCheck;
import neutralpoint.authoring.RuleReader;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.rulebase.Outlook;
import neutralpoint.rulebase.WhatIf;
import org.junit.jupiter.api.Test;

/**
 * A what-if tells the same as judging the changed call-out from scratch, whatever is changed: an answer
 * more, another answer, an answer taken back, one that some rule asks to be absent, one that is counted.
 * Holds {@link neutralpoint.rulebase.WhatIf} and {@link neutralpoint.rulebase.Outlook}.
 */
class WhatIfPropertiesTest {
    private static final int JOBS = Tries.WHAT_IFS;
    private static final long SEED = Tries.SEED;
    private static final List<Finding> ALL = List.copyOf(Shared.CATALOGUE.findings().values());
    private static final List<Finding> ASKED_ABSENT =
            ReferenceCheck.absent(RuleReader.all(Path.of("rules"))).stream().map(Shared.CATALOGUE::finding).toList();
    private static final List<Finding> COUNTED = ALL.stream().filter(f -> f.type() == AnswerType.PER_RADIATOR).toList();

    private final Map<String, Integer> met = new ConcurrentHashMap<>();

    @Test
    void aWhatIfIsTheSameAsJudgingAnew() {
        List<String> wrong = IntStream.range(0, JOBS).parallel().mapToObj(this::differences).flatMap(List::stream).limit(3).toList();
        Tries.note("what-ifs in %d random call-outs from -Dneutralpoint.seed=%d: %s", JOBS, SEED, new TreeMap<>(met));
        assertThat(wrong).isEmpty();
        assertThat(met).hasSizeGreaterThanOrEqualTo(5).allSatisfy((kind, times) -> assertThat(times).as(kind).isGreaterThan(JOBS / 50));
    }

    /** One what-if of a kind that changes from job to job, and back again; in one session, as questions are looked into. */
    private List<String> differences(int number) {
        Random random = new Random(SEED * 31 + number);
        Job job = RandomCallouts.callout(SEED, number);
        List<String> wrong = new ArrayList<>();
        try (WhatIf whatIf = Shared.ASSESSOR.whatIf(job)) {
            for (Job changed : List.of(changed(job, number, random), job)) {
                Outlook anew = Shared.ASSESSOR.outlook(changed);
                if (!whatIf.of(changed).equals(anew)) {
                    wrong.add("call-out " + number + ", " + JobFile.fields(job) + " changed to " + JobFile.fields(changed));
                }
            }
        }
        return wrong;
    }

    private Job changed(Job job, int number, Random random) {
        if (job.answers().isEmpty()) {
            return RandomCallouts.withOneMore(job, random);
        }
        String answered = RandomCallouts.any(List.copyOf(job.answers().keySet()), random);
        return switch (number % 5) {
            case 0 -> RandomCallouts.isUnfinished(job) ? met("one more", RandomCallouts.withOneMore(job, random)) : job;
            case 1 -> met("another answer", answering(job, Shared.CATALOGUE.finding(answered), random));
            case 2 -> met("taken back", job.without(answered));
            case 3 -> met("asked absent", answering(job, RandomCallouts.any(ASKED_ABSENT, random), random));
            default -> met("counted", answering(job, RandomCallouts.any(COUNTED, random), random));
        };
    }

    private Job met(String kind, Job changed) {
        met.merge(kind, 1, Integer::sum);
        return changed;
    }

    private static Job answering(Job job, Finding finding, Random random) {
        return job.with(finding.id(), RandomCallouts.answer(finding, job.radiators(), random));
    }
}
