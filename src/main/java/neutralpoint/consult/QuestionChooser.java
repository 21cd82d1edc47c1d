package neutralpoint.consult;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.catalogue.Option;
import neutralpoint.document.Lookup;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.Outlook;
import neutralpoint.rulebase.WhatIf;

/**
 * Chooses the next question by assessing what each answer would do: how far the chances of the
 * causes of this complaint, and of their courses, would move, weighed by how likely the answer is,
 * for each minute it takes.
 */
public final class QuestionChooser {
    private static final double ROUGHEST_DECIBANS = 20;
    /** Questions that pass the quick screening and are looked into answer by answer. */
    private static final int LOOKED_INTO = 16;
    /** Below this chance of changing the course a question is not worth the householder's time. */
    private static final double COURSE_AT_STAKE = 0.15;
    private static final double WORTH_ASKING = 0.002;
    /** Questions are looked into on so many threads, each with a session of its own. */
    private static final int LANES = 2;
    /** Reading a question aloud and typing the answer takes about a minute, whatever it asks. */
    private static final int TALK_MINUTES = 1;

    private final Assessor assessor;
    private final Catalogue catalogue;

    public QuestionChooser(Assessor assessor, Catalogue catalogue) {
        this.assessor = assessor;
        this.catalogue = catalogue;
    }

    /**
     * The questions worth asking, best first; what is left to ask of the engineer's own competence is last.
     * Red lines, then the complaint, always come before anything else.
     */
    public List<NextQuestion> rank(Assessment now, int most) {
        Optional<NextQuestion> hands = now.isReferredByStop() ? Optional.empty() : hands(now);
        int others = hands.isPresent() ? Math.max(1, most - 1) : most;
        return Stream.concat(ofTheHouse(now, others).stream(), hands.stream()).limit(most).toList();
    }

    private List<NextQuestion> ofTheHouse(Assessment now, int most) {
        Job job = now.job();
        for (String first : List.of(FindingId.RED_LINES, FindingId.COMPLAINT, FindingId.HEATING_FILLED_BY, FindingId.HOT_WATER_MADE_BY)) {
            if (!job.isAnswered(first)) {
                return List.of(new NextQuestion(catalogue.finding(first), 1, 1));
            }
        }
        List<Assessment.CauseStanding> relevant = relevant(now.job(), now.causes());
        Map<String, Double> before = shares(relevant);
        Map<String, Double> stakes = stakes(now, relevant);
        List<Finding> promising = open(now).stream()
                .sorted(Comparator.comparingDouble((Finding f) -> -promise(f, stakes)).thenComparing(Finding::id))
                .limit(LOOKED_INTO)
                .toList();
        return IntStream.range(0, LANES).parallel()
                .mapToObj(lane -> lookInto(every(LANES, lane, promising), now, relevant, before)).flatMap(List::stream)
                .filter(q -> q.gain() > WORTH_ASKING)
                .sorted(Comparator.comparingDouble((NextQuestion q) -> -q.gain()).thenComparing(q -> q.finding().id()))
                .limit(most)
                .toList();
    }

    /**
     * The question to ask now. None while somebody else must make safe first, unless its
     * answer may show that there is no danger, or when a cause is
     * likely, nothing that forbids its course is left unasked, no other question is likely
     * enough to change the course, and it is known whether these are the hands it needs.
     */
    public Optional<NextQuestion> next(Assessment now) {
        if (now.isReferredByStop()) {
            return ofTheDanger(now);
        }
        List<NextQuestion> open = ofTheHouse(now, LOOKED_INTO);
        boolean decided = now.verdict().chief().map(Assessment.CauseStanding::isActive).orElse(false)
                && open.stream().noneMatch(q -> q.changesCourse() >= COURSE_AT_STAKE);
        Optional<NextQuestion> next = decided ? bar(now) : open.stream().findFirst();
        return next.or(() -> hands(now));
    }

