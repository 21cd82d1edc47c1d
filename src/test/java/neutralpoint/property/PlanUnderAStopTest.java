package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.Stage;
import neutralpoint.workplan.WorkPlan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What holds of every plan while a danger stands: each way of telling each danger of the catalogue is put into call-outs made at
 * random. What heat may do, and which words are forbidden, is written down here by hand from the trade and not read from the
 * catalogue or the rules. Common practice, no source, where nothing else is named.
 */
class PlanUnderAStopTest {
    private static final int TRIES = Tries.PER_DANGER;
    private static final long SEED = Tries.SEED;
    private static final Catalogue WRITTEN = CatalogueFiles.fromFolder(Path.of("rules/catalogue"));
    private static final List<String> METHODS = List.copyOf(Shared.CATALOGUE.methods().keySet());

    /** What the heating may do until the danger is over. */
    private enum Heat { OFF, MAY_STAY, MUST_STAY }

    private static final Map<String, Heat> HEAT = heat();

    private static Map<String, Heat> heat() {
        Map<String, Heat> heat = new LinkedHashMap<>();
        for (String off : List.of("gas-escape", "carbon-monoxide", "chimney-closed", "refrigerant-escape", "water-on-electrics",
                "electric-fault", "boiling", "heating-tank-hot", "storage-cistern-warmed", "boiler-dry-and-hot", "boiler-out-of-control",
                "vent-closed", "feed-and-vent-plugged", "relief-path-valved", "safety-valve-closed", "sealed-without-vessel",
                "safety-valve-does-not-lift", "cylinder-overheating", "unvented-discharging-hot", "unvented-relief-shut",
                "fire-on-unvented-cylinder", "unvented-heat-not-cut-off", "fire-without-circulation", "fire-boiler-dry",
                "fire-feed-or-vent-shut", "heat-leak-shut", "fire-joined-to-other-heat", "fire-on-sealed-system", "flue-or-flame",
                "condensate-trap-dry", "oil-escape", "water-from-boiler-case", "ceiling-bulging", "fast-leak", "pipe-thawing",
                "frozen-heating-pipe", "electric-shock", "somebody-hurt")) {
            heat.put(off, Heat.OFF);
        }
        // A grate is not the heating; heating water in the taps does not burn; dust lies still while nobody touches it.
        for (String stays : List.of("disused-back-boiler", "waters-mixed", "asbestos")) {
            heat.put(stays, Heat.MAY_STAY);
        }
        // Frost itself is the danger: to people who cannot keep warm, and to a unit whose water stands still outdoors.
        for (String must : List.of("cold-house", "heat-pump-frost")) {
            heat.put(must, Heat.MUST_STAY);
        }
        return heat;
    }

    /** What the first thing to be done says; either of several, where a fire or something else stands behind it. */
    private static final Map<String, String> FIRST = Map.ofEntries(
            Map.entry("gas-escape", "touch no switch"),
            Map.entry("carbon-monoxide", "everybody out"),
            Map.entry("chimney-closed", "everybody out"),
            Map.entry("refrigerant-escape", "keep everybody well away"),
            Map.entry("water-on-electrics", "consumer unit"),
            Map.entry("electric-fault", "touch no part|smoke|out of"),
            Map.entry("boiling", "switch off|close the air"),
            Map.entry("heating-tank-hot", "switch off|close the air"),
            Map.entry("storage-cistern-warmed", "switch off"),
            Map.entry("boiler-dry-and-hot", "switch the boiler off|close the air"),
            Map.entry("boiler-out-of-control", "turn the boiler off|close the air|off at the spur"),
            Map.entry("vent-closed", "turn the boiler off|close the air"),
            Map.entry("feed-and-vent-plugged", "turn the boiler off|close the air"),
            Map.entry("relief-path-valved", "turn the boiler off|close the air"),
            Map.entry("safety-valve-closed", "switch the boiler off"),
            Map.entry("sealed-without-vessel", "switch the boiler off"),
            Map.entry("safety-valve-does-not-lift", "switch the boiler off"),
            Map.entry("cylinder-overheating", "switch .*off"),
            Map.entry("unvented-discharging-hot", "switch off every source of heat"),
            Map.entry("unvented-relief-shut", "switch off every source of heat"),
            Map.entry("fire-on-unvented-cylinder", "let the fire die"),
            Map.entry("unvented-heat-not-cut-off", "switch off every source of heat"),
            Map.entry("fire-without-circulation", "let the fire die"),
            Map.entry("fire-boiler-dry", "light no fire"),
            Map.entry("fire-feed-or-vent-shut", "let the fire die"),
            Map.entry("heat-leak-shut", "light no fire"),
            Map.entry("fire-joined-to-other-heat", "light no fire"),
            Map.entry("fire-on-sealed-system", "light no fire"),
            Map.entry("disused-back-boiler", "light no fire"),
            Map.entry("flue-or-flame", "turn the appliance off"),
            Map.entry("condensate-trap-dry", "turn the boiler off"),
            Map.entry("oil-escape", "put out every flame"),
            Map.entry("water-from-boiler-case", "turn the boiler off"),
            Map.entry("ceiling-bulging", "everybody out"),
            Map.entry("fast-leak", "shut the stopcock|shut the outside stop tap|switch the boiler off"),
            Map.entry("pipe-thawing", "shut the stopcock"),
            Map.entry("frozen-heating-pipe", "keep the boiler off"),
            Map.entry("cold-house", "those who need warmth"),
            Map.entry("heat-pump-frost", "power on|switch it on"),
            Map.entry("waters-mixed", "nobody drink"),
            Map.entry("electric-shock", "touch nobody"),
            Map.entry("somebody-hurt", "switch the electricity off"),
            Map.entry("asbestos", "leave it alone"));

