package neutralpoint.workplan.figures;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static neutralpoint.workplan.Houses.CHEMICAL;
import static neutralpoint.workplan.Houses.MACHINE;
import static neutralpoint.workplan.Houses.OPEN;
import static neutralpoint.workplan.Houses.REPAIR;
import static neutralpoint.workplan.Houses.figure;
import static neutralpoint.workplan.Houses.isAbout;
import static neutralpoint.workplan.Houses.published;
import static neutralpoint.workplan.Houses.tenRadiators;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.workplan.Houses;
import org.junit.jupiter.api.Test;

/**
 * Every figure of a plan worked out by hand for one house: ten single finned panels of 600 by 1000 mm, 100 litres of
 * water, 12 litres a minute at the kitchen tap, grey bleed water.
 */
class QuantitiesTest {

    /** VOL-02: ten radiators at 10 litres and 10 for the boiler are 110; the rule may be a quarter out: 82.5 to 137.5. */
    @Test
    void aHouseNobodyHasMeasuredHoldsTenLitresARadiator() {
        Job job = Job.begin("rule").withRadiators(aJob().panels(10, "type-11", 600, 1000).job().radiators().stream()
                .map(r -> new Radiator(r.name(), "ground")).toList());
        Figure litres = figure(job, MACHINE, "system-litres");
        assertThat(litres.value().likely()).isEqualTo(published("content", "VOL-02").asNumber());
        isAbout(litres, 82.5, 110, 137.5, 1e-9);
        assertThat(figure(tenRadiators(), MACHINE, "system-litres").value()).isEqualTo(Estimate.exactly(100));
    }

    /** 1 litre to 100 and 110 litres (82.5 to 137.5) of water are 1.1 litres (0.825 to 1.375): two bottles, one at the least. */
    @Test
    void cleanerGoesByTheHundredLitresAndComesInWholeBottles() {
        Job job = Job.begin("rule").withRadiators(aJob().panels(10, "type-11", 600, 1000).job().radiators().stream()
                .map(r -> new Radiator(r.name(), "ground")).toList());
        isAbout(figure(job, MACHINE, "cleaner-litres"), 0.825, 1.1, 1.375, 1e-9);
        isAbout(figure(job, MACHINE, "cleaner-containers"), 1, 2, 2, 0);
        assertThat(figure(job, MACHINE, "cleaner-containers").shown()).isEqualTo("2 containers of 1 litre (1 to 2)");
        // Two litres to 100 from cans of five: 2.2 litres, one can.
        Job strong = more(job).reading("cleaner-dose-percent", 2).reading("container-size-litres", 5).job();
        isAbout(figure(strong, MACHINE, "cleaner-litres"), 1.65, 2.2, 2.75, 1e-9);
        isAbout(figure(strong, MACHINE, "cleaner-containers"), 1, 1, 1, 0);
        assertThat(figure(job, MACHINE, "cleaner-litres").sums()).anyMatch(s -> s.contains("common practice, no source"));
        assertThat(figure(strong, MACHINE, "cleaner-litres").sums()).noneMatch(s -> s.contains("common practice"));
    }

    /** 100 litres at 1 to 100 are one litre and one bottle, not two for a rounding. Neutraliser at 3 to 100: three. */
    @Test
    void inhibitorAndNeutraliserHaveDosesOfTheirOwn() {
        isAbout(figure(tenRadiators(), MACHINE, "inhibitor-litres"), 1, 1, 1, 1e-12);
        isAbout(figure(tenRadiators(), MACHINE, "inhibitor-containers"), 1, 1, 1, 0);
        isAbout(figure(more(tenRadiators()).reading("neutraliser-dose-percent", 3).job(), MACHINE, "neutraliser-litres"), 3, 3, 3, 1e-12);
        isAbout(figure(more(tenRadiators()).reading("inhibitor-dose-percent", 0.5).job(), MACHINE, "inhibitor-litres"), 0.5, 0.5, 0.5, 1e-12);
        // A mains-pressure flush carries no cleaner; the refill is protected all the same.
        Quantities mains = Quantities.of(tenRadiators(), Houses.scope("full-flush", "mains-pressure-flush", Set.of("sealed")));
        assertThat(mains.figure("cleaner-litres")).isEmpty();
        assertThat(mains.figure("inhibitor-litres")).isPresent();
    }

