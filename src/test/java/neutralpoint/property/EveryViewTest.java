package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.document.Json;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.report.ArrangementSheet;
import neutralpoint.report.AssessmentJson;
import neutralpoint.report.AssessmentText;
import neutralpoint.report.CautionView;
import neutralpoint.report.EmergencyPage;
import neutralpoint.report.RadiatorSheet;
import neutralpoint.report.SumsText;
import neutralpoint.report.WorkPlanJson;
import neutralpoint.report.WorkPlanMarkdown;
import neutralpoint.report.WorkPlanText;
import neutralpoint.report.chart.HeatStrip;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workplan.WorkPlan;
import org.junit.jupiter.api.Test;

/** One house has one set of figures, whatever page they stand on, and none is finer than it can be measured. */
class EveryViewTest {
    private static final int TRIES = Integer.getInteger("neutralpoint.viewTries", 400);
    private static final long SEED = Long.getLong("neutralpoint.seed", 2400);
    private static final int ENOUGH = 10;
    /** So wide that no sentence is broken. */
    private static final int WIDE = 4000;
    private static final Pattern TOO_FINE_FOR_PEOPLE = Pattern.compile("\\d\\.\\d{4,}|\\d\\.?\\d*E-?\\d+|NaN|Infinity");
    private static final Pattern TOO_FINE_FOR_PROGRAMS = Pattern.compile("\\d\\.\\d{5,}|\\d\\.?\\d*E-?\\d+|NaN|Infinity");
    /** Density of water in kg/m3 at so many degrees: CRC Handbook of Chemistry and Physics, from memory. */
    private static final double[][] DENSITY = {{10, 999.70}, {20, 998.21}, {30, 995.65}, {40, 992.22}, {50, 988.03}, {60, 983.20}, {70, 977.78},
            {80, 971.82}, {90, 965.35}, {100, 958.40}, {110, 950.95}, {120, 943.1}};

    @Test
    void noNumberIsFinerThanItCanBeMeasured() {
        IntStream.range(0, TRIES).parallel().forEach(number -> {
            Job job = job(number);
            views(job).forEach((view, text) -> {
                Pattern tooFine = view.endsWith("json") ? TOO_FINE_FOR_PROGRAMS : TOO_FINE_FOR_PEOPLE;
                assertThat(tooFine.matcher(text).results().map(MatchResult::group)).as("%s of %s", view, job.id()).isEmpty();
            });
        });
    }

