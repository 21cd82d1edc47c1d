package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Who may do the work, by what there is and where it is. Each expectation is written by hand from what is named
 * beside it; none is taken from the program.
 */
class CompetenceCheckTest {
    /** Regulation 3(3): work on a gas appliance for reward only by a member of the approved class. */
    private static final String GAS = "Gas Safety (Installation and Use) Regulations 1998, regulation 3, "
            + "http://www.letlink.co.uk/letting-statutes/statutes/the-gas-safety-installation-and-use-regulations-1998.html";
    /** Oil and solid fuel appliances: notified, or certified by a member of a scheme for that fuel. */
    private static final String COMBUSTION = "Approved Document J; schemes by fuel: https://planningapplications.com/building-regulations/building-regulation-in-practise/";
    /** A person trained and proved competent for unvented storage works on it and on its two safety devices. */
    private static final String UNVENTED = "Approved Document G, G3: https://www.labcwarranty.co.uk/technical-blog/hot-water-safety-and-water-efficiency; "
            + "that a motorised valve is one of the devices: from memory";
    /** Competence to prevent danger, and no live work where it can be done dead. */
    private static final String ELECTRICITY = "Electricity at Work Regulations 1989, regulations 14 and 16 (numbers from memory): "
            + "https://www.hse.gov.uk/foi/internalops/ocs/400-499/480_2.htm";
    /** Repair and replacement are not notifiable. */
    private static final String PART_P = "Approved Document P (2013): https://wiring-regulations.co.uk/2021/06/part-p-what-types-of-electrical-work-are-notifiable";
    private static final String REFRIGERANT = "Refrigerant handling certificates: http://www.acrib.org.uk/M6LEVN80958; flammable refrigerant: from memory";
    private static final String IMMERSION = "Safety alert on failed immersion thermostats: https://www.hse.gov.uk/services/localgovernment/hotwatersystems.htm; "
            + "that an electrician renews it: common practice, no source";

    private static final String OWN = "own work";

    private static final String DIVERTER = "uncommon/amber-mews";
    private static final String SENSOR = "uncommon/crofters-end";
    private static final String VESSEL_IN_CASE = "readings/sparrow-hill";
    private static final String DEAD_PUMP = "by-cause/starling-court";
    private static final String VALVE_HEAD = "by-cause/marigold-road";
    private static final String VALVE_OPEN = "uncommon/windlass-row";
    private static final String COIL = "by-cause/eyebright-terrace";
    private static final String CYLINDER_THERMOSTAT = "by-cause/ivy-terrace";
    private static final String IMMERSION_THERMOSTAT = "by-cause/ironstone-cottage";

    /** One line: a fault, the fuel, the kind of cylinder, what the engineer holds and answers, and who does it. */
    private record Line(String fault, String fuel, String cylinder, String held, String provesDead, String who, String source) {}

    private static final String AS_FOUND = "";
    private static final String OPEN = "not asked";

