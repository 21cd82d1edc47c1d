package neutralpoint.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** A consultation answered from each case study: how many questions until it has no more to ask. */
class QuestionCountTest {
    private static final int PATIENCE = 40;

    private final Lookahead lookahead = new Lookahead(Shared.ASSESSOR, Shared.CATALOGUE);

    @Test
    void everyConsultationComesToAnEnd() {
        List<Integer> counts = new ArrayList<>();
        for (Path file : Shared.files("cases", ".json")) {
            Job full = new JobCheck(Shared.CATALOGUE).read(file);
            Job job = new Job(full.id(), full.house(), full.radiators(), java.util.Map.of(), Optional.empty());
            int asked = 0;
            for (Optional<NextQuestion> q = lookahead.next(Shared.ASSESSOR.assess(job)); q.isPresent() && asked < PATIENCE;
                    q = lookahead.next(Shared.ASSESSOR.assess(job))) {
                String finding = q.get().finding().id();
                assertThat(job.isAnswered(finding)).as("asked twice: " + finding).isFalse();
                job = job.with(finding, full.answer(finding).orElse(Answer.NOT_CHECKED));
                asked++;
            }
            counts.add(asked);
            System.out.printf("%-24s %2d questions: %s, with everything known: %s%n", full.id(), asked,
                    Shared.ASSESSOR.assess(job).verdict().course().id(), Shared.ASSESSOR.assess(full).verdict().course().id());
        }
        counts.sort(null);
        System.out.println("Questions asked, median: " + counts.get(counts.size() / 2));
        assertThat(counts).allMatch(n -> n < PATIENCE);
    }
}
