package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.Json;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.report.AssessmentJson;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Certainty;
import neutralpoint.rulebase.RuleInfo;
import neutralpoint.rulebase.WeighedEvidence;
import neutralpoint.rulebase.fact.Evidence;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What holds of every call-out, tried on many made at random from the catalogue. A failure shows the
 * smallest call-out that still fails. Without a seed every run tries the same call-outs;
 * {@code -Dneutralpoint.seed=12345} tries others and {@code -Dneutralpoint.tries=1000000} more.
 * Holds {@link neutralpoint.rulebase.WaterPaths}.
 */
class AssessmentPropertiesTest {
    private static final int TRIES = Tries.CALLOUTS;
    private static final long SEED = Tries.SEED;
    /** A property that met fewer call-outs than one in a thousand has shown too little. */
    private static final int ENOUGH = Math.max(1, TRIES / 1000);
    private static final String SAID_WITH_EVERYTHING = "tool-advises-only";

    private static final List<Property> PROPERTIES = List.of(
            Property.of("nothing is cleansed while a red line stands", a -> !a.stops().isEmpty(), a -> {
                assertThat(a.verdict().course().cleanses()).isFalse();
                assertThat(a.order()).noneMatch(step -> step.course().map(Course::cleanses).orElse(false));
                assertThat(a.cleansing()).isEmpty();
            }),
            Property.of("a stop that refers makes the course refer, and nothing else is planned", Assessment::isReferredByStop, a -> {
                assertThat(a.verdict().course().id()).isEqualTo("refer");
                assertThat(a.order()).isEmpty();
            }),
            Property.of("a stop always leads with an action", a -> !a.stops().isEmpty(),
                    a -> assertThat(a.stops()).allSatisfy(s -> assertThat(s.action()).isNotBlank())),
            Property.of("nothing is cleansed while it is not known what system it is",
                    a -> Set.of("unclear", "contradictory").contains(a.arrangement().status()), a -> {
                        assertThat(courses(a)).doesNotContain("full-flush", "partial-cleanse");
                        assertThat(a.cleansing()).isEmpty();
                    }),
            Property.of("a path in doubt or worse never comes with a cleanse", a -> PathsByHand.inDoubtOrWorse(a.job()).isPresent(), a -> {
                assertThat(courses(a)).as(PathsByHand.inDoubtOrWorse(a.job()).orElseThrow()).doesNotContain("full-flush", "partial-cleanse");
                assertThat(a.cleansing()).isEmpty();
            }),
            Property.of("a doubt about a path is told with the look that settles it", a -> !a.paths().doubts().isEmpty(),
                    a -> assertThat(a.verdict().because()).containsAll(a.paths().reasons())),
            Property.of("shared water never comes with a dose, and always with a danger", a -> PathsByHand.shared(a.job()), a -> {
                assertThat(a.stops()).extracting(Assessment.StopFound::id).contains("waters-mixed");
                assertThat(a.order()).filteredOn(step -> step.course().map(c -> !c.id().equals("refer")).orElse(true))
                        .noneMatch(step -> step.action().matches("(?i).*\\b(inhibitor|cleaner|additive|dose|neutraliser)\\b.*"));
            }),
            Property.of("no system is flushed that must not be", a -> DoNotFlush.fully(a).isPresent(),
                    a -> assertThat(courses(a)).as(DoNotFlush.fully(a).orElseThrow()).doesNotContain("full-flush")),
            Property.of("no system is cleansed at all that must not be", a -> DoNotFlush.atAll(a).isPresent(), a -> {
                assertThat(courses(a)).as(DoNotFlush.atAll(a).orElseThrow()).doesNotContain("full-flush", "partial-cleanse");
                assertThat(a.cleansing()).isEmpty();
            }),
            Property.of("nothing goes into water that reaches the taps", a -> DoNotFlush.reachesTheTaps(a.job()),
                    a -> assertThat(a.order()).filteredOn(step -> step.course().map(c -> !c.id().equals("refer")).orElse(true))
                            .noneMatch(step -> step.action().matches("(?i).*\\b(inhibitor|cleaner|additive|dose|neutraliser)\\b.*"))),
            Property.of("every course that touches water, gas or electricity comes with a caution of its own",
                    a -> !Set.of("no-wet-side-work", "look-further").contains(a.verdict().course().id()),
                    a -> assertThat(a.cautions()).anyMatch(c -> !c.id().equals(SAID_WITH_EVERYTHING))),
            Property.of("whatever opens the water comes with the scald and the isolation caution", a -> a.verdict().course().wet(),
                    a -> assertThat(a.cautions()).extracting(c -> c.id()).contains("scald", "electrical-isolation")),
            Property.of("doubtful fabric is neither machine-flushed, shaken nor flushed backwards", a -> a.cleansing().isPresent()
                    && DoNotFlush.isDoubtful(a.job()), a -> {
                assertThat(a.cleansing().orElseThrow().method().id()).isNotIn("machine-flush", "mains-pressure-flush");
                assertThat(a.cleansing().orElseThrow().avoid()).extracting(v -> v.handling().id()).contains("agitation", "reversal");
            }),
            Property.of("the method is one that carries out the course", a -> a.cleansing().isPresent(), a ->
                    assertThat(a.cleansing().orElseThrow().method().courses()).contains(a.cleansing().orElseThrow().course().id())),
            Property.of("nothing on the wet side is done for a cause that only the complaint speaks for",
                    a -> a.stops().isEmpty() && a.verdict().chief().map(AssessmentPropertiesTest::restsOnTheComplaint).orElse(false),
                    a -> assertThat(a.verdict().course().id()).isNotIn("full-flush", "partial-cleanse", "valve-repair", "component-repair",
                            "pipework-correction", "vent-and-balance")),
            Property.of("what is undecided is looked at further, and nothing else is", a -> a.stops().isEmpty(),
                    a -> assertThat(a.verdict().certainty() == Certainty.UNDECIDED).isEqualTo(a.verdict().course().id().equals("look-further"))),
            Property.of("a fault that a deciding test settled is not passed over for one that is only likely",
                    a -> a.verdict().chief().map(c -> !c.isSettled()).orElse(false) && AssessmentPropertiesTest.settledFaults(a) > 0,
                    a -> assertThat(a.verdict().because()).as("a rule says that the settled fault comes of the leading one")
                            .anyMatch(AssessmentPropertiesTest::isWhyOneStandsBehindAnother)),
            Property.of("the course has a reason", a -> true, a -> assertThat(a.verdict().because()).isNotEmpty()),
            Property.of("every probability lies between nought and one", a -> true, a -> {
                assertThat(a.arrangement().share()).isBetween(0.0, 1.0);
                assertThat(a.causes()).hasSameSizeAs(Shared.CATALOGUE.causes().keySet())
                        .allSatisfy(c -> assertThat(c.probability()).as(c.id()).isBetween(0.0, 1.0));
            }),
            Property.of("every sum can be checked by hand", a -> a.causes().stream().anyMatch(c -> !c.evidence().isEmpty()),
                    a -> assertThat(a.causes()).allSatisfy(c -> assertThat(c.decibans()).as(c.id())
                            .isEqualTo(c.cause().priorDecibans() + c.evidence().stream().mapToDouble(WeighedEvidence::decibans).sum(),
                                    within(1e-9)))),
            Property.of("each cause is worked on once", a -> !a.order().isEmpty(),
                    a -> assertThat(a.order().stream().flatMap(s -> s.cause().stream()).toList()).doesNotHaveDuplicates()),
            Property.of("proving comes last", a -> a.order().stream().anyMatch(s -> s.phase().word().equals("prove")),
                    a -> assertThat(a.order().get(a.order().size() - 1).phase().word()).isEqualTo("prove")),
            Property.comparing("what was not checked changes nothing", a -> true,
                    (a, random) -> assertThat(json(assess(RandomCallouts.withUnchecked(a.job(), random)))).isEqualTo(json(a))),
            Property.comparing("the order of answering changes nothing", a -> a.job().answers().size() > 1,
                    (a, random) -> assertThat(json(assess(RandomCallouts.shuffled(a.job(), random)))).isEqualTo(json(a))),
            Property.comparing("a what-if and an answer changed back leave no trace", a -> !a.job().answers().isEmpty(), (a, random) -> {
                Job changed = changed(a.job(), random);
                String finding = changedIn(a.job(), changed);
                assess(changed);
                assertThat(json(assess(changed.with(finding, a.job().answers().get(finding))))).isEqualTo(json(a));
            }),
            Property.comparing("the same call-out gives the same bytes twice", a -> true,
                    (a, random) -> assertThat(json(assess(a.job()))).isEqualTo(json(a))),
            Property.comparing("one more sign for a cause never lowers it", a -> RandomCallouts.isUnfinished(a.job()), (a, random) -> {
                Assessment more = assess(RandomCallouts.withOneMore(a.job(), random));
                a.causes().stream().filter(c -> onlyGainedSupport(c, more.cause(c.id()).orElseThrow())).forEach(c ->
                        assertThat(more.cause(c.id()).orElseThrow().decibans()).as(c.id()).isGreaterThanOrEqualTo(c.decibans() - 1e-9));
            }));