    /** Words that put heat, current or water into a house, at the beginning of a sentence or after "and" or "then". */
    private static final Pattern BRINGS_HEAT = Pattern.compile("(?:^|[.;:,] |\\band |\\bthen )(?:refit the fuse|put the circuit on|light (?!nothing|no )|"
            + "switch on|turn (?:the boiler|the heating|it) on|run (?:the heating|hot)|call heating|fire (?:the boiler|it)|"
            + "read all radiators hot|let the fire be lit|refill|fill )", Pattern.CASE_INSENSITIVE);

    /** What no step may say while this danger stands. */
    private static final Map<String, Pattern> NEVER = Map.ofEntries(
            never("gas-escape", "switch (?:off|on|it|the)|unplug|plug in|electric heater|at the spur|use the telephone|drain (?:the|down|it)|photograph pump"),
            never("carbon-monoxide", "electric heater|stay in|go back in(?! for)|drain (?:the|down)|photograph pump"),
            never("water-on-electrics", "at the spur|keep the fuse|refit the fuse|use the spur"),
            never("boiling", "let (?:cold )?water in|fill |top (?:it )?up|open (?:the|a) (?:supply|float|filling)|go up|ladder"),
            never("fire-without-circulation", "throw water|shut the (?:vent|feed|heat-leak)|drain (?:the|down)"),
            never("fire-boiler-dry", "let water in now|throw water|drain (?:the|down)"),
            never("fire-on-sealed-system", "drain (?:the|down)|fill by|pressurise it"),
            never("heat-leak-shut", "drain (?:the|down)|shut the heat-leak"),
            never("unvented-discharging-hot", "shut (?:its|the) cold supply|cap (?:the|its) discharge|shut its valves"),
            never("cylinder-overheating", "switch (?:it|the immersion heater) on"),
            never("waters-mixed", "pour|dose |let the cleaner|let the inhibitor|put the inhibitor|put the cleaner"),
            never("chimney-closed", "electric heater|go back in(?! for)|drain (?:the|down)|photograph pump"),
            never("electric-fault", "at the spur|keep the fuse|refit the fuse"),
            never("boiler-out-of-control", "run it again|reset it|top (?:it )?up"),
            never("vent-closed", "run the heating|with a flame|blowlamp"),
            never("safety-valve-does-not-lift", "run the heating|fill by the loop|vessel's charge"),
            never("flue-or-flame", "light it again|open its case|run the heating"),
            never("water-from-boiler-case", "open (?:its|the) case|run the heating"),
            never("ceiling-bulging", "set a fixed ladder|tie up the float|sheet the carpets|bale the loft"),
            never("fast-leak", "let the float valve go|fill slowly|fill by"),
            never("frozen-heating-pipe", "run the heating|with a flame|let the float valve go|fill by"),
            never("asbestos", "brush|scrape the|sweep|vacuum"));

    /** Gas or fumes fill the rooms: everybody is out until the house has been declared safe. */
    private static final Set<String> LEFT = Set.of("gas-escape", "carbon-monoxide", "chimney-closed");

    /** Stages in which water is opened, driven or let in. */
    private static final Set<Stage> OPENED = Set.of(Stage.CONNECT, Stage.FILL, Stage.HEAT, Stage.CLEANSE, Stage.DUMP, Stage.RINSE, Stage.REPAIR,
            Stage.PUT_BACK, Stage.REFILL);