    /** While somebody else must make safe, nothing is asked but what may show that no danger is there. */
    private Optional<NextQuestion> ofTheDanger(Assessment now) {
        return now.stops().stream().flatMap(s -> s.danger().ask().stream()).map(catalogue::finding)
                .filter(f -> makesSense(f, now) && f.options().stream()
                        .anyMatch(o -> !assessor.assess(now.job().with(f.id(), f.answering(o))).isReferredByStop()))
                .map(f -> new NextQuestion(f, 0, 1)).findFirst();
    }

    /** What is left to ask of the engineer's own competence, where the answer would take a remedy out of these hands. */
    private Optional<NextQuestion> hands(Assessment now) {
        return now.verdict().needs().stream().filter(n -> n.shown() == Assessment.Shown.UNKNOWN)
                .map(n -> n.competence().decidedBy()).distinct().map(catalogue::finding)
                .filter(f -> makesSense(f, now)).map(f -> new NextQuestion(f, 0, changesACourse(f, now)))
                .filter(q -> q.changesCourse() > 0).findFirst();
    }

    /** The share of a question's answers that would change the course recommended or one in the order of work. */
    private double changesACourse(Finding f, Assessment now) {
        return f.options().stream().filter(o -> !courses(assessor.assess(now.job().with(f.id(), f.answering(o)))).equals(courses(now)))
                .count() / (double) f.options().size();
    }

    /** The course recommended and those of the order of work, in their order. */
    private static List<String> courses(Assessment a) {
        return Stream.concat(Stream.of(a.verdict().course()), a.order().stream().flatMap(s -> s.course().stream())).map(Course::id).toList();
    }

    /** Every question that makes sense now, in the order of the catalogue. */
    public List<Finding> open(Assessment now) {
        return catalogue.findings().values().stream().filter(f -> makesSense(f, now)).toList();
    }

    /** The quickest question left that could forbid the course now recommended, however unlikely that is. */
    private Optional<NextQuestion> bar(Assessment now) {
        Set<String> forbidding = new HashSet<>(Set.of(now.verdict().course().id()));
        if (now.verdict().course().cleanses() && now.arrangement().possibleTraits().contains(TraitId.NO_FLUSH)) {
            catalogue.systems().stream().filter(s -> s.traits().contains(TraitId.NO_FLUSH)).forEach(s -> forbidding.add(s.id()));
        }
        return catalogue.findings().values().stream()
                .filter(f -> makesSense(f, now) && assessor.movedBy(f.id()).stream().anyMatch(forbidding::contains))
                .min(Comparator.comparingInt(Finding::minutes).thenComparing(Finding::id))
                .map(f -> new NextQuestion(f, 0, 0));
    }

    private boolean makesSense(Finding f, Assessment now) {
        boolean possible = f.onlyOn().isEmpty() || f.onlyOn().stream().anyMatch(now.arrangement().possibleTraits()::contains);
        boolean called = f.askWhen().isEmpty() || f.askWhen().entrySet().stream()
                .anyMatch(e -> now.known().answer(e.getKey()).map(a -> given(a, e.getValue())).orElse(false));
        boolean needed = !catalogue.showsOnlyCompetence(f.id())
                || now.verdict().needs().stream().anyMatch(n -> n.competence().decidedBy().equals(f.id()));
        return possible && called && needed && !now.known().isAnswered(f.id()) && !f.workedOut()
                && f.type() != AnswerType.NUMBER && f.type() != AnswerType.PER_RADIATOR;
    }

    private static boolean given(Answer answer, List<String> wanted) {
        if (answer instanceof Answer.One one) {
            return wanted.contains(one.choice());
        }
        return answer instanceof Answer.Several several && several.choices().stream().anyMatch(wanted::contains);
    }

    /** How open each cause of this complaint is; the arrangement too while it is unclear. */
    private Map<String, Double> stakes(Assessment now, List<Assessment.CauseStanding> relevant) {
        Map<String, Double> stakes = new HashMap<>();
        relevant.forEach(c -> stakes.put(c.id(), c.probability() * (1 - c.probability())));
        if (now.arrangement().status().equals("unclear")) {
            catalogue.systems().forEach(s -> stakes.put(s.id(), 0.05));
        }
        return stakes;
    }