    private static final Set<String> WHY_BEHIND = Shared.RULES.rules().values().stream().filter(r -> r.folder().equals("explained"))
            .map(RuleInfo::because).collect(Collectors.toSet());

    private static boolean restsOnTheComplaint(Assessment.CauseStanding c) {
        return c.evidence().stream().filter(WeighedEvidence::isFor).allMatch(e -> e.finding().equals("complaint"));
    }

    private static long settledFaults(Assessment a) {
        return a.causes().stream().filter(Assessment.CauseStanding::isSettled)
                .filter(c -> !c.cause().phase().word().equals("protect") && !c.cause().course().equals("no-wet-side-work")).count();
    }

    private static boolean isWhyOneStandsBehindAnother(String because) {
        return WHY_BEHIND.contains(because);
    }

    /** How often a property was tried, and the first call-out that broke it. */
    private record Outcome(int met, Optional<Integer> firstBroken) {
        Outcome and(Outcome other) {
            Optional<Integer> first = Stream.of(firstBroken, other.firstBroken).flatMap(Optional::stream).min(Integer::compare);
            return new Outcome(met + other.met, first);
        }
    }

    @TestFactory
    List<DynamicTest> everyPropertyHolds() {
        Tries.note("%d random call-outs from -Dneutralpoint.seed=%d", TRIES, SEED);
        Map<Property, Outcome> outcomes = new ConcurrentHashMap<>();
        IntStream.range(0, TRIES).parallel().forEach(number -> tryOn(number, outcomes));
        return PROPERTIES.stream().map(p -> DynamicTest.dynamicTest(p.name(), () -> {
            Outcome outcome = outcomes.getOrDefault(p, new Outcome(0, Optional.empty()));
            outcome.firstBroken().ifPresent(number -> show(p, number));
            Tries.note("%8d call-outs: %s", outcome.met(), p.name());
            assertThat(outcome.met()).as("call-outs the property speaks of").isGreaterThanOrEqualTo(ENOUGH);
        })).toList();
    }

