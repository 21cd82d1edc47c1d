package neutralpoint.workplan.figures;

import static neutralpoint.JobBuilder.more;
import static neutralpoint.workplan.Houses.MACHINE;
import static neutralpoint.workplan.Houses.REPAIR;
import static neutralpoint.workplan.Houses.figure;
import static neutralpoint.workplan.Houses.isAbout;
import static neutralpoint.workplan.Houses.tenRadiators;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import neutralpoint.Radiators;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.workplan.Houses;
import org.junit.jupiter.api.Test;

/** The arithmetic beside each figure, and what is asked for where something was not measured. */
class QuantitiesSumsTest {

    @Test
    void whatIsMissingIsSaidInASentence() {
        Quantities bare = Quantities.of(Job.begin("bare"), MACHINE);
        assertThat(bare.figures()).extracting(Figure::id).containsExactly("pipe-velocity-metres-per-second");
        assertThat(bare.toMeasure()).anyMatch(s -> s.startsWith("List at least three radiators")).anyMatch(s -> s.startsWith("List the radiators by room"))
                .doesNotHaveDuplicates().allMatch(s -> s.endsWith("."));
        Quantities dribble = Quantities.of(more(tenRadiators()).reading("cold-supply-litres-per-minute", 0.5).job(), MACHINE);
        assertThat(dribble.toMeasure()).anyMatch(s -> s.startsWith("The cold supply gives next to nothing"));
        assertThat(dribble.figure("refill-minutes")).isEmpty();
        assertThat(dribble.figure("water-litres")).isPresent();
        assertThat(dribble.dumps()).allMatch(d -> d.minutes().isEmpty());
        assertThat(Quantities.of(tenRadiators().without("cold-supply-litres-per-minute"), MACHINE).toMeasure())
                .anyMatch(s -> s.startsWith("Time a jug at the cold kitchen tap"));
    }

    /** What a figure is made of can be gone through with a pencil. */
    @Test
    void theArithmeticStandsBesideTheFigure() {
        Job job = more(tenRadiators()).reading("boiler-output-kw", 24).job();
        assertThat(figure(job, MACHINE, "water-litres").sums()).containsExactly("dumps 97.4 litres (82.8 to 112)", "rinsing 300 litres (230 to 369)",
                "refill 100 litres", "together 497 litres (413 to 581)");
        assertThat(figure(job, MACHINE, "waste-litres").sums()).containsExactly("dumps 97.4 litres (82.8 to 112)", "rinsing 300 litres (230 to 369)",
                "let out 100 litres", "together 497 litres (413 to 581)");
        assertThat(figure(job, MACHINE, "drain-litres").sums()).containsExactly("all of the water is let out: 100 litres");
        assertThat(figure(job, MACHINE, "drain-litres").source()).isEqualTo("content of the system");
        assertThat(figure(job, REPAIR, "drain-litres").sums())
                .containsExactly("100 litres x a share of 0.4 (0.1 to 1), by how high up the place is = 40 litres (10 to 100)");
        assertThat(figure(job, REPAIR, "drain-litres").source()).endsWith("common practice, no source");
        assertThat(figure(job, MACHINE, "energy-kilowatt-hours").sums()).startsWith("heated once to clean and once to prove the system",
                "2 x 8.41 kWh (7.54 to 9.28) = 16.8 kWh (15.1 to 18.6)");
        assertThat(figure(job, REPAIR, "energy-kilowatt-hours").sums()).startsWith("heated once to prove the system");
        assertThat(figure(job, REPAIR, "heat-up-minutes-by-boiler").sums()).startsWith(
                "8.41 kWh (7.54 to 9.28) with 24 kW and nothing given away: 21.03 minutes").noneMatch(l -> l.contains("may fire"));
        assertThat(figure(job, MACHINE, "heat-up-minutes-by-boiler").sums())
                .contains("only while the boiler may fire: never with the vent or the vessel shut off");
        assertThat(figure(more(job).reading("flushing-heater-kilowatts", 15).job(), MACHINE, "heat-up-minutes-by-heater").sums())
                .noneMatch(l -> l.contains("may fire"));
        assertThat(Quantities.of(job, MACHINE).dumps().get(0).litres().sums()).containsExactly("holds 3.25 litres (2.76 to 3.74)",
                "water ordinary: 3 turnovers until clear", "3.25 x 3 = 9.74 litres (8.28 to 11.2)");
        assertThat(figure(job, MACHINE, "refill-minutes").source()).isEqualTo("the supply as measured");
        assertThat(figure(job.without("cold-supply-litres-per-minute"), MACHINE, "refill-minutes").source()).endsWith("common practice, no source");
    }

