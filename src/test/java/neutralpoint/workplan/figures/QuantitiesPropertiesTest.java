package neutralpoint.workplan.figures;

import static neutralpoint.JobBuilder.more;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import neutralpoint.Radiators;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.workplan.Houses;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What holds for the figures of every plan, whatever the house. */
class QuantitiesPropertiesTest {
    private static final long SEED = 20_261_126;
    private static final int HOUSES = 60;

    @Test
    void everyFigureIsFiniteAndNotNegativeAndItsPartsAddUp() {
        Random random = new Random(SEED);
        List<JobScope> scopes = Houses.scopes();
        for (int i = 0; i < HOUSES; i++) {
            Job job = Houses.random(random);
            for (JobScope scope : scopes) {
                Quantities all = Quantities.of(job, scope);
                String which = "seed " + SEED + ", house " + i + ", " + scope;
                List<Figure> figures = new ArrayList<>(all.figures());
                all.dumps().forEach(d -> {
                    figures.add(d.litres());
                    d.minutes().ifPresent(figures::add);
                });
                assertThat(figures).as(which).allMatch(f -> f.value().low() >= 0 && f.value().high() < 1e6 && !f.sums().isEmpty()
                        && !f.source().isBlank() && f.sums().stream().noneMatch(s -> s.contains("NaN") || s.contains("Infinity")));
                assertThat(figures).as(which).extracting(Figure::id).doesNotHaveDuplicates();
                addsUp(all, which, Estimate::low);
                addsUp(all, which, Estimate::likely);
                addsUp(all, which, Estimate::high);
            }
        }
    }

    private static void addsUp(Quantities all, String which, ToDoubleFunction<Estimate> end) {
        double dumps = all.dumps().stream().mapToDouble(d -> end.applyAsDouble(d.litres().value())).sum();
        all.figure("dump-litres").ifPresent(f -> near(end.applyAsDouble(f.value()), dumps, which));
        all.figure("dump-minutes").ifPresent(f -> near(end.applyAsDouble(f.value()),
                all.dumps().stream().mapToDouble(d -> end.applyAsDouble(d.minutes().orElseThrow().value())).sum(), which));
        all.figure("water-litres").ifPresent(f -> near(end.applyAsDouble(f.value()), part(all, "dump-litres", end)
                + part(all, "rinse-litres", end) + part(all, "refill-litres", end), which));
        all.figure("waste-litres").ifPresent(f -> near(end.applyAsDouble(f.value()), part(all, "dump-litres", end)
                + part(all, "rinse-litres", end) + part(all, "drain-litres", end), which));
    }

    private static double part(Quantities all, String id, ToDoubleFunction<Estimate> end) {
        return all.figure(id).map(f -> end.applyAsDouble(f.value())).orElse(0.0);
    }

    private static void near(double value, double expected, String which) {
        assertThat(value).as(which).isCloseTo(expected, Offset.offset(1e-6 * Math.max(1, expected)));
    }

    @Test
    void moreRadiatorsNeverTakeLessOfAnything() {
        Random random = new Random(SEED);
        for (int i = 0; i < HOUSES; i++) {
            Job job = Houses.random(random).without("system-content-litres");
            if (job.radiators().size() < 3) {
                continue;
            }
            // One more like the last: a first unmeasured one would turn a count into a rule of thumb.
            Radiator last = job.radiators().get(job.radiators().size() - 1);
            List<Radiator> more = new ArrayList<>(job.radiators());
            more.add(last.body().map(b -> Radiators.sized("one more", b.type(), b.heightMillimetres(), b.lengthMillimetres()))
                    .orElse(new Radiator("one more", "ground")));
            Quantities before = Quantities.of(job, Houses.MACHINE);
            Quantities after = Quantities.of(job.withRadiators(more), Houses.MACHINE);
            for (String id : List.of("system-litres", "dump-litres", "rinse-litres", "refill-litres", "water-litres", "cleaner-litres",
                    "cleaner-containers", "drain-minutes", "energy-kilowatt-hours")) {
                neverLess(before.figure(id), after.figure(id), "seed " + SEED + ", house " + i + ", " + id);
            }
        }
    }

    @Test
    void aFasterSupplyIsNeverSlower() {
        Random random = new Random(SEED);
        for (int i = 0; i < HOUSES; i++) {
            double flow = 1 + random.nextDouble() * 40;
            Job job = Houses.random(random);
            for (JobScope scope : Houses.scopes()) {
                Quantities slow = Quantities.of(more(job).reading("cold-supply-litres-per-minute", flow).job(), scope);
                Quantities fast = Quantities.of(more(job).reading("cold-supply-litres-per-minute", flow * 1.4).job(), scope);
                for (String id : List.of("dump-minutes", "rinse-minutes", "refill-minutes")) {
                    neverLess(fast.figure(id), slow.figure(id), "seed " + SEED + ", house " + i + ", " + scope + ", " + id);
                }
            }
        }
    }

    @Test
    void aStrongerBoilerIsNeverSlower() {
        Random random = new Random(SEED);
        for (int i = 0; i < HOUSES; i++) {
            double power = 5 + random.nextDouble() * 60;
            Job job = Houses.random(random);
            String id = "heat-up-minutes-by-boiler";
            Optional<Figure> weak = Quantities.of(more(job).reading("boiler-output-kw", power).job(), Houses.REPAIR).figure(id);
            Optional<Figure> strong = Quantities.of(more(job).reading("boiler-output-kw", power * 1.3).job(), Houses.REPAIR).figure(id);
            assertThat(weak.isEmpty() || strong.isPresent()).as("seed %d, house %d: a stronger one gets there too", SEED, i).isTrue();
            neverLess(strong.filter(s -> weak.isPresent()), weak, "seed " + SEED + ", house " + i);
        }
    }

    /** Where both are worked out, every end of the second is as much as that of the first; a hair is rounding. */
    private static void neverLess(Optional<Figure> less, Optional<Figure> more, String which) {
        if (less.isPresent() && more.isPresent()) {
            Estimate a = less.get().value();
            Estimate b = more.get().value();
            assertThat(b.low()).as(which).isGreaterThanOrEqualTo(a.low() * (1 - 1e-6));
            assertThat(b.likely()).as(which).isGreaterThanOrEqualTo(a.likely() * (1 - 1e-6));
            assertThat(b.high()).as(which).isGreaterThanOrEqualTo(a.high() * (1 - 1e-6));
        }
    }
}
