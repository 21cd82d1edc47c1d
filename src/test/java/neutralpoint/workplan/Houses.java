package neutralpoint.workplan;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import neutralpoint.Radiators;
import neutralpoint.Shared;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import neutralpoint.workplan.figures.Figure;
import neutralpoint.workplan.figures.JobScope;
import neutralpoint.workplan.figures.Quantities;

/** Houses to work plans out for, known ones and random ones, and the published values to hold the sums against. */
public final class Houses {
    public static final JobScope MACHINE = scope("full-flush", "machine-flush", Set.of("sealed"));
    public static final JobScope OPEN = scope("full-flush", "machine-flush", Set.of("open-vented", "loft-tank"));
    public static final JobScope CHEMICAL = scope("partial-cleanse", "chemical-drain-and-rinse", Set.of("sealed"));
    public static final JobScope REPAIR = scope("component-repair", "", Set.of("sealed"));

    private Houses() {}

    /** @param method empty where nothing is cleansed */
    public static JobScope scope(String course, String method, Set<String> traits) {
        return new JobScope(Shared.CATALOGUE.course(course), Optional.of(method).filter(m -> !m.isEmpty()).map(Shared.CATALOGUE::method), traits);
    }

    /** Ten single finned panels of 600 by 1000 mm; 100 litres measured, 12 litres a minute at the tap, bleed water grey. */
    public static Job tenRadiators() {
        return aJob().panels(10, "type-11", 600, 1000).with("bleed-water", "black").reading("system-content-litres", 100)
                .reading("cold-supply-litres-per-minute", 12).job();
    }

    /** Every course with each of its methods, on systems of several kinds. */
    public static List<JobScope> scopes() {
        List<JobScope> scopes = new ArrayList<>();
        List<Set<String>> systems = List.of(Set.of(), Set.of("sealed"), Set.of("open-vented", "loft-tank"), Set.of("sealed", "microbore"),
                Set.of("open-vented", "cylinder", "shared-tank", "no-additives", "no-flush"), Set.of("sealed", "on-demand", "boiler-with-vessel"));
        Shared.CATALOGUE.courses().keySet().forEach(course -> systems.forEach(traits -> {
            scopes.add(scope(course, "", traits));
            Shared.CATALOGUE.methods().values().stream().filter(m -> m.courses().contains(course))
                    .forEach(m -> scopes.add(scope(course, m.id(), traits)));
        }));
        return scopes;
    }

    /** None to fourteen radiators of any kind and size, and any of the findings that a plan reads, ends of their range among them. */
    public static Job random(Random random) {
        List<String> findings = List.of("system-content-litres", "boiler-output-kw", "cold-supply-litres-per-minute", "largest-pipe",
                "flushing-pump-litres-per-minute", "flushing-heater-kilowatts", "cleaner-dose-percent", "neutraliser-dose-percent",
                "inhibitor-dose-percent", "container-size-litres", "tds-of-mains-percent", "highest-radiator-above-gauge-m",
                "boiler-flow-celsius", "feed-tank-room-litres", "bleed-water", "drain-water", "cold-base-count", "radiator-piping",
                "hot-water-made-by", "heat-source");
        Job job = Job.begin("random").withRadiators(IntStream.range(0, random.nextInt(15)).mapToObj(i -> random.nextInt(4) == 0
                ? new Radiator("room " + i, "ground")
                : Radiators.sized("room " + i, RadiatorSize.TYPES.get(random.nextInt(RadiatorSize.TYPES.size())), 100 + random.nextInt(2401), 100 + random.nextInt(5901))).toList());
        for (String id : findings) {
            if (random.nextInt(3) > 0) {
                job = job.with(id, answer(Shared.CATALOGUE.finding(id), random));
            }
        }
        return job;
    }

    private static Answer answer(Finding f, Random random) {
        if (random.nextInt(10) == 0) {
            return Answer.NOT_CHECKED;
        }
        if (f.type() == AnswerType.NUMBER) {
            double share = random.nextInt(6) == 0 ? 0 : random.nextInt(6) == 0 ? 1 : random.nextDouble();
            return new Answer.Reading(f.lowest() + share * (f.highest() - f.lowest()), f.unit());
        }
        String option = f.optionIds().get(random.nextInt(f.optionIds().size()));
        return f.type() == AnswerType.SEVERAL_OF ? new Answer.Several(List.of(option)) : new Answer.One(option);
    }

    /** What a published check value says is to be expected. */
    public static Node published(String subject, String id) {
        return Documents.readJson(Path.of("src/test/resources/references", subject + ".json")).asItems().items().stream().map(Node::asFields)
                .filter(e -> e.text("id").equals(id)).findFirst().orElseThrow().get("expected");
    }

    /** A figure of the plan, which must be there. */
    public static Figure figure(Job job, JobScope scope, String id) {
        Quantities all = Quantities.of(job, scope);
        return all.figure(id).orElseThrow(() -> new AssertionError(id + " was not worked out; to measure: " + all.toMeasure()));
    }

    /** All three ends of a figure, near enough. */
    public static void isAbout(Figure figure, double low, double likely, double high, double give) {
        assertThat(figure.value().low()).as(figure.toString()).isCloseTo(low, within(give));
        assertThat(figure.value().likely()).as(figure.toString()).isCloseTo(likely, within(give));
        assertThat(figure.value().high()).as(figure.toString()).isCloseTo(high, within(give));
    }
}