    @Test
    void nothingIsDosedWhereHeatingWaterReachesTheTaps() {
        Quantities none = Quantities.of(tenRadiators(), Houses.scope("component-repair", "", Set.of("open-vented", "no-additives")));
        assertThat(none.figures()).noneMatch(f -> f.id().contains("inhibitor") || f.id().contains("cleaner") || f.id().contains("neutraliser"));
        assertThat(none.figure("refill-litres")).isPresent();
    }

    /**
     * 100 litres at 10 degrees weigh 99.98 kg; x 4.178 kJ/kg K (steam tables, 35 degrees) x 50 K / 3600 = 5.80 kWh. Metal
     * takes 0.45 of that again (0.3 to 0.6): 8.41 kWh (7.54 to 9.28). Heated to clean and again to prove: 16.83.
     */
    @Test
    void waterAndMetalAreHeatedFromTenToSixtyDegrees() {
        isAbout(figure(tenRadiators(), MACHINE, "heat-up-kilowatt-hours"), 7.542, 8.413, 9.283, 0.005);
        isAbout(figure(tenRadiators(), MACHINE, "energy-kilowatt-hours"), 15.08, 16.83, 18.57, 0.01);
        isAbout(figure(tenRadiators(), REPAIR, "energy-kilowatt-hours"), 7.542, 8.413, 9.283, 0.005);
    }

    /**
     * 24 kW alone would take 8.41 / 24 = 21.0 minutes. The panels give 979 W each at 50 K over the room (RADV-11-600), so
     * 9.79 kW, and by the power 1.3 nothing at 20 degrees, 1.21 kW at 30, 2.98 at 40, 5.04 at 50, 7.33 at 60. What is left
     * is 24, 24, 22.79, 21.02, 18.96, 16.67; trapezia of its inverse from 10 to 60 make 2.367 K/kW, and
     * 8.413 / 50 x 2.367 x 60 = 23.9 minutes.
     */
    @Test
    void theBoilerHeatsTheRoomsOnTheWay() {
        assertThat(published("content", "RADV-11-600").asFields().get("watt_per_m").asNumber()).isEqualTo(979);
        Job job = more(tenRadiators()).reading("boiler-output-kw", 24).job();
        assertThat(figure(job, MACHINE, "heat-up-minutes-by-boiler").value().likely()).isCloseTo(23.9, within(0.1));
        // 36 kW: 24, 24 ... become 36, 36, 34.79, 33.02, 30.96, 28.67; trapezia make 1.504 K/kW: 15.2 minutes.
        Job both = more(job).reading("flushing-heater-kilowatts", 12).job();
        assertThat(figure(both, MACHINE, "heat-up-minutes-by-both").value().likely()).isCloseTo(15.19, within(0.1));
    }

    /** A heater of 3 kW against ten radiators that give 7.3 kW at 60 degrees: it never gets there. */
    @Test
    void aSmallHeaterDoesNotHeatAHouseWithEveryRadiatorOpen() {
        Quantities small = Quantities.of(more(tenRadiators()).reading("flushing-heater-kilowatts", 3).job(), MACHINE);
        assertThat(small.figure("heat-up-minutes-by-heater")).isEmpty();
        assertThat(small.toMeasure()).anyMatch(s -> s.startsWith("With every radiator open the flushing machine's heater at 3 kW cannot be "
                + "relied on to reach 60 degrees"));
        assertThat(Quantities.of(more(tenRadiators()).reading("flushing-heater-kilowatts", 0).job(), MACHINE).toMeasure())
                .noneMatch(s -> s.contains("heater"));
    }

    /** 30 litres a minute x 60 / 100 litres = 18 times an hour; a guess of 20 to 45 makes 12 to 27. */
    @Test
    void theFlushingPumpTurnsTheWaterOver() {
        isAbout(figure(tenRadiators(), MACHINE, "turnovers-per-hour"), 12, 18, 27, 1e-9);
        isAbout(figure(more(tenRadiators()).reading("flushing-pump-litres-per-minute", 25).job(), MACHINE, "turnovers-per-hour"), 15, 15, 15, 1e-9);
        assertThat(Quantities.of(tenRadiators(), CHEMICAL).figure("turnovers-per-hour")).as("its own pump").isEmpty();
    }

