package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import neutralpoint.Shared;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Finding;
import neutralpoint.consult.Lookahead;
import neutralpoint.document.Json;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.Radiator;
import neutralpoint.report.AssessmentJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What holds of every call-out, tried on many made at random from the catalogue. A failure shows
 * the smallest call-out that still fails. Another seed can be tried with
 * {@code -Dneutralpoint.seed=12345}; without one every run tries the same call-outs.
 */
class AssessmentPropertiesTest {
    private static final int TRIES = 1500;
    /** A property that met fewer call-outs than this has shown too little. */
    private static final int ENOUGH = 20;
    private static final int A_FEW = 6;
    private static final long SEED = Long.getLong("neutralpoint.seed", 1950);
    private static final List<String> ROOMS = List.of("lounge", "hall", "kitchen", "bathroom", "box room");
    private static final List<String> FLOORS = List.of("ground", "first", "second", "unknown");

    private static final List<Assessment> ASSESSMENTS = new ArrayList<>();

    @BeforeAll
    static void assessRandomCallouts() {
        System.out.println("Random call-outs from -Dneutralpoint.seed=" + SEED);
        Random random = new Random(SEED);
        for (int i = 0; i < TRIES; i++) {
            ASSESSMENTS.add(assess(callout(random, i)));
        }
    }

    @Test
    void nothingIsCleansedWhileAStopStands() {
        holds(a -> !a.stops().isEmpty(),
                a -> assertThat(a.verdict().course().id()).isNotIn("full-flush", "partial-cleanse"));
    }

    @Test
    void aStopThatRefersMakesTheCourseRefer() {
        holds(a -> a.stops().stream().anyMatch(s -> s.course().equals("refer")),
                a -> assertThat(a.verdict().course().id()).isEqualTo("refer"));
    }

    @Test
    void everyStopSaysWhatToDoNow() {
        holds(a -> !a.stops().isEmpty(),
                a -> assertThat(a.stops()).allSatisfy(s -> assertThat(s.action()).isNotBlank()));
    }

    @Test
    void aSystemThatMustNotBeFlushedNeverIs() {
        holds(a -> a.arrangement().status().equals("settled")
                        && Shared.CATALOGUE.arrangement(a.arrangement().id()).traits().contains("no-flush"),
                a -> {
                    assertThat(a.verdict().course().id()).isNotIn("full-flush", "partial-cleanse");
                    assertThat(a.order()).noneMatch(step -> step.course().map(Course::cleanses).orElse(false));
                });
    }

    @Test
    void everyWetCourseComesWithACaution() {
        holds(a -> a.verdict().course().wet(), a -> assertThat(a.cautions()).isNotEmpty());
    }

    @Test
    void whatWasNotCheckedChangesNothing() {
        Random random = new Random(SEED);
        holds(a -> true, a -> assertThat(json(assess(withUnchecked(a.job(), random)))).isEqualTo(json(a)));
    }

    @Test
    void theOrderOfAnsweringChangesNothing() {
        Random random = new Random(SEED);
        holds(a -> a.job().answers().size() > 1,
                a -> assertThat(json(assess(shuffled(a.job(), random)))).isEqualTo(json(a)));
    }

    @Test
    void theSameCalloutGivesTheSameBytesTwice() {
        holds(a -> true, a -> assertThat(json(assess(a.job()))).isEqualTo(json(a)));
    }

    @Test
    void theSameCalloutIsAskedTheSameQuestionsNext() {
        Lookahead lookahead = new Lookahead(Shared.ASSESSOR, Shared.CATALOGUE);
        List<Job> begun = ASSESSMENTS.stream().map(Assessment::job).filter(job -> job.answers().size() <= A_FEW).limit(ENOUGH)
                .map(job -> job.with(Catalogue.RED_LINES, new Answer.Several(List.of()))
                        .with(Catalogue.COMPLAINT, new Answer.Several(List.of("all-lukewarm")))
                        .with("heating-filled-by", new Answer.One("loft-tank"))
                        .with("hot-water-made-by", new Answer.One("cylinder"))).toList();
        assertThat(begun).hasSize(ENOUGH).allSatisfy(job -> assertThat(lookahead.rank(assess(job), 3))
                .as("%s", JobFile.fields(job)).isNotEmpty().isEqualTo(lookahead.rank(assess(job), 3)));
    }

    @Test
    void everyProbabilityLiesBetweenNoughtAndOne() {
        holds(a -> true, a -> {
            assertThat(a.arrangement().share()).isBetween(0.0, 1.0);
            assertThat(a.causes()).hasSameSizeAs(Shared.CATALOGUE.causes().keySet())
                    .allSatisfy(c -> assertThat(c.probability()).as(c.id()).isBetween(0.0, 1.0));
        });
    }

