package neutralpoint.workings;

import java.util.List;
import java.util.Optional;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** What comes out of the readings of a call-out. */
final class WorkedOut {
    private WorkedOut() {}

    static List<Calculation> workings(Job job) {
        return Workings.of(job, SurveyedRadiator.of(job));
    }

    /** What is worked out for this finding. */
    static Optional<Calculation> of(Job job, String finding) {
        return workings(job).stream().filter(w -> w.finding().map(f -> f.id().equals(finding)).orElse(false)).findFirst();
    }

    /** The one option worked out for this finding; empty when nothing is. */
    static String choice(Job job, String finding) {
        return of(job, finding).map(w -> ((Answer.One) w.finding().orElseThrow().answer()).choice()).orElse("");
    }

    /** The outcome whose sentence begins so. */
    static Calculation saying(Job job, String beginning) {
        List<Calculation> all = workings(job);
        return all.stream().filter(w -> w.says().startsWith(beginning)).findFirst()
                .orElseThrow(() -> new AssertionError("nothing begins \"" + beginning + "\" in " + all));
    }
}