    /**
     * CU-22x0.9 holds 0.3205 litres to the metre: 30 litres a minute are 30 / 60 / 0.3205 = 1.56 m/s, over the 1.5 at which
     * small copper is heard (VEL-03). CU-28x0.9 holds 0.5391: 0.93 m/s, under the 1.0 that pipes are sized for (VEL-01).
     */
    @Test
    void theLargestPipeSetsTheSpeed() {
        Job job = more(tenRadiators()).reading("flushing-pump-litres-per-minute", 30).job();
        double litresPerMetre = published("content", "CU-22x0.9").asFields().get("litre_per_m").asNumber();
        Figure usual = figure(job, MACHINE, "pipe-velocity-metres-per-second");
        isAbout(usual, 1.560, 1.560, 1.560, 0.001);
        assertThat(usual.value().likely()).isCloseTo(30 / 60.0 / litresPerMetre, within(0.001)).isGreaterThan(published("pipework", "VEL-03").asNumber());
        assertThat(usual.sums()).contains("fast and heard, as a flush should be for a short time")
                .anyMatch(s -> s.startsWith("pipe 22 mm outside") && s.endsWith("common practice, no source"));
        Figure large = figure(job.with("largest-pipe", new Answer.One("copper-28")), MACHINE, "pipe-velocity-metres-per-second");
        isAbout(large, 0.9275, 0.9275, 0.9275, 0.001);
        assertThat(large.value().likely()).isLessThan(published("pipework", "VEL-01").asNumber());
        assertThat(large.sums()).contains("fast enough to keep sludge moving, not to lift all of it", "pipe 28 mm outside, 26.2 mm bore");
        // VEL-04: under 0.5 m/s sludge settles. VEL-05: over 2.5 copper wears.
        Map.of(9.0, "too slow to carry sludge: clean leg by leg", 25.0, "fast enough to carry sludge",
                49.0, "faster than copper bears for long: throttle the pump").forEach((flow, says) -> assertThat(figure(
                more(tenRadiators()).reading("flushing-pump-litres-per-minute", flow).job(), MACHINE, "pipe-velocity-metres-per-second").sums()).contains(says));
        // Plastic of 22 mm is 17.6 mm inside, 0.2433 litres to the metre (PB-22, from memory): 2.06 m/s.
        isAbout(figure(job.with("largest-pipe", new Answer.One("plastic-22")), MACHINE, "pipe-velocity-metres-per-second"), 2.055, 2.055, 2.055, 0.002);
    }

    /** 300 percent of the main to within a tenth of it: ln(200 / 10) = 2.9957 turnovers (DIL-N1500-500); 100 litres: 299.6. */
    @Test
    void theCircuitIsRinsedUntilItReadsLikeTheMain() {
        Figure rinse = figure(tenRadiators(), MACHINE, "rinse-litres");
        // 200 percent: ln 10 = 2.303; 500 percent: ln 40 = 3.689.
        isAbout(rinse, 230.3, 299.6, 368.9, 0.1);
        assertThat(rinse.value().likely()).isCloseTo(100 * published("dilution", "DIL-N1500-500").asNumber(), within(0.01));
        // 400 percent was read: ln 30 = 3.4012 (DIL-N1200-300), and cleaner may add to it.
        isAbout(figure(more(tenRadiators()).reading("tds-of-mains-percent", 400).job(), MACHINE, "rinse-litres"), 340.1, 340.1, 368.9, 0.1);
        isAbout(figure(more(tenRadiators()).reading("tds-of-mains-percent", 90).job(), MACHINE, "rinse-litres"), 230.3, 299.6, 368.9, 0.1);
        // 299.6 / 12 = 24.96 minutes.
        isAbout(figure(tenRadiators(), MACHINE, "rinse-minutes"), 19.19, 24.96, 30.74, 0.01);
    }