    private static void tryOn(int number, Map<Property, Outcome> outcomes) {
        Assessment a = assess(RandomCallouts.callout(SEED, number));
        for (Property p : PROPERTIES) {
            boolean itsTurn = (number + PROPERTIES.indexOf(p)) % p.oneIn() == 0;
            if (itsTurn && p.speaksOf().test(a)) {
                outcomes.merge(p, new Outcome(1, p.isBrokenBy(a, number) ? Optional.of(number) : Optional.empty()), Outcome::and);
            }
        }
    }

    private static void show(Property p, int number) {
        Assessment smallest = p.smallest(assess(RandomCallouts.callout(SEED, number)), number);
        assertThat(smallest).as("call-out %d; smallest that fails: %s", number, JobFile.fields(smallest.job()))
                .satisfies(a -> p.holds().accept(a, new Random(number)));
    }

    private static Set<String> courses(Assessment a) {
        return Stream.concat(Stream.of(a.verdict().course()), a.order().stream().flatMap(s -> s.course().stream()))
                .map(Course::id).collect(Collectors.toSet());
    }

    /** True when nothing changed for a cause but that more speaks for it. */
    private static boolean onlyGainedSupport(Assessment.CauseStanding before, Assessment.CauseStanding after) {
        BiFunction<Assessment.CauseStanding, Boolean, Set<String>> rules = (c, explained) -> c.evidence().stream()
                .filter(e -> e.explainedBy().isPresent() == explained).map(e -> e.rule().id()).collect(Collectors.toSet());
        Set<String> had = rules.apply(before, false);
        boolean gainsAreFor = after.evidence().stream().filter(e -> !had.contains(e.rule().id()))
                .allMatch(e -> e.kind() == Evidence.Kind.FOR || e.kind() == Evidence.Kind.SETTLES);
        return gainsAreFor && rules.apply(after, false).containsAll(had) && explained(after) <= explained(before);
    }

    /** A sign that a newly settled fault accounts for is taken away, and that may lower a cause. */
    private static long explained(Assessment.CauseStanding c) {
        return c.evidence().stream().filter(e -> e.explainedBy().isPresent()).count();
    }

    private static Job changed(Job job, Random random) {
        Finding finding = Shared.CATALOGUE.finding(RandomCallouts.any(List.copyOf(job.answers().keySet()), random));
        Answer other = RandomCallouts.answer(finding, job.radiators(), random);
        return job.with(finding.id(), other.equals(job.answers().get(finding.id())) ? Answer.NOT_CHECKED : other);
    }

    private static String changedIn(Job before, Job after) {
        return before.answers().keySet().stream().filter(f -> !before.answers().get(f).equals(after.answers().get(f))).findFirst()
                .orElse(before.answers().keySet().iterator().next());
    }

    private static Assessment assess(Job job) {
        return Shared.ASSESSOR.assess(job);
    }

    private static String json(Assessment a) {
        return Json.pretty(AssessmentJson.of(a, List.of()));
    }
}