    @Test
    void theSameFigureIsTheSameOnEveryPage() {
        AtomicInteger contents = new AtomicInteger();
        AtomicInteger rooms = new AtomicInteger();
        AtomicInteger fills = new AtomicInteger();
        IntStream.range(0, TRIES).parallel().forEach(number -> {
            Job job = likelyHouse(number);
            Assessment a = Shared.ASSESSOR.assess(job);
            String assessed = AssessmentText.of(a, List.of(), DisplayOptions.plain(WIDE), CautionView.ALL) + "\n" + SumsText.of(a, DisplayOptions.plain(WIDE));
            WorkPlan plan = WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, job, Optional.of("chemical-drain-and-rinse"));
            String planned = WorkPlanText.of(plan, Shared.CATALOGUE, WIDE, true);
            contents.addAndGet(agree(job, "The heating holds about ([\\d.]+)", assessed, "Water in the heating: ([\\d.]+)", planned, OptionalDouble.empty()));
            rooms.addAndGet(agree(job, "the (?:water|heating) gains ([\\d.]+) at (?:the )?most", assessed, "to [\\d.]+ degrees = ([\\d.]+)(?=\\n)", planned, gained(job, assessed)));
            fills.addAndGet(agree(job, "the height asks for ([\\d.]+) bar", assessed, "Cold pressure to set, at the least: ([\\d.]+)", planned, fill(job)));
        });
        assertThat(List.of(contents.get(), rooms.get(), fills.get())).as("houses in which content, room and fill were held against each other")
                .allMatch(times -> times >= ENOUGH);
    }

    /** 1 where both pages show the figure. */
    private static int agree(Job job, String one, String assessed, String other, String planned, OptionalDouble byHand) {
        Optional<Double> first = found(one, assessed);
        Optional<Double> second = found(other, planned);
        if (first.isEmpty() || second.isEmpty()) {
            return 0;
        }
        assertThat(second).as("%s: %s", job.id(), one).isEqualTo(first);
        byHand.ifPresent(worked -> assertThat(first.get()).as("%s by hand: %s", job.id(), one).isBetween(worked * 0.97 - 0.01, worked * 1.03 + 0.01));
        return 1;
    }

    private static Optional<Double> found(String pattern, String text) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        return m.find() ? Optional.of(Double.parseDouble(m.group(1))) : Optional.empty();
    }

    /** A metre of water is a tenth of a bar, and three tenths are wanted at the top to vent by. */
    private static OptionalDouble fill(Job job) {
        return reading(job, "highest-radiator-above-gauge-m").stream().map(h -> h > 0 ? 0.3 + h / 10 : 0.3).findFirst();
    }

    /** The most that the house's water gains: its greatest content by the densities at 10 degrees and at the flow. */
    private static OptionalDouble gained(Job job, String assessed) {
        double flow = reading(job, "boiler-flow-celsius").stream().filter(c -> c >= 40).findFirst().orElse(75);
        Optional<Double> most = found("The heating holds about [^(]*\\([\\d.]+ to ([\\d.]+)\\)", assessed).or(() -> found("The heating holds about ([\\d.]+)", assessed));
        return most.map(litres -> OptionalDouble.of(litres * (density(10) / density(flow) - 1))).orElse(OptionalDouble.empty());
    }

    private static double density(double celsius) {
        int i = 0;
        while (i < DENSITY.length - 2 && DENSITY[i + 1][0] < celsius) {
            i++;
        }
        double part = (celsius - DENSITY[i][0]) / (DENSITY[i + 1][0] - DENSITY[i][0]);
        return DENSITY[i][1] + part * (DENSITY[i + 1][1] - DENSITY[i][1]);
    }

    private static OptionalDouble reading(Job job, String finding) {
        return job.answer(finding).orElse(null) instanceof Answer.Reading r ? OptionalDouble.of(r.value()) : OptionalDouble.empty();
    }

    /** Half of them are of readings alone. */
    private static Job job(int number) {
        return number % 2 == 0 ? RandomCallouts.callout(SEED, number) : RandomReadings.job(new Random(SEED + number));
    }

    /** A case study with the readings that the figures want, none of them round. */
    private static Job likelyHouse(int number) {
        Random random = new Random(SEED * 7 + number);
        Job job = RandomCallouts.any(Shared.allCases(), random).job();
        job = job.radiators().size() < 3 ? job.with("system-content-litres", new Answer.Reading(60 + 100 * random.nextDouble(), "litres")) : job;
        job = job.with("feed-tank-room-litres", new Answer.Reading(1 + 9 * random.nextDouble(), "litres"));
        job = job.with("pressure-cold-bar", new Answer.Reading(0.5 + random.nextDouble(), "bar"));
        job = random.nextBoolean() ? job : job.with("boiler-flow-celsius", new Answer.Reading(20 + 60 * random.nextDouble(), "celsius"));
        return RandomReadings.possible(job.with("highest-radiator-above-gauge-m", new Answer.Reading(-1 + 8 * random.nextDouble(), "m")));
    }

    private static Map<String, String> views(Job job) {
        Map<String, String> views = new LinkedHashMap<>();
        Assessment a = Shared.ASSESSOR.assess(job);
        DisplayOptions look = DisplayOptions.plain(100);
        views.put("assessment", AssessmentText.of(a, List.of(), look, CautionView.ALL));
        views.put("sums", SumsText.of(a, look));
        views.put("arrangement", ArrangementSheet.of(a, Shared.CATALOGUE, Optional.empty(), 100, false));
        views.put("assessment json", Json.line(AssessmentJson.of(a)));
        views.put("radiators", RadiatorSheet.of(job, 100));
        views.put("strip", HeatStrip.of(job, look));
        List<String> pages = new ArrayList<>();
        Shared.CATALOGUE.emergencies().values().forEach(e -> pages.addAll(EmergencyPage.of(e, Shared.CATALOGUE, job, a.arrangement().traits())));
        views.put("emergencies", String.join("\n", pages));
        WorkPlan plan = WorkPlan.of(Shared.ASSESSOR, Shared.CATALOGUE, job, Optional.empty());
        views.put("plan", WorkPlanText.of(plan, Shared.CATALOGUE, 100, true));
        views.put("plan markdown", WorkPlanMarkdown.of(plan, Shared.CATALOGUE));
        views.put("plan json", Json.line(WorkPlanJson.of(plan)));
        return views;
    }
}
