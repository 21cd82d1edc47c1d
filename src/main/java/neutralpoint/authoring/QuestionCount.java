package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.consult.NextQuestion;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/**
 * How many questions it takes until the course that all findings lead to is the one recommended,
 * and stays so. Questions are answered from the case, and with "not checked" where it says nothing.
 */
public final class QuestionCount {
    private static final List<String> VISIT = List.of("doorstep", "boiler", "pump", "airing-cupboard", "loft", "radiators",
            "water", "instruments", "outside");

    private final Assessor assessor;
    private final Catalogue catalogue;
    private final QuestionChooser lookahead;

    /** Chooses the question to ask now. */
    private interface Choice extends Function<Assessment, Optional<Finding>> {}

    /**
     * @param asked   questions asked in all
     * @param needed  questions until the course stood and stayed; as many as were asked if it never did
     * @param reached true when the course at the end is the one that all findings lead to
     */
    public record Count(int asked, int needed, boolean reached) {}

    public QuestionCount(Assessor assessor, Catalogue catalogue) {
        this.assessor = assessor;
        this.catalogue = catalogue;
        this.lookahead = new QuestionChooser(assessor, catalogue);
    }

    /** By this tool's own choice, until it has no more to ask. */
    public Count chosen(Job full) {
        return count(full, now -> lookahead.next(now).map(NextQuestion::finding));
    }

    /** In the order of a visit, place by place. */
    public Count byPlace(Job full) {
        return count(full, now -> lookahead.open(now).stream().min(Comparator.comparingInt(f -> VISIT.indexOf(f.place()))));
    }

    /** In an order drawn by the seed. */
    public Count random(Job full, long seed) {
        List<Finding> order = new ArrayList<>(catalogue.findings().values());
        Collections.shuffle(order, new Random(seed));
        return count(full, now -> lookahead.open(now).stream().min(Comparator.comparingInt(order::indexOf)));
    }

    private Count count(Job full, Choice choice) {
        String wanted = assessor.assess(full).verdict().course().id();
        Job job = new Job(full.id(), full.house(), full.radiators(), Map.of(), Optional.empty(), full.gauge(), full.emergencies());
        Assessment now = assessor.assess(job);
        int asked = 0;
        int needed = 0;
        boolean standing = false;
        for (Optional<Finding> next = choice.apply(now); next.isPresent(); next = choice.apply(now)) {
            Answer answer = full.answer(next.get().id()).orElse(Answer.NOT_CHECKED);
            job = job.with(next.get().id(), answer);
            asked++;
            // An answer left open changes nothing, so there is nothing to judge anew but the list of open questions.
            now = answer.equals(Answer.NOT_CHECKED) ? now.withJob(job) : assessor.assess(job);
            boolean stands = now.verdict().course().id().equals(wanted);
            if (stands && !standing) {
                needed = asked;
            }
            standing = stands;
        }
        return new Count(asked, standing ? needed : asked, standing);
    }
}