    private static Map.Entry<String, Pattern> never(String danger, String words) {
        return Map.entry(danger, Pattern.compile(words, Pattern.CASE_INSENSITIVE));
    }

    @Test
    void everyDangerIsInTheTableOfHeatAndTheCatalogueSaysTheSame() {
        assertThat(HEAT.keySet()).as("the hand-written table and the catalogue").containsExactlyInAnyOrderElementsOf(WRITTEN.dangers().keySet());
        assertThat(WRITTEN.dangers().values()).allSatisfy(d ->
                assertThat(d.heat().meanwhile().name()).as(d.id()).isEqualTo(HEAT.get(d.id()).name()));
    }

    @Test
    void whatIsDoneFirstIsWhatTheTradeDoesFirst() {
        assertThat(FIRST.keySet()).containsExactlyInAnyOrderElementsOf(WRITTEN.dangers().keySet());
        List<String> others = new ArrayList<>();
        for (Danger danger : WRITTEN.dangers().values()) {
            for (Danger.Way way : danger.ways()) {
                Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).check(JobFile.draft(way.job(), "told")));
                String first = a.stops().stream().filter(s -> s.id().equals(danger.id())).findFirst().orElseThrow().now().get(0).says();
                if (!Pattern.compile(FIRST.get(danger.id())).matcher(first.toLowerCase(Locale.ROOT)).find()) {
                    others.add(danger.id() + " told by " + way.by() + ": " + first);
                }
            }
        }
        assertThat(others).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyPlanBeginsWithTheDangerAndBringsNoHeatBeforeItIsOver() {
        return WRITTEN.dangers().values().stream().map(danger -> DynamicTest.dynamicTest(danger.id(), () -> {
            long stood = IntStream.range(0, TRIES).parallel().filter(number -> tried(danger, number)).count();
            assertThat(stood).as("call-outs in which it stood").isGreaterThanOrEqualTo(TRIES / 2);
        }));
    }

    /** True when the danger stood in the call-out: another answer of the random house may take it away. */
    private static boolean tried(Danger danger, int number) {
        Danger.Way way = danger.ways().get(number % danger.ways().size());
        Job job = merged(RandomCallouts.callout(SEED + 7, number), way);
        String what = danger.id() + " told by " + way.by() + " in call-out " + number + " of seed " + SEED;
        boolean stood = false;
        for (Optional<String> method : List.of(Optional.<String>empty(), Optional.of(RandomCallouts.any(METHODS, new Random(SEED * 37 + number))))) {
            WorkPlan plan;
            try {
                plan = WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, job, method);
            } catch (IllegalStateException unsafe) {
                throw new AssertionError(what + " by " + method.orElse("the recommended course") + ": " + unsafe.getMessage(), unsafe);
            }
            check(plan, what + " by " + method.orElse("the recommended course"));
            stood |= plan.assessment().stops().stream().anyMatch(s -> s.id().equals(danger.id()));
        }
        return stood;
    }

    /** The random call-out with what tells the danger put over it. */
    private static Job merged(Job random, Danger.Way way) {
        Job told = new JobCheck(Shared.CATALOGUE).check(JobFile.draft(way.job(), "told"));
        Job job = random;
        for (Map.Entry<String, Answer> answer : told.answers().entrySet()) {
            job = job.with(answer.getKey(), answer.getValue());
        }
        job = told.radiators().isEmpty() ? job : job.withRadiators(told.radiators());
        job = told.gauge().isEmpty() ? job : job.withGauge(told.gauge());
        return RandomReadings.possible(job);
    }

    private static void check(WorkPlan plan, String what) {
        Assessment a = plan.assessment();
        if (a.stops().isEmpty()) {
            return;
        }
        assertThat(plan.method()).as("%s: no cleanse under a stop", what).isEmpty();
        assertThat(plan.steps()).as(what).isNotEmpty();
        Assessment.StopFound worst = a.stops().get(0);
        assertThat(plan.steps().get(0).says()).as("%s: first", what).isEqualTo(worst.now().get(0).says());
        theAskedComesFirst(plan, what);
        noHeatBeforeItIsOver(plan, what);
        nothingContradictsANever(plan, what);
        nothingIsOpenedBeforeItIsSafe(plan, what);
        assertThat(plan.course()).as("%s: course of the assessment and of the plan", what).isEqualTo(a.verdict().course().id());
        if (a.isReferredByStop()) {
            assertThat(plan.steps()).as("%s: handed over", what).anyMatch(s -> s.id().equals("told-in-writing")
                    && a.stops().stream().allMatch(stop -> s.says().contains(stop.danger().who())));
        }
    }

    /**
     * A referral opens nothing; a repair on site opens nothing while the boiler is not dead, though air may be let out and a level
     * set; in gas or fumes nothing is carried or read.
     */
    private static void nothingIsOpenedBeforeItIsSafe(WorkPlan plan, String what) {
        boolean dead = false;
        for (PlanStep step : plan.steps()) {
            dead |= step.id().equals("boiler-dead");
            if (OPENED.contains(step.stage()) && !isClearing(plan, step)) {
                assertThat((dead || plan.course().equals("vent-and-balance")) && !plan.course().equals("refer")).as("%s: %s", what, step.id()).isTrue();
            }
        }
        if (plan.course().equals("refer")) {
            assertThat(plan.figures()).as("%s: figures of nothing", what).isEmpty();
            assertThat(plan.quantities().toMeasure()).as("%s: nothing to measure", what).isEmpty();
        }
        if (plan.assessment().stops().stream().anyMatch(s -> LEFT.contains(s.id()))) {
            assertThat(Stream.of(plan.lists().bring(), plan.lists().recordFirst(), plan.lists().restore()).flatMap(List::stream))
                    .as("%s: lists of a house that was left", what).isEmpty();
            assertThat(plan.steps().stream().filter(s -> s.stage() != Stage.MAKE_SAFE)).as("%s: warmth is elsewhere", what)
                    .noneMatch(s -> s.says().contains("electric heaters"));
        }
    }

    private static void theAskedComesFirst(WorkPlan plan, String what) {
        List<String> asked = plan.assessment().stops().stream().flatMap(s -> s.now().stream()).map(Danger.Act::says).distinct().toList();
        assertThat(plan.steps().stream().limit(asked.size()).map(PlanStep::says)).as("%s: what the dangers ask, in their order", what)
                .containsExactlyElementsOf(asked);
    }

    private static void noHeatBeforeItIsOver(WorkPlan plan, String what) {
        Set<String> standing = new TreeSet<>(plan.assessment().stops().stream().map(Assessment.StopFound::id)
                .filter(id -> HEAT.get(id) == Heat.OFF).toList());
        boolean asked = true;
        for (PlanStep step : plan.steps()) {
            step.clears().ifPresent(standing::remove);
            asked &= step.stage() == Stage.MAKE_SAFE;
            boolean clearing = isClearing(plan, step);
            if (!standing.isEmpty()) {
                assertThat(step.boilerMayFire()).as("%s: %s", what, step.id()).isFalse();
                assertThat(step.heatsToCelsius()).as("%s: %s", what, step.id()).isEmpty();
                if (!asked && !clearing) {
                    assertThat(BRINGS_HEAT.matcher(step.says()).find()).as("%s: \"%s\" while %s stands", what, step.says(), standing).isFalse();
                }
            }
        }
    }

    private static void nothingContradictsANever(WorkPlan plan, String what) {
        Set<String> standing = new TreeSet<>(plan.assessment().stops().stream().map(Assessment.StopFound::id).toList());
        for (PlanStep step : plan.steps()) {
            step.clears().ifPresent(standing::remove);
            if (step.stage() != Stage.MAKE_SAFE && !isClearing(plan, step)) {
                standing.stream().filter(NEVER::containsKey).forEach(id -> assertThat(NEVER.get(id).matcher(first(step.says())).find())
                        .as("%s: \"%s\" while %s stands", what, step.says(), id).isFalse());
            }
        }
        if (plan.assessment().isReferredByStop()) {
            List<String> lists = Stream.of(plan.lists().bring(), plan.lists().agree(), plan.lists().recordFirst(), plan.lists().restore())
                    .flatMap(List::stream).map(l -> l.toLowerCase(Locale.ROOT)).toList();
            assertThat(lists).as("%s: lists", what).noneMatch(l -> l.matches(".*(thermostat|programme|lockshield|ladder|inhibitor|cleaner|spanner).*"));
        }
    }

    /** What clears a danger may let water in or out; its order is the danger's own. */
    private static boolean isClearing(WorkPlan plan, PlanStep step) {
        return plan.assessment().stops().stream().flatMap(s -> s.clearing().stream()).anyMatch(c -> c.says().equals(step.says()));
    }

    /** The words of the step itself, without what it quotes of who comes and when it is over. */
    private static String first(String says) {
        int quoted = says.indexOf(" For \"");
        return quoted < 0 ? says : says.substring(0, quoted);
    }
}
