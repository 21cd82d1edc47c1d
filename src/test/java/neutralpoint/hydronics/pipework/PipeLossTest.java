package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.References;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

class PipeLossTest {
    private static final double SMOOTH = PipeLoss.SMOOTH_TUBE_ROUGHNESS_MILLIMETRES;
    /** Water at 75 °C, as the published copper tables take it. */
    private static final double DENSITY_75 = 974.9004;
    private static final double VISCOSITY_75 = 0.38717e-6;
    /** Water at 10 °C, from memory. */
    private static final double DENSITY_10 = 999.7;
    private static final double VISCOSITY_10 = 1.306e-6;
    /** EN 1057 tube by outside diameter: 15 × 0.7, 22 × 0.9 and 28 × 0.9 mm. */
    private static final Map<Integer, Double> BORE_MILLIMETRES = Map.of(15, 13.6, 22, 20.2, 28, 26.2);

    @TestFactory
    List<DynamicTest> published() {
        return References.of("pipework")
                .check("CIBSE-", (in, expected) -> copper(in, expected, 3, 10))
                .check("COLE-", (in, expected) -> {
                    copper(in, expected, 0.1, 0.1);
                    double reynolds = PipeLoss.reynolds(litresPerMinute(in), number(in, "bore_mm"), VISCOSITY_75);
                    assertThat(Friction.darcyFactor(reynolds, SMOOTH / number(in, "bore_mm")))
                            .isCloseTo(number(expected, "f"), Percentage.withPercentage(0.1));
                })
                .check("BS6700-", PipeLossTest::coldWater)
                // The next four approximate Colebrook, each within an error known for it.
                .check("FRIC-Haaland", (in, expected) -> friction(in, expected, 1.5))
                .check("FRIC-Swamee_Jain", (in, expected) -> friction(in, expected, 1))
                .check("FRIC-Serghides_1", (in, expected) -> friction(in, expected, 0.01))
                .check("FRIC-Churchill_1977", (in, expected) -> friction(in, expected, 1))
                .check("FRIC-Colebrook", (in, expected) -> friction(in, expected, 1e-7))
                .check("FRIC-lam", (in, expected) -> friction(in, expected, 1e-12))
                // Blasius' power law is an older fit to smooth pipes, here 2.4 % above Colebrook.
                .check("FRIC-Blasius", (in, expected) -> friction(in, expected, 3))
                .check("DW-", PipeLossTest::waterMain)
                .check("TP410-7.1", (in, expected) -> assertThat(Friction.darcyFactor(number(in, "Re"), 0))
                        .isCloseTo(expected.asDouble(), within(0.0002)))
                .check("TP410-7.33", (in, expected) -> {
                    double slower = 1700.0 / 3500;
                    assertThat(Affinity.flow(400, slower)).isCloseTo(number(expected, "Q"), within(1e-3));
                    assertThat(Affinity.head(126, slower)).isCloseTo(number(expected, "H"), within(1e-3));
                    assertThat(Affinity.power(17.5, slower)).isCloseTo(number(expected, "P"), within(1e-3));
                })
                .check("KV-01", (in, expected) -> assertThat(Kv.kv(number(in, "kg_h") / number(in, "rho"),
                        number(in, "dp_bar"), number(in, "rho"))).isCloseTo(expected.asDouble(), within(0.05)))
                .check("KV-T", (in, expected) -> assertThat(
                        Kv.kv(number(in, "kg_s") * 3.6, number(in, "dp_kPa") / 100, 1000))
                        .isCloseTo(expected.asDouble(), within(0.06)))
                .check("VEL-01", (in, expected) -> turnsAt(
                        expected.asDouble(), VelocityVerdict.WITHIN_DESIGN, VelocityVerdict.BRISK))
                .check("VEL-02", (in, expected) -> {
                    assertThat(VelocityVerdict.isSteep(expected.asDouble())).isFalse();
                    assertThat(VelocityVerdict.isSteep(expected.asDouble() + 1e-9)).isTrue();
                })
                .check("VEL-03", (in, expected) -> turnsAt(
                        expected.asDouble(), VelocityVerdict.BRISK, VelocityVerdict.NOISY))
                .check("VEL-04", (in, expected) -> {
                    assertThat(VelocityVerdict.of(expected.asDouble() - 1e-9)).isEqualTo(VelocityVerdict.SLUGGISH);
                    assertThat(VelocityVerdict.of(expected.asDouble())).isEqualTo(VelocityVerdict.WITHIN_DESIGN);
                })
                .check("VEL-05", (in, expected) -> turnsAt(
                        expected.asDouble(), VelocityVerdict.NOISY, VelocityVerdict.EROSIVE))
                .check("VEL-06", (in, expected) -> {
                    double from = expected.get(0).asDouble();
                    double to = expected.get(1).asDouble();
                    assertThat(List.of(from, to)).allMatch(VelocityVerdict::suitsMicrobore);
                    assertThat(List.of(from - 1e-9, to + 1e-9)).noneMatch(VelocityVerdict::suitsMicrobore);
                })
                .check("EQL-", PipeLossTest::equivalentLengths)
                .check("EPANET-1", (in, expected) -> loopedNetwork(expected))
                .tests();
    }

