package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.Radiators;
import neutralpoint.hydronics.emitter.BoilerKind;
import neutralpoint.hydronics.emitter.RadiatorType;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorSize;
import org.junit.jupiter.api.Test;

/** How much water the heating holds: measured, added up, or by rule of thumb, and always with its doubt. */
class SystemLitresTest {

    private static SystemLitres litres(Job job) {
        return SystemLitres.of(job).orElseThrow();
    }

    @Test
    void aMeasuredContentIsTaken() {
        assertThat(SystemLitres.shown(litres(aJob().panels(8, "type-11", 600, 1000).readings("system-content-litres", 92).job()).litres()))
                .isEqualTo("92 litres");
    }

    @Test
    void sizedRadiatorsAreAddedUp() {
        // A panel of 1 m: 0.40 + 4.75 x 0.6 = 3.25 litres, give or take 15 %. Ten: 32.5; pipes 10 x 1.4 = 14; the boiler some 2.
        SystemLitres s = litres(aJob().panels(10, "type-11", 600, 1000).job());
        double boiler = BoilerKind.WALL_HUNG_LOW_CONTENT.litres().likely();
        assertThat(s.litres().likely()).isCloseTo(32.5 + 14 + boiler, within(0.001));
        assertThat(s.litres().low()).isLessThan(32.5 * 0.85 + 8 + boiler + 0.001);
        assertThat(s.litres().high()).isGreaterThan(32.5 * 1.15 + 24 + boiler - 0.001);
        assertThat(s.sums()).hasSize(13).first().asString().startsWith("radiator room 1: 3.25 litres");
    }

    @Test
    void aCylinderHasACoil() {
        Job job = aJob().panels(10, "type-11", 600, 1000).job();
        assertThat(litres(job.with("hot-water-made-by", new Answer.One("cylinder"))).litres().likely()
                - litres(job).litres().likely()).as("2 to 6 litres").isCloseTo(4, within(1e-9));
    }

    @Test
    void anOilBoilerHoldsMoreThanOneOnTheWall() {
        Job job = aJob().panels(10, "type-11", 600, 1000).job();
        assertThat(litres(job.with("heat-source", new Answer.Several(List.of("oil-boiler")))).litres().likely())
                .isGreaterThan(litres(job).litres().likely() + 10);
    }

    @Test
    void radiatorsOfUnknownSizeAreCounted() {
        // 10 litres for each of 8 and 10 for the boiler, a quarter either way.
        Job job = Job.begin("test").withRadiators(aJob().panels(8, "type-11", 600, 1000).job().radiators().stream()
                .map(r -> new Radiator(r.name(), r.floor())).toList());
        assertThat(SystemLitres.shown(litres(job).litres())).isEqualTo("90 litres (67.5 to 113)");
    }

    @Test
    void oneRadiatorOfUnknownSizeLeavesTheCount() {
        List<Radiator> radiators = new ArrayList<>(aJob().panels(7, "type-11", 600, 1000).job().radiators());
        radiators.add(new Radiator("hall", "ground"));
        assertThat(litres(Job.begin("test").withRadiators(radiators)).litres().likely()).isEqualTo(90);
    }

    @Test
    void theBoilersSizeContradictsACountThatLeftSomethingOut() {
        // 24 kW wants 144 to 264 litres; ten panels and their pipes make some 50.
        Job job = aJob().panels(10, "type-11", 600, 1000).job();
        assertThat(WorkedOut.saying(job, "The heating holds").grade()).isEqualTo(NOTE);
        assertThat(WorkedOut.saying(more(job).readings("boiler-output-kw", 24).job(), "The heating holds").grade()).isEqualTo(WARN);
        assertThat(WorkedOut.saying(more(job).readings("boiler-output-kw", 24).job(), "The heating holds").says())
                .endsWith("The boiler's size suggests otherwise.");
        // 6 kW: 36 to 66 litres.
        assertThat(WorkedOut.saying(more(job).readings("boiler-output-kw", 6).job(), "The heating holds").grade()).isEqualTo(NOTE);
    }

    @Test
    void twoRadiatorsAreNoHouse() {
        assertThat(SystemLitres.of(aJob().panels(2, "type-11", 600, 1000).job())).isEmpty();
        assertThat(SystemLitres.of(aJob().panels(3, "type-11", 600, 1000).job())).isPresent();
    }

    @Test
    void norIsAHotel() {
        assertThat(SystemLitres.of(aJob().panels(201, "type-11", 600, 1000).job())).isEmpty();
        assertThat(SystemLitres.of(aJob().panels(40, "column-4", 2500, 6000).job())).as("some 26 000 litres").isEmpty();
    }

    @Test
    void aRadiatorMayHangInTheBoilerRoom() {
        Job job = aJob().radiators(named("boiler"), named("pipes"), named("cylinder coil")).with("hot-water-made-by", "cylinder").job();
        assertThat(litres(job).sums()).anyMatch(s -> s.startsWith("boiler:")).anyMatch(s -> s.startsWith("radiator boiler:"));
    }

    private static Radiator named(String name) {
        return Radiators.sized(new Radiator(name, "ground"), "type-22", 600, 1200);
    }

    @Test
    void everyKindOfRadiatorInTheTableHoldsWater() {
        for (String type : RadiatorSize.TYPES) {
            double fewest = litres(aJob().panels(3, type, 100, 100).job()).litres().likely();
            assertThat(litres(aJob().panels(3, type, 600, 1000).job()).litres().likely()).as(type).isGreaterThan(fewest);
        }
        assertThat(RadiatorSize.TYPES).hasSameSizeAs(RadiatorType.values());
    }
}