    /** Nobody listed the radiators: 100 litres are some ten of about 1 kW, and they cool the water just the same. */
    @Test
    void radiatorsNobodyListedStillGiveHeatAway() {
        Job job = more(Job.begin("bare")).reading("system-content-litres", 100).reading("boiler-output-kw", 24).job();
        assertThat(figure(job, REPAIR, "heat-up-minutes-by-boiler").value().likely()).isBetween(23.0, 25.0);
    }

    /** What has been read is not asked for again, and a figure that rests on no guess asks for nothing. */
    @Test
    void whatWasMeasuredIsNotAskedForAgain() {
        Job job = more(tenRadiators()).reading("boiler-output-kw", 24).reading("flushing-heater-kilowatts", 0).reading("flushing-pump-litres-per-minute", 30).reading("highest-radiator-above-gauge-m", 5).with("largest-pipe", "copper-22").job();
        assertThat(Quantities.of(job, MACHINE).toMeasure()).isEmpty();
        assertThat(Quantities.of(tenRadiators(), MACHINE).toMeasure()).anyMatch(s -> s.startsWith("Put a rule across the largest"))
                .anyMatch(s -> s.startsWith("Time a bucket at the flushing pump")).anyMatch(s -> s.startsWith("Read the power of the flushing"))
                .anyMatch(s -> s.startsWith("Read the boiler's heating output"));
        assertThat(figure(job, MACHINE, "system-litres").source()).isEqualTo("measured");
        Quantities counted = Quantities.of(job.without("system-content-litres"), MACHINE);
        assertThat(counted.toMeasure()).containsExactly("Measure the water when the system is next drained or filled: every figure rests on it.");
        assertThat(counted.figure("system-litres").orElseThrow().source()).startsWith("contents of parts");
        assertThat(Quantities.of(job.without("system-content-litres"), Houses.scope("refer", "", Set.of("sealed"))).toMeasure()).isEmpty();
        // Radiators of unknown size are asked for.
        assertThat(Quantities.of(Job.begin("some").withRadiators(List.of(new Radiator("hall", "ground"))), MACHINE).toMeasure())
                .anyMatch(s -> s.startsWith("Measure type, height and length"));
    }

    /** One litre a minute is the least that is called a supply; 200 percent of the main is the least a cleaner leaves. */
    @Test
    void whereALittleIsEnough() {
        assertThat(Quantities.of(more(tenRadiators()).reading("cold-supply-litres-per-minute", 1).job(), MACHINE).figure("refill-minutes")).isPresent();
        isAbout(figure(more(tenRadiators()).reading("tds-of-mains-percent", 201).job(), MACHINE, "rinse-litres"), 231.3, 231.3, 368.9, 0.1);
        assertThat(Quantities.of(more(tenRadiators()).reading("highest-radiator-above-gauge-m", 5).job(), Houses.scope("refer", "", Set.of("sealed")))
                .figure("fill-bar")).isEmpty();
    }

    /** Hundreds in whole numbers, tens to a tenth, less to a hundredth; one litre is not litres. */
    @Test
    void figuresAreNoFinerThanTheyCanBeMeasured() {
        assertThat(shown(new Estimate(99.96, 100, 123.4))).isEqualTo("100 litres (100 to 123)");
        assertThat(shown(new Estimate(9.996, 10, 45.67))).isEqualTo("10 litres (10 to 45.7)");
        assertThat(shown(Estimate.exactly(1))).isEqualTo("1 litre");
        assertThat(shown(Estimate.exactly(9.876))).isEqualTo("9.88 litres");
        assertThat(shown(Estimate.exactly(98.76))).isEqualTo("98.8 litres");
        assertThat(shown(Estimate.exactly(987.6))).isEqualTo("988 litres");
    }

    private static String shown(Estimate value) {
        return new Figure("water", "Water", value, "litres", List.of("as read"), "a test").shown();
    }

    @Test
    void noHouseHoldsFiveThousandLitres() {
        Job job = Job.begin("mansion").withRadiators(IntStream.range(0, 40)
                .mapToObj(i -> Radiators.sized("room " + i, "type-33", 2500, 6000)).toList());
        assertThat(Quantities.of(job, MACHINE).figure("system-litres")).isEmpty();
        assertThat(Quantities.of(job, MACHINE).toMeasure()).anyMatch(s -> s.contains("more water than any house holds"));
    }

    @Test
    void aReferralNeedsNoFigures() {
        assertThat(Quantities.of(tenRadiators(), Houses.scope("refer", "", Set.of("sealed"))).figures()).extracting(Figure::id)
                .containsExactly("system-litres");
    }
}