    @Test
    void everySumCanBeCheckedByHand() {
        holds(a -> a.causes().stream().anyMatch(c -> !c.evidence().isEmpty()),
                a -> assertThat(a.causes()).allSatisfy(c -> assertThat(c.decibans()).as(c.id())
                        .isEqualTo(c.cause().priorDecibans() + c.evidence().stream().mapToDouble(WeighedEvidence::decibans).sum(),
                                within(1e-9))));
    }

    /** Checks a property on all call-outs it speaks of, and shows the smallest that breaks it. */
    private static void holds(Predicate<Assessment> applies, Consumer<Assessment> property) {
        int met = 0;
        for (Assessment a : ASSESSMENTS) {
            if (applies.test(a)) {
                met++;
                if (breaks(a, property)) {
                    Assessment smallest = smallest(a, applies, property);
                    assertThat(smallest).as("smallest call-out that fails: %s", JobFile.fields(smallest.job())).satisfies(property);
                }
            }
        }
        assertThat(met).as("call-outs the property speaks of").isGreaterThanOrEqualTo(ENOUGH);
    }

    private static boolean breaks(Assessment a, Consumer<Assessment> property) {
        try {
            property.accept(a);
            return false;
        } catch (AssertionError e) {
            return true;
        }
    }

    /** Leaves out answers one after another as long as the property stays broken. */
    private static Assessment smallest(Assessment broken, Predicate<Assessment> applies, Consumer<Assessment> property) {
        for (String finding : broken.job().answers().keySet()) {
            Assessment smaller = assess(broken.job().without(finding));
            if (applies.test(smaller) && breaks(smaller, property)) {
                return smallest(smaller, applies, property);
            }
        }
        return broken;
    }

    private static Assessment assess(Job job) {
        return Shared.ASSESSOR.assess(job);
    }

    private static String json(Assessment a) {
        return Json.pretty(AssessmentJson.of(a, List.of()));
    }

    /** A call-out of a few, of many or of nearly all findings; half of them without a red line. */
    private static Job callout(Random random, int number) {
        List<Finding> findings = new ArrayList<>(Shared.CATALOGUE.findings().values());
        Collections.shuffle(findings, random);
        int most = List.of(A_FEW, 25, findings.size()).get(random.nextInt(3));
        Map<String, Answer> answers = new LinkedHashMap<>();
        findings.subList(0, 1 + random.nextInt(most)).forEach(f -> answers.put(f.id(), answer(f, random)));
        if (random.nextBoolean()) {
            answers.put(Catalogue.RED_LINES, new Answer.Several(List.of()));
        }
        return Job.begin("random-" + number).withAnswers(answers).withRadiators(ROOMS.stream()
                .map(room -> new Radiator(room, any(FLOORS, random))).toList());
    }

    private static Answer answer(Finding finding, Random random) {
        return switch (finding.type()) {
            case YES_NO, ONE_OF -> new Answer.One(any(finding.optionIds(), random));
            case SEVERAL_OF -> new Answer.Several(finding.optionIds().stream().filter(o -> random.nextInt(4) == 0).toList());
            case NUMBER -> new Answer.Reading(reading(finding, random), finding.unit());
            case PER_RADIATOR -> {
                Map<String, String> choices = new LinkedHashMap<>();
                ROOMS.subList(0, 1 + random.nextInt(ROOMS.size())).forEach(room -> choices.put(room, any(finding.optionIds(), random)));
                yield new Answer.ByRadiator(choices);
            }
        };
    }

    /** To one decimal place, the two ends of the range among them. */
    private static double reading(Finding finding, Random random) {
        return switch (random.nextInt(10)) {
            case 0 -> finding.lowest();
            case 1 -> finding.highest();
            default -> Math.min(finding.highest(), Math.max(finding.lowest(),
                    Math.rint(10 * (finding.lowest() + random.nextDouble() * (finding.highest() - finding.lowest()))) / 10));
        };
    }

    private static Job withUnchecked(Job job, Random random) {
        Job more = job;
        for (String finding : Shared.CATALOGUE.findings().keySet()) {
            if (!job.isAnswered(finding) && random.nextBoolean()) {
                more = more.with(finding, Answer.NOT_CHECKED);
            }
        }
        return more;
    }

    private static Job shuffled(Job job, Random random) {
        List<String> findings = new ArrayList<>(job.answers().keySet());
        Collections.shuffle(findings, random);
        Map<String, Answer> answers = new LinkedHashMap<>();
        findings.forEach(f -> answers.put(f, job.answers().get(f)));
        return job.withAnswers(answers);
    }

    private static <T> T any(List<T> items, Random random) {
        return items.get(random.nextInt(items.size()));
    }
}