    private static void copper(JsonNode in, JsonNode expected, double percentOnLoss, double percentOnVelocity) {
        double flow = litresPerMinute(in);
        double bore = number(in, "bore_mm");
        assertThat(PipeLoss.pressurePascalPerMetre(flow, bore, SMOOTH, DENSITY_75, VISCOSITY_75))
                .isCloseTo(number(expected, "Pa_per_m"), Percentage.withPercentage(percentOnLoss));
        assertThat(PipeLoss.velocityMetresPerSecond(flow, bore))
                .isCloseTo(number(expected, "velocity"), Percentage.withPercentage(percentOnVelocity));
    }

    private static void coldWater(JsonNode in, JsonNode expected) {
        double flow = number(in, "L_s") * 60;
        double bore = BORE_MILLIMETRES.get(in.get("OD_mm").asInt());
        assertThat(PipeLoss.pressurePascalPerMetre(flow, bore, SMOOTH, DENSITY_10, VISCOSITY_10) / 1000)
                .isCloseTo(number(expected, "kPa_per_m"), Percentage.withPercentage(20));
        assertThat(PipeLoss.velocityMetresPerSecond(flow, bore))
                .isCloseTo(number(expected, "velocity"), Percentage.withPercentage(20));
    }

    private static void friction(JsonNode in, JsonNode expected, double percent) {
        double roughness = in.has("eD") ? number(in, "eD") : 0;
        assertThat(Friction.darcyFactor(number(in, "Re"), roughness))
                .isCloseTo(expected.asDouble(), Percentage.withPercentage(percent));
    }

    private static void waterMain(JsonNode in, JsonNode expected) {
        double bore = number(in, "D") * 1000;
        double flow = number(in, "V") * Math.PI / 4 * bore * bore * 60 / 1000;
        double perMetre = PipeLoss.pressurePascalPerMetre(flow, bore, number(in, "eps") * 1000, 1000, number(in, "nu"));
        double metresOfHead = PipeLoss.lossPascal(perMetre, number(in, "L"), 0) / (1000 * 9.80665);
        assertThat(Friction.darcyFactor(PipeLoss.reynolds(flow, bore, number(in, "nu")), number(in, "eps") / number(in, "D")))
                .isCloseTo(number(expected, "f"), within(0.0001));
        assertThat(metresOfHead).isCloseTo(number(expected, "hl_m"), within(0.0003));
    }

    private static void turnsAt(double limit, VelocityVerdict upTo, VelocityVerdict above) {
        assertThat(VelocityVerdict.of(limit)).isEqualTo(upTo);
        assertThat(VelocityVerdict.of(limit + 1e-9)).isEqualTo(above);
    }

    private static void equivalentLengths(JsonNode in, JsonNode expected) {
        Fitting fitting = Fitting.valueOf(in.get("fitting").asString().replace("min ", "minimum ").replace(' ', '_')
                .toUpperCase(Locale.ROOT));
        int[] tubes = {6, 8, 10, 12, 15, 22, 28};
        for (int i = 0; i < tubes.length; i++) {
            assertThat(fitting.equivalentLengthMetres(tubes[i])).isCloseTo(expected.get(i).asDouble(), within(1e-12));
        }
    }

    /** From the tee A two ways lead to the tap D: by B in 15 mm tube all along, and by C, the last 6 m in 10 mm tube. */
    private static void loopedNetwork(JsonNode expected) {
        double viscosity = 0.38716e-6;
        List<Double> flows = ParallelPaths.split(6, List.of(
                flow -> metres(flow, 13.6, 20, viscosity),
                flow -> metres(flow, 13.6, 20, viscosity) + metres(flow, 8.8, 6, viscosity)));
        assertThat(flows.get(0)).isCloseTo(number(expected, "P2_Lmin"), Percentage.withPercentage(0.5));
        assertThat(flows.get(1)).isCloseTo(number(expected, "P3_Lmin"), Percentage.withPercentage(0.5));
        double toA = metres(6, 20.2, 10, viscosity);
        double toB = toA + metres(flows.get(0), 13.6, 10, viscosity);
        assertHead(expected, "head_A", toA);
        assertHead(expected, "head_B", toB);
        assertHead(expected, "head_C", toA + metres(flows.get(1), 13.6, 20, viscosity));
        assertHead(expected, "head_D", toB + metres(flows.get(0), 13.6, 10, viscosity));
    }

    /** The reservoir stands at 20 m; the reference has another friction formula, within 0.5 % of Colebrook here. */
    private static void assertHead(JsonNode expected, String node, double lostMetres) {
        assertThat(lostMetres).as(node).isCloseTo(20 - number(expected, node), Percentage.withPercentage(0.5));
    }

    private static double metres(double flow, double bore, double length, double viscosity) {
        return PipeLoss.lossPascal(PipeLoss.pressurePascalPerMetre(flow, bore, SMOOTH, 1000, viscosity), length, 0) / 9806.65;
    }

