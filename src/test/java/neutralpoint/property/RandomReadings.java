package neutralpoint.property;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import neutralpoint.Shared;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.job.Answer;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import neutralpoint.job.RadiatorTable;
import neutralpoint.job.Temperatures;

/** Readings made at random: anything that a job file may hold, the ends of every range and the likely alike. */
public final class RandomReadings {
    private static final int MOST_RADIATORS = 40;
    /** Beside the usual ones, names that a sum or a sentence might stumble over. */
    private static final List<String> ODD_NAMES = List.of("boiler", "pipes", "cylinder coil", "100 %s", "a room with a name ".repeat(15), "together");
    private static final List<String> FLOORS = List.of("ground", "first", "second", "unknown");
    private static final double READING_ERROR_KELVIN = 3;

    private RandomReadings() {}

    /** A job of readings alone: radiators, gauge log and figures. Every number is one that is accepted. */
    public static Job job(Random random) {
        Job job = Job.begin("readings").withRadiators(radiators(random)).withGauge(gauge(random));
        int oneIn = 1 + random.nextInt(4);
        for (Finding f : Shared.CATALOGUE.findings().values()) {
            if (f.type() == AnswerType.NUMBER && random.nextInt(oneIn) == 0) {
                job = job.with(f.id(), new Answer.Reading(within(f.lowest(), f.highest(), random), f.unit()));
            }
        }
        return possible(job.with("heat-source", new Answer.Several(List.of(RandomCallouts.any(List.of("gas-boiler", "oil-boiler", "solid-fuel"), random))))
                .with("hot-water-made-by", new Answer.One(RandomCallouts.any(List.of("cylinder", "on-demand"), random))));
    }

    /** Without those readings that lie below another which they cannot lie below. */
    static Job possible(Job job) {
        Job possible = job;
        for (Map.Entry<String, Answer> e : job.answers().entrySet()) {
            Optional<Answer> other = Shared.CATALOGUE.finding(e.getKey()).notBelow().flatMap(job::answer);
            if (e.getValue() instanceof Answer.Reading upper && other.orElse(null) instanceof Answer.Reading lower
                    && upper.value() < lower.value()) {
                possible = possible.without(e.getKey());
            }
        }
        return possible;
    }

    /** Up to forty radiators, in half of all houses such as are found, in the others anything the table takes. */
    static List<Radiator> radiators(Random random) {
        boolean likely = random.nextBoolean();
        double flow = 50 + random.nextInt(30);
        Set<String> names = new HashSet<>();
        List<Radiator> radiators = new ArrayList<>();
        for (int i = 0; i < random.nextInt(MOST_RADIATORS + 1); i++) {
            String name = random.nextInt(20) == 0 ? RandomCallouts.any(ODD_NAMES, random) : "radiator " + (i + 1);
            if (names.add(name.strip())) {
                radiators.add(new Radiator(name.strip(), RandomCallouts.any(FLOORS, random),
                        RandomCallouts.any(List.of("", "front", "back"), random), random.nextBoolean() ? OptionalDouble.empty()
                        : OptionalDouble.of(10 * random.nextInt(21)), body(random),
                        RandomCallouts.any(List.of("open", "open", "part-shut", "shut", "unknown"), random),
                        likely ? likely(flow, random) : anything(random)));
            }
        }
        return radiators;
    }

    private static Optional<RadiatorSize> body(Random random) {
        return random.nextInt(8) == 0 ? Optional.empty() : Optional.of(new RadiatorSize(RandomCallouts.any(RadiatorSize.TYPES, random),
                (int) column("heightMillimetres", random), (int) column("lengthMillimetres", random)));
    }

    /** A flow that suits the house, and a drop, a base and a top from healthy to blocked. */
    private static Temperatures likely(double houseFlow, Random random) {
        double flow = houseFlow - random.nextInt(6);
        double back = flow - random.nextInt(32) + 4;
        double top = (flow + back) / 2 + random.nextInt(4) - (random.nextInt(6) == 0 ? 20 : 0);
        double base = Math.min(top, back) + random.nextInt(3) - (random.nextInt(4) == 0 ? 15 : 0);
        return physical(OptionalDouble.of(top), OptionalDouble.of(base), OptionalDouble.of(flow), OptionalDouble.of(back));
    }

    private static Temperatures anything(Random random) {
        return physical(maybe("topCelsius", random), maybe("baseCelsius", random), maybe("flowTailCelsius", random),
                maybe("returnTailCelsius", random));
    }

    /** No face is hotter than the hotter tail by more than the reading error. */
    private static Temperatures physical(OptionalDouble top, OptionalDouble base, OptionalDouble flow, OptionalDouble back) {
        double hottest = flow.isPresent() ? Math.max(flow.getAsDouble(), back.orElse(flow.getAsDouble())) + READING_ERROR_KELVIN : 110;
        return new Temperatures(cooled(top, hottest), cooled(base, hottest), flow, back);
    }

    private static OptionalDouble cooled(OptionalDouble celsius, double hottest) {
        return celsius.isPresent() ? OptionalDouble.of(Math.min(celsius.getAsDouble(), hottest)) : celsius;
    }

    private static OptionalDouble maybe(String column, Random random) {
        return random.nextInt(6) == 0 ? OptionalDouble.empty() : OptionalDouble.of(column(column, random));
    }

    private static double column(String field, Random random) {
        RadiatorTable.Column c = RadiatorTable.COLUMNS.stream().filter(x -> x.field().equals(field)).findFirst().orElseThrow();
        return within(c.lowest(), c.highest(), random);
    }

    /** Up to a dozen readings in no order, from minutes to years apart: a leaking gauge, a steady one, or anything. */
    static List<GaugeReading> gauge(Random random) {
        LocalDateTime start = LocalDateTime.of(2026, 1, 5, 8, 0);
        int minutes = RandomCallouts.any(List.of(1, 60, 60 * 24 * 14, 60 * 24 * 900), random);
        double bar = within(0, 6, random);
        double lossPerReading = RandomCallouts.any(List.of(0.0, 0.01, 0.1, -0.1), random);
        boolean anything = random.nextBoolean();
        return IntStream.range(0, random.nextInt(13)).mapToObj(i -> new GaugeReading(start.plusMinutes(anything ? random.nextInt(minutes) : (long) i * minutes / 12),
                anything ? within(0, 6, random) : Math.min(6, Math.max(0, bar - i * lossPerReading)),
                anything ? within(0, 110, random) : 20)).toList();
    }

    /** To one decimal place, the two ends of the range among them; nought without a sign, as a file would give it back. */
    static double within(double lowest, double highest, Random random) {
        return switch (random.nextInt(10)) {
            case 0 -> lowest;
            case 1 -> highest;
            default -> Math.min(highest, Math.max(lowest, Math.rint(10 * (lowest + random.nextDouble() * (highest - lowest))) / 10 + 0.0));
        };
    }
}