    private static List<Line> lines() {
        return List.of(
                new Line(DIVERTER, "gas-boiler", AS_FOUND, "gas", OPEN, OWN, GAS),
                new Line(DIVERTER, "gas-boiler", AS_FOUND, "oil", OPEN, "a registered gas engineer", GAS),
                new Line(DIVERTER, "gas-boiler", AS_FOUND, "electrical", OPEN, "a registered gas engineer", GAS),
                new Line(DIVERTER, "gas-boiler", AS_FOUND, "none", OPEN, "a registered gas engineer", GAS),
                new Line(DIVERTER, "oil-boiler", AS_FOUND, "oil", OPEN, OWN, COMBUSTION),
                new Line(DIVERTER, "oil-boiler", AS_FOUND, "gas", OPEN, "an engineer registered for oil", COMBUSTION),
                new Line(DIVERTER, "electric-boiler", AS_FOUND, "gas", "yes", OWN, ELECTRICITY),
                new Line(DIVERTER, "electric-boiler", AS_FOUND, "gas", "no", "an electrician", ELECTRICITY),
                new Line(DIVERTER, "electric-boiler", AS_FOUND, "electrical", OPEN, OWN, ELECTRICITY),
                new Line(DIVERTER, "electric-boiler", AS_FOUND, "none", OPEN, OWN, ELECTRICITY),
                new Line(VESSEL_IN_CASE, "gas-boiler", AS_FOUND, "gas", OPEN, OWN, GAS),
                new Line(VESSEL_IN_CASE, "gas-boiler", AS_FOUND, "unvented-hot-water", OPEN, "a registered gas engineer", GAS),
                new Line(VESSEL_IN_CASE, "oil-boiler", AS_FOUND, "gas", OPEN, "an engineer registered for oil", COMBUSTION),
                new Line(VESSEL_IN_CASE, "electric-boiler", AS_FOUND, "none", "yes", OWN, ELECTRICITY),
                new Line(SENSOR, "gas-boiler", AS_FOUND, "gas", OPEN, OWN, GAS),
                new Line(SENSOR, "gas-boiler", AS_FOUND, "oil", OPEN, "a registered gas engineer", GAS),
                new Line(SENSOR, "oil-boiler", AS_FOUND, "oil", OPEN, OWN, COMBUSTION),
                new Line(SENSOR, "oil-boiler", AS_FOUND, "gas", OPEN, "an engineer registered for oil", COMBUSTION),
                new Line(SENSOR, "electric-boiler", AS_FOUND, "none", "yes", OWN, ELECTRICITY),
                new Line(SENSOR, "electric-boiler", AS_FOUND, "gas", OPEN, "an electrician", ELECTRICITY),
                new Line(SENSOR, "heat-pump", AS_FOUND, "gas", "yes", "the heat pump maker's engineer", REFRIGERANT),
                new Line(SENSOR, "heat-pump", AS_FOUND, "refrigerant", "yes", OWN, REFRIGERANT),
                new Line(DEAD_PUMP, "gas-boiler", AS_FOUND, "gas", "yes", OWN, PART_P),
                new Line(DEAD_PUMP, "gas-boiler", AS_FOUND, "gas", "no", "an electrician", ELECTRICITY),
                new Line(DEAD_PUMP, "oil-boiler", AS_FOUND, "none", "yes", OWN, PART_P),
                new Line(VALVE_HEAD, "gas-boiler", "indirect", "none", "yes", OWN, PART_P),
                new Line(VALVE_HEAD, "gas-boiler", "indirect", "none", "no", "an electrician", ELECTRICITY),
                new Line(VALVE_HEAD, "gas-boiler", "indirect", "electrical", "no", OWN, PART_P),
                new Line(VALVE_HEAD, "gas-boiler", "unvented", "gas", "yes", "an engineer qualified for unvented hot water", UNVENTED),
                new Line(VALVE_OPEN, "gas-boiler", "unvented", "gas", OPEN, "an engineer qualified for unvented hot water", UNVENTED),
                new Line(VALVE_OPEN, "gas-boiler", "unvented", "unvented-hot-water", OPEN, OWN, UNVENTED),
                new Line(VALVE_OPEN, "gas-boiler", "indirect", "none", OPEN, OWN, UNVENTED),
                new Line(COIL, "gas-boiler", "unvented", "gas", OPEN, "an engineer qualified for unvented hot water", UNVENTED),
                new Line(COIL, "oil-boiler", "unvented", "unvented-hot-water", OPEN, OWN, UNVENTED),
                new Line(COIL, "gas-boiler", "indirect", "gas", OPEN, OWN, UNVENTED),
                new Line(CYLINDER_THERMOSTAT, "gas-boiler", "unvented", "gas", "yes", "an engineer qualified for unvented hot water", UNVENTED),
                new Line(CYLINDER_THERMOSTAT, "gas-boiler", "indirect", "none", "yes", OWN, PART_P),
                new Line(CYLINDER_THERMOSTAT, "gas-boiler", "indirect", "gas", "no", "an electrician", ELECTRICITY),
                new Line(IMMERSION_THERMOSTAT, "gas-boiler", "indirect", "gas", "yes", "a registered electrician", IMMERSION));
    }