    /** Dumps 97.36, rinse 299.57, refill 100: 496.9 litres from the main, and as much to the drain. */
    @Test
    void waterInIsWaterOut() {
        isAbout(figure(tenRadiators(), MACHINE, "water-litres"), 413.0, 496.9, 580.9, 0.1);
        assertThat(figure(tenRadiators(), MACHINE, "waste-litres").value()).isEqualTo(figure(tenRadiators(), MACHINE, "water-litres").value());
        // Chemical clean: no dumps. 299.57 + 100.
        isAbout(figure(tenRadiators(), CHEMICAL, "water-litres"), 330.3, 399.6, 468.9, 0.1);
        // A repair lets out four tenths, a tenth to all: 40 litres (10 to 100).
        isAbout(figure(tenRadiators(), REPAIR, "water-litres"), 10, 40, 100, 1e-9);
    }

    /** 100 litres by a hose at 8 litres a minute (4 to 12): 12.5 minutes (8.33 to 25). */
    @Test
    void drainingGoesByTheHose() {
        isAbout(figure(tenRadiators(), MACHINE, "drain-litres"), 100, 100, 100, 0);
        isAbout(figure(tenRadiators(), MACHINE, "drain-minutes"), 8.333, 12.5, 25, 0.001);
    }

    /** 12 litres a minute at the tap, 0.7 of it through a loop or float valve (0.4 to 1): 100 / 8.4 = 11.9 (8.33 to 20.8). */
    @Test
    void refillingIsSlowerThanTheTap() {
        isAbout(figure(tenRadiators(), MACHINE, "refill-minutes"), 8.333, 11.905, 20.833, 0.001);
    }

    /** Highest radiator 5 m above the gauge: 0.1 x 5 + 0.3 = 0.8 bar. Below the gauge: 0.3 to vent by. */
    @Test
    void aSealedSystemIsFilledToItsHeight() {
        isAbout(figure(more(tenRadiators()).reading("highest-radiator-above-gauge-m", 5).job(), MACHINE, "fill-bar"), 0.8, 0.8, 0.8, 1e-9);
        isAbout(figure(more(tenRadiators()).reading("highest-radiator-above-gauge-m", -2).job(), MACHINE, "fill-bar"), 0.3, 0.3, 0.3, 1e-9);
        assertThat(Quantities.of(tenRadiators(), MACHINE).toMeasure()).anyMatch(s -> s.contains("highest radiator stands above the gauge"));
        assertThat(Quantities.of(tenRadiators(), OPEN).figure("fill-bar")).isEmpty();
        assertThat(Quantities.of(more(tenRadiators()).reading("highest-radiator-above-gauge-m", 5).job(), Houses.scope("vent-and-balance", "", Set.of("sealed")))
                .figure("fill-bar")).as("set whenever it is vented").isPresent();
    }

    /**
     * From 10 degrees water gains 1.96 % to the usual mean of 65 (densities 999.70 and 980.55) and 2.55 % to the usual flow of 75
     * (974.84; CRC Handbook of Chemistry and Physics, density of water, from memory); usually room for 4 litres in a hundred is left.
     */
    @Test
    void aLoftTankKeepsRoomForWhatHotWaterGains() {
        Figure room = figure(more(tenRadiators()).reading("feed-tank-room-litres", 3).job(), OPEN, "tank-room-litres");
        isAbout(room, 1.953, 1.953, 4, 0.01);
        assertThat(room.sums()).contains("it has room for 3 litres and the water gains 2.55 at the most: leave the float as it is");
        assertThat(figure(more(tenRadiators()).reading("feed-tank-room-litres", 4).job(), OPEN, "tank-room-litres").sums())
                .contains("it has room for 4 litres and the water gains 2.55 at the most: leave the float as it is");
        assertThat(figure(more(tenRadiators()).reading("feed-tank-room-litres", 2).job(), OPEN, "tank-room-litres").sums())
                .contains("it has room for 2 litres, which may be short: set the float lower");
        assertThat(figure(more(tenRadiators()).reading("feed-tank-room-litres", 1.9).job(), OPEN, "tank-room-litres").sums())
                .contains("it has room for 1.9 litres only: set the float lower");
        assertThat(Quantities.of(tenRadiators(), OPEN).toMeasure()).anyMatch(s -> s.contains("above the cold water line in the loft tank"));
        assertThat(Quantities.of(tenRadiators(), MACHINE).figure("tank-room-litres")).isEmpty();
    }
}
