package neutralpoint.rulebase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Competence;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment.Need;
import neutralpoint.rulebase.Assessment.Shown;
import neutralpoint.rulebase.fact.Needs;

/** Whose hands the remedies need, and whether the engineer's own answers show that these are the right ones. */
final class CompetenceCheck {
    private final List<Need> needs;

    /**
     * @param known what the engineer answered; a question left open shows nothing
     * @param needs what rules conclude that remedies need here; a need found in two ways counts once
     */
    CompetenceCheck(Catalogue catalogue, Job known, List<Derived<Needs>> needs) {
        Map<String, Need> distinct = new LinkedHashMap<>();
        for (Derived<Needs> n : needs) {
            Competence competence = catalogue.competence(n.fact().competence());
            String cause = n.fact().standing().cause();
            distinct.putIfAbsent(cause + " " + competence.id(), new Need(cause, competence, shown(competence, known), n.rule().because()));
        }
        this.needs = List.copyOf(distinct.values());
    }

    List<Need> all() {
        return needs;
    }

    List<Need> of(String cause) {
        return needs.stream().filter(n -> n.cause().equals(cause)).toList();
    }

    /** The needs of a cause that the engineer has answered not to meet. */
    List<Need> lacking(String cause) {
        return of(cause).stream().filter(n -> n.shown() == Shown.NO).toList();
    }

    /** True when the remedy needs something and every bit of it has been shown. */
    boolean areShownRight(String cause) {
        return !of(cause).isEmpty() && of(cause).stream().allMatch(n -> n.shown() == Shown.YES);
    }

    private static Shown shown(Competence competence, Job known) {
        if (competence.shownBy().entrySet().stream().anyMatch(e -> given(known.answer(e.getKey())).contains(e.getValue()))) {
            return Shown.YES;
        }
        boolean answered = known.answer(competence.decidedBy()).map(a -> !a.equals(Answer.NOT_CHECKED)).orElse(false);
        return answered ? Shown.NO : Shown.UNKNOWN;
    }

    private static List<String> given(Optional<Answer> answer) {
        return answer.map(a -> a instanceof Answer.One one ? List.of(one.choice())
                : a instanceof Answer.Several several ? several.choices() : List.<String>of()).orElse(List.of());
    }
}