    @TestFactory
    Stream<DynamicTest> whoDoesTheWork() {
        return lines().stream().map(l -> DynamicTest.dynamicTest(
                String.join(", ", l.fault(), l.fuel(), l.cylinder(), l.held(), l.provesDead()), () -> {
            Assessment.Verdict verdict = Shared.ASSESSOR.assess(job(l)).verdict();
            assertThat(verdict.chief().map(Assessment.CauseStanding::id)).as("the fault is still found").isEqualTo(chiefOf(l.fault()));
            if (l.who().equals(OWN)) {
                assertThat(verdict.course().id()).as(l.source()).isNotEqualTo("refer");
            } else {
                assertThat(verdict.course().id()).as(l.source()).isEqualTo("refer");
                assertThat(verdict.because()).as(l.source()).anyMatch(b -> b.contains("refer it to " + l.who()));
            }
        }));
    }

    /** The house of the case with another fuel, cylinder and engineer. */
    private static Job job(Line l) {
        Job job = read(l.fault()).with("heat-source", new Answer.Several(List.of(l.fuel())))
                .with("licences-held", new Answer.Several(l.held().equals("none") ? List.of() : List.of(l.held())));
        job = l.cylinder().isEmpty() ? job : job.with("cylinder-style", new Answer.One(l.cylinder()));
        // A three-port valve does not cut the heat to an unvented cylinder off; that would be a danger and nobody's ordinary work.
        job = l.fault().equals(COIL) && l.cylinder().equals("unvented") ? job.with("motorised-valves", new Answer.One("two-two-port")) : job;
        return l.provesDead().equals(OPEN) ? job : job.with("competent-to-prove-dead", new Answer.One(l.provesDead()));
    }

    private static Job read(String file) {
        return CaseStudy.read(Path.of("cases/" + file + ".json"), new JobCheck(Shared.CATALOGUE)).job();
    }

    private static Optional<String> chiefOf(String file) {
        return Shared.ASSESSOR.assess(read(file)).verdict().chief().map(Assessment.CauseStanding::id);
    }

    /** Common practice, no source: what has mains wires in it, and what is only the brass below. */
    @Test
    void whatHasMainsWiresInItIsElectricalWork() {
        assertThat(electrical("pump-seized", "pump-impeller-worn", "pump-electrical-failure", "pump-fitted-backwards", "pump-overrun-missing",
                "three-port-head-failed", "valve-end-switch-failed", "two-port-stuck-shut", "cylinder-thermostat-failed",
                "immersion-thermostat-failed", "wiring-or-programmer-fault", "room-thermostat-misplaced")).containsOnly(true);
        assertThat(electrical("three-port-stuck-mid", "three-port-letting-by", "two-port-stuck-open", "pump-isolating-valve-part-shut",
                "pump-setting-too-high", "trv-pin-stuck", "radiator-pinholed", "timer-or-thermostat-setting")).containsOnly(false);
    }

    private static Stream<Boolean> electrical(String... causes) {
        Catalogue catalogue = Shared.CATALOGUE;
        return Arrays.stream(causes).map(c -> catalogue.cause(c).needs().contains("mains-electrical"));
    }

    @Test
    void anUnansweredLicenceLeavesTheCourseAndNamesWhoMayTakeIt() {
        Job job = read(DIVERTER).without("licences-held");
        Assessment.Verdict verdict = Shared.ASSESSOR.assess(job).verdict();
        assertThat(verdict.course().id()).isEqualTo("valve-repair");
        assertThat(verdict.because()).anyMatch(b -> b.contains("registered for gas work; if that is not you, refer it to a registered gas engineer"));
        assertThat(Shared.ASSESSOR.assess(job.with("licences-held", Answer.NOT_CHECKED)).verdict().course().id()).isEqualTo("valve-repair");
    }

    @Test
    void nobodyIsToldOfGasInAHouseWithoutIt() {
        for (String fuel : List.of("electric-boiler", "oil-boiler", "heat-pump")) {
            Job job = read(VALVE_HEAD).with("heat-source", new Answer.Several(List.of(fuel)));
            assertThat(Shared.ASSESSOR.assess(job).cautions()).as(fuel).extracting(c -> c.id()).doesNotContain("gas-licensed-only");
        }
        assertThat(Shared.ASSESSOR.assess(read(VALVE_HEAD)).cautions()).extracting(c -> c.id()).contains("gas-licensed-only");
    }
}