    private double promise(Finding f, Map<String, Double> stakes) {
        double sum = assessor.movedBy(f.id()).stream().mapToDouble(id -> stakes.getOrDefault(id, 0.0)).sum();
        return sum / (TALK_MINUTES + f.minutes());
    }

    private static List<Finding> every(int lanes, int lane, List<Finding> findings) {
        return IntStream.range(0, findings.size()).filter(i -> i % lanes == lane).mapToObj(findings::get).toList();
    }

    private List<NextQuestion> lookInto(List<Finding> findings, Assessment now, List<Assessment.CauseStanding> relevant,
            Map<String, Double> before) {
        if (findings.isEmpty()) {
            return List.of();
        }
        try (WhatIf whatIf = assessor.whatIf(now.job())) {
            return findings.stream().map(f -> lookInto(f, now, relevant, before, whatIf)).toList();
        }
    }

    private static NextQuestion lookInto(Finding finding, Assessment now, List<Assessment.CauseStanding> relevant,
            Map<String, Double> before, WhatIf whatIf) {
        double chances = 0;
        double moved = 0;
        double changed = 0;
        List<NextQuestion.AnswerOutcome> outcomes = new ArrayList<>();
        for (Option option : finding.options()) {
            Outlook after = whatIf.of(now.job().with(finding.id(), finding.answering(option)));
            double chance = option.usual() * likelihood(relevant, after);
            outcomes.add(new NextQuestion.AnswerOutcome(option, after.course()));
            chances += chance;
            moved += chance * distance(before, shares(relevant(after.job(), after.causes())));
            changed += after.course().equals(now.verdict().course()) ? 0 : chance;
        }
        return chances == 0 ? new NextQuestion(finding, 0, 0)
                : new NextQuestion(finding, moved / chances / (TALK_MINUTES + finding.minutes()), changed / chances, outcomes);
    }

    /** How much more or less likely an answer is under the causes that now stand first. */
    private static double likelihood(List<Assessment.CauseStanding> relevant, Outlook after) {
        Map<String, Double> then = after.causes().stream().collect(
                Collectors.toMap(Assessment.CauseStanding::id, Assessment.CauseStanding::decibans));
        double total = 0;
        double sum = 0;
        for (Assessment.CauseStanding c : relevant) {
            double change = Math.max(-ROUGHEST_DECIBANS, Math.min(ROUGHEST_DECIBANS, Lookup.known(then, c.id()) - c.decibans()));
            total += c.probability();
            sum += c.probability() * Math.pow(10, change / 10);
        }
        return total == 0 ? 1 : sum / total;
    }

    /** Causes that explain the complaint, and any other that is already likely; all of them without a complaint. */
    private static List<Assessment.CauseStanding> relevant(Job job, List<Assessment.CauseStanding> causes) {
        Set<String> complaints = job.chosen(FindingId.COMPLAINT);
        return causes.stream().filter(c -> complaints.isEmpty() || c.isActive()
                || c.cause().answers().stream().anyMatch(complaints::contains)).toList();
    }

    /** The shares of the causes of this complaint, and again of the courses that answer them. */
    private static Map<String, Double> shares(List<Assessment.CauseStanding> relevant) {
        double total = relevant.stream().mapToDouble(Assessment.CauseStanding::probability).sum();
        Map<String, Double> shares = new HashMap<>();
        relevant.forEach(c -> {
            shares.merge(c.cause().course(), c.probability() / total / 2, Double::sum);
            shares.merge("cause " + c.id(), c.probability() / total / 2, Double::sum);
        });
        return shares;
    }

    private static double distance(Map<String, Double> a, Map<String, Double> b) {
        Set<String> all = new HashSet<>(a.keySet());
        all.addAll(b.keySet());
        return all.stream().mapToDouble(c -> Math.abs(a.getOrDefault(c, 0.0) - b.getOrDefault(c, 0.0))).sum() / 2;
    }
}