    private static double litresPerMinute(JsonNode in) {
        return number(in, "kg_s") / DENSITY_75 * 60_000;
    }

    private static double number(JsonNode node, String name) {
        return node.get(name).asDouble();
    }

    /** 6 L/min is 0.0001 m³/s; a bore of 13.6 mm has π/4 · 0.0136² = 0.00014527 m²; so 0.6884 m/s. */
    @Test
    void velocityIsFlowOverArea() {
        assertThat(PipeLoss.velocityMetresPerSecond(6, 13.6)).isCloseTo(0.68839, within(0.00001));
        assertThat(PipeLoss.reynolds(6, 13.6, 0.4e-6)).isCloseTo(0.68839 * 0.0136 / 0.4e-6, within(1.0));
    }

    /** Laminar: loss = 32 · density · viscosity · velocity / bore² = 32 · 980 · 4e-7 · 0.011473 / 0.0136² = 0.7781 Pa/m. */
    @Test
    void aTrickleLosesInProportionToItsFlow() {
        double trickle = PipeLoss.pressurePascalPerMetre(0.1, 13.6, SMOOTH, 980, 4e-7);
        assertThat(trickle).isCloseTo(0.77809, within(0.00005));
        assertThat(PipeLoss.pressurePascalPerMetre(0.2, 13.6, SMOOTH, 980, 4e-7)).isCloseTo(2 * trickle, within(1e-12));
        assertThat(PipeLoss.pressurePascalPerMetre(0, 13.6, SMOOTH, 980, 4e-7)).isZero();
    }

    /** 12 m of tube and two angle valves of 2.0 m each at 80 Pa/m: (12 + 4) · 80 = 1280 Pa. */
    @Test
    void fittingsCountAsLength() {
        double valves = 2 * Fitting.ANGLE_VALVE.equivalentLengthMetres(15);
        assertThat(PipeLoss.lossPascal(80, 12, valves)).isCloseTo(1280, within(1e-9));
    }

    /** Between 15 and 22 mm, at 18.5 mm half way: a straight valve (0.3 + 0.4) / 2 = 0.35 m. */
    @Test
    void fittingsBetweenTwoSizesLieBetween() {
        assertThat(Fitting.STRAIGHT_VALVE.equivalentLengthMetres(18.5)).isCloseTo(0.35, within(1e-12));
        ArgumentRange.limits("tubeMillimetres", 6, 28, Fitting.CAPILLARY_ELBOW::equivalentLengthMetres);
    }

    @Test
    void lossRisesWithFlowAndNeverJumps() {
        long seed = 20260102;
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            double bore = 6 + 30 * random.nextDouble();
            double viscosity = 3e-7 + 2e-6 * random.nextDouble();
            double flow = 40 * Math.pow(random.nextDouble(), 3);
            double loss = PipeLoss.pressurePascalPerMetre(flow, bore, SMOOTH, 980, viscosity);
            double aLittleMore = PipeLoss.pressurePascalPerMetre(flow * 1.001 + 1e-9, bore, SMOOTH, 980, viscosity);
            assertThat(aLittleMore).as("seed %d, %s L/min in %s mm", seed, flow, bore).isFinite().isGreaterThan(loss)
                    .isCloseTo(loss, Offset.offset(0.004 * loss + 1e-6));
        }
    }

    @Test
    void pipeArgumentsOutOfRangeAreRefused() {
        ArgumentRange.limits("flowLitresPerMinute", 0, 10_000, flow -> PipeLoss.velocityMetresPerSecond(flow, 20));
        ArgumentRange.limits("boreMillimetres", 1, 500, bore -> PipeLoss.velocityMetresPerSecond(10, bore));
        ArgumentRange.limits("kinematicViscositySquareMetresPerSecond", 1e-7, 1e-4, nu -> PipeLoss.reynolds(10, 20, nu));
        ArgumentRange.limits("roughnessMillimetres", 0, 1, rough -> PipeLoss.pressurePascalPerMetre(10, 20, rough, 980, 1e-6));
        ArgumentRange.limits("densityKgPerCubicMetre", 900, 1200, rho -> PipeLoss.pressurePascalPerMetre(10, 20, 0, rho, 1e-6));
        ArgumentRange.limits("pascalPerMetre", 0, 1e18, perMetre -> PipeLoss.lossPascal(perMetre, 1, 1));
        ArgumentRange.limits("lengthMetres", 0, 10_000, length -> PipeLoss.lossPascal(100, length, 1));
        ArgumentRange.limits("equivalentLengthMetres", 0, 10_000, length -> PipeLoss.lossPascal(100, 1, length));
        ArgumentRange.limits("metresPerSecond", 0, 1e6, VelocityVerdict::of);
    }

    @Test
    void theFastestFlowInTheFinestBoreStillHasALoss() {
        assertThat(PipeLoss.pressurePascalPerMetre(10_000, 1, 0.05, 1200, 1e-7)).isFinite();
        assertThat(VelocityVerdict.of(PipeLoss.velocityMetresPerSecond(10_000, 1))).isEqualTo(VelocityVerdict.EROSIVE);
    }
}
