package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Emergency;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/** What went wrong during the work, as answers: it stands, whatever was answered before, until it is said to be over. */
final class Emergencies {
    private Emergencies() {}

    /** The job with what its standing emergencies tell added to its answers. */
    static Job told(Job job, Catalogue catalogue) {
        Job known = job;
        for (String id : job.emergenciesStanding()) {
            for (Emergency.Tells told : catalogue.emergency(id).tells(job, Set.of())) {
                for (Map.Entry<String, List<String>> by : told.by().entrySet()) {
                    known = with(known, by.getKey(), by.getValue());
                }
            }
        }
        return known;
    }

    private static Job with(Job job, String finding, List<String> answers) {
        List<String> chosen = new ArrayList<>(job.answer(finding).orElse(null) instanceof Answer.Several s ? s.choices() : List.of());
        answers.stream().filter(answer -> !chosen.contains(answer)).forEach(chosen::add);
        return job.with(finding, new Answer.Several(chosen));
    }
}
