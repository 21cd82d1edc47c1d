package neutralpoint.consult;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Option;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.Grounds;
import neutralpoint.rulebase.Outlook;
import neutralpoint.rulebase.Unexplained;
import neutralpoint.rulebase.WeighedEvidence;
import neutralpoint.rulebase.WhatIf;
import neutralpoint.rulebase.fact.Evidence;

/**
 * What the findings say to somebody who is sure of a cause, a system or a course.
 *
 * @param title       what is claimed, in words
 * @param stands      how it stands, in words
 * @param isTheVerdict true when it has been judged so too
 * @param refusals    why it cannot be, or must not be done, here; empty where neither is so
 * @param supports    what was found that speaks for it, strongest first
 * @param against     what speaks against it, strongest first
 * @param unexplained strong signs that it does not account for
 * @param look        the look most likely to refute it, or to bring in a course that is not the one recommended
 */
public record Challenge(String title, String stands, boolean isTheVerdict, List<String> refusals, List<WeighedEvidence> supports, List<WeighedEvidence> against,
        List<Unexplained> unexplained, Optional<RefutingLook> look) {

    /** So many titles that fit are named; of so many questions one is looked for whose answer tells. */
    private static final int MOST_NAMED = 8;
    private static final int QUESTIONS = 8;
    private static final double AS_GOOD_AS_RULED_OUT = 0.02;

    /**
     * A look, the answer that would refute the claim, and what would become of it.
     *
     * @param after how the claim would then stand, in words
     */
    public record RefutingLook(Finding finding, Option answer, String after) {}

    /** What may be claimed: any cause, kind of system or course of the catalogue, by its id. */
    public static List<String> claims(Catalogue catalogue) {
        return Stream.of(catalogue.causes().keySet().stream(), catalogue.systems().stream().map(ArrangementKind::id),
                catalogue.courses().keySet().stream()).flatMap(ids -> ids).distinct().toList();
    }

    /**
     * The claim that is meant: by its id, or the only one whose title has every word typed.
     *
     * @throws BadInput if none is, or several are; the message names the nearest
     */
    public static String named(String typed, Catalogue catalogue) {
        List<String> claims = claims(catalogue);
        String id = String.join("-", words(typed));
        if (claims.contains(id)) {
            return id;
        }
        List<String> meant = claims.stream().filter(c -> !typed.isBlank() && words(title(c, catalogue)).containsAll(words(typed))).toList();
        if (meant.size() == 1) {
            return meant.get(0);
        }
        throw new BadInput("\"" + typed.strip() + "\" is not a known cause, system or course"
                + (meant.isEmpty() || meant.size() > MOST_NAMED ? Nearest.hint(id, claims) : "; say which: " + String.join(", ", meant) + "."));
    }

    private static List<String> words(String typed) {
        return List.of(typed.strip().toLowerCase(Locale.ROOT).split("[^a-z0-9]+"));
    }

    private static String title(String claim, Catalogue catalogue) {
        return catalogue.causes().containsKey(claim) ? catalogue.causes().get(claim).title()
                : catalogue.courses().containsKey(claim) ? catalogue.course(claim).title()
                : catalogue.systems().stream().filter(s -> s.id().equals(claim)).findFirst().orElseThrow().title();
    }

    /**
     * @param claim one of the {@link #claims}
     */
    public static Challenge of(Assessment now, String claim, Assessor assessor, Catalogue catalogue) {
        Grounds grounds = assessor.grounds(now.job());
        QuestionChooser questions = new QuestionChooser(assessor, catalogue);
        return catalogue.causes().containsKey(claim) ? ofCause(now, claim, grounds, assessor, questions)
                : catalogue.courses().containsKey(claim) ? ofCourse(now, catalogue.course(claim), grounds, questions)
                : ofSystem(now, claim, grounds, assessor, questions, catalogue);
    }

    private static Challenge ofCause(Assessment now, String claim, Grounds grounds, Assessor assessor, QuestionChooser questions) {
        Assessment.CauseStanding c = now.cause(claim).orElseThrow();
        List<String> refusals = new ArrayList<>(c.isExcluded() ? exclusions(c.evidence()) : List.of());
        if (c.isExcluded() && refusals.isEmpty()) {
            refusals.add("It cannot be here: this system has no such part.");
        }
        grounds.barring(c.cause().course()).forEach(b -> refusals.add("Its usual course is barred here: " + b));
        return new Challenge(c.cause().title(), c.inWords(), now.verdict().chief().map(c::equals).orElse(false), refusals, c.evidence().stream().filter(WeighedEvidence::isFor).toList(),
                c.evidence().stream().filter(e -> !e.isFor()).toList(), Unexplained.by(now.causes(), c),
                c.isExcluded() ? Optional.empty() : refuting(now, claim, questions.open(now), assessor,
                        outlook -> standing(outlook, claim).probability(), outlook -> standing(outlook, claim).inWords()));
    }

    private static Challenge ofSystem(Assessment now, String claim, Grounds grounds, Assessor assessor, QuestionChooser questions,
            Catalogue catalogue) {
        List<WeighedEvidence> evidence = grounds.ofArrangement(claim);
        List<String> refusals = exclusions(evidence);
        return new Challenge(title(claim, catalogue), share(now.arrangement(), claim), now.arrangement().isKnown() && now.arrangement().id().equals(claim), refusals, evidence.stream().filter(WeighedEvidence::isFor).toList(),
                evidence.stream().filter(e -> !e.isFor()).toList(), List.of(),
                refuting(now, claim, questions.open(now), assessor, outlook -> outlook.arrangement().shares().getOrDefault(claim, 0.0),
                        outlook -> share(outlook.arrangement(), claim)));
    }

    /** The deciding tests that say no, each with its reason. */
    private static List<String> exclusions(List<WeighedEvidence> evidence) {
        return evidence.stream().filter(e -> e.kind() == Evidence.Kind.EXCLUDES).map(e -> "It cannot be here: " + e.rule().because()).toList();
    }

    /** A course has no signs of its own: what speaks for it is the causes it answers. */
    private static Challenge ofCourse(Assessment now, Course course, Grounds grounds, QuestionChooser questions) {
        List<Assessment.CauseStanding> answered = now.causes().stream().filter(c -> c.cause().course().equals(course.id()))
                .filter(Assessment.CauseStanding::isSupported).filter(c -> !c.isExcluded()).toList();
        List<String> refusals = grounds.barring(course.id()).stream().map(b -> "It is barred here: " + b).toList();
        String stands = answered.isEmpty() ? "nothing found speaks for a cause that it answers"
                : "it answers " + answered.stream().limit(3).map(c -> c.cause().title() + " (" + c.inWords() + ")")
                        .reduce((a, b) -> a + ", " + b).orElseThrow();
        boolean judgedSo = now.verdict().course().equals(course);
        Optional<RefutingLook> look = questions.rank(now, QUESTIONS).stream().flatMap(q -> q.outcomes().stream()
                .filter(o -> o.course().equals(course) != judgedSo).limit(1)
                .map(o -> new RefutingLook(q.finding(), o.answer(), "the course would be: " + o.course().title()))).findFirst();
        return new Challenge(course.title(), stands, judgedSo, refusals, answered.stream().flatMap(c -> c.evidence().stream().filter(WeighedEvidence::isFor).limit(2)).toList(),
                answered.stream().flatMap(c -> c.evidence().stream().filter(e -> !e.isFor()).limit(1)).toList(),
                judgedSo ? now.unexplained() : List.of(), look);
    }

    /** The look whose answers, each as often as it is usual, lower the claim most for a minute. */
    private static Optional<RefutingLook> refuting(Assessment now, String claim, List<Finding> open, Assessor assessor,
            ToDoubleFunction<Outlook> certainty, Function<Outlook, String> words) {
        record Found(RefutingLook look, double worth) {}
        List<Found> found = new ArrayList<>();
        try (WhatIf whatIf = assessor.whatIf(now.job())) {
            double before = certainty.applyAsDouble(whatIf.of(now.job()));
            if (before < AS_GOOD_AS_RULED_OUT) {
                return Optional.empty();
            }
            for (Finding f : open) {
                if (!assessor.movedBy(f.id()).contains(claim)) {
                    continue;
                }
                double usual = f.options().stream().mapToDouble(Option::usual).sum();
                double worth = 0;
                Option lowest = f.options().get(0);
                double least = Double.MAX_VALUE;
                String after = "";
                for (Option option : f.options()) {
                    Outlook outlook = whatIf.of(now.job().with(f.id(), f.answering(option)));
                    double then = certainty.applyAsDouble(outlook);
                    worth += Math.max(0, before - then) * option.usual() / usual;
                    if (then < least) {
                        least = then;
                        lowest = option;
                        after = words.apply(outlook);
                    }
                }
                found.add(new Found(new RefutingLook(f, lowest, after), worth / (1 + f.minutes())));
            }
        }
        return found.stream().filter(f -> f.worth() > 0).max(Comparator.comparingDouble(Found::worth).thenComparing(f -> f.look().finding().id()))
                .map(Found::look);
    }

    private static Assessment.CauseStanding standing(Outlook outlook, String cause) {
        return outlook.causes().stream().filter(c -> c.id().equals(cause)).findFirst().orElseThrow();
    }

    private static String share(Assessment.RecognisedSystem system, String id) {
        return Math.round(system.shares().getOrDefault(id, 0.0) * 100) + " in 100";
    }
}
