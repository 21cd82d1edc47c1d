package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import neutralpoint.hydronics.ArgumentRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CircuitTest {
    private static final double SMOOTH = PipeLoss.SMOOTH_TUBE_ROUGHNESS_MILLIMETRES;
    /** Water at 75 °C, as the published copper tables take it; specific heat from memory. */
    private static final Fluid WATER = new Fluid(974.9004, 0.38717e-6, 4190);
    /** 0.038 kg/s in L/min; in 15 mm tube it loses 81.38 Pa/m by Colebrook. */
    private static final Leg.FlowLoad RADIATOR = new Leg.FlowLoad(0.038 / WATER.densityKgPerCubicMetre() * 60_000);
    /** 0.324 kg/s, so that the boiler leg carries 0.4 kg/s, which in 28 mm tube loses 225.89 Pa/m. */
    private static final Leg.FlowLoad CYLINDER = new Leg.FlowLoad(0.324 / WATER.densityKgPerCubicMetre() * 60_000);

    private static final Leg LOUNGE = Leg.toRadiator("lounge", 5, 13.6, 0, RADIATOR);
    private static final Leg BEDROOM = Leg.toRadiator("bedroom", 10, 13.6, 2, RADIATOR);
    private static final Circuit HOUSE = new Circuit(
            new Leg("cylinder", 3, 26.2, 4, Optional.of(CYLINDER), List.of(LOUNGE, BEDROOM)), 11, SMOOTH, WATER);

    /**
     * Boiler leg: 2 · 3 m of tube and 4 m of fittings at 225.89 Pa/m, 2259 Pa. Lounge: 2 · 5 m at 81.38 Pa/m, 814 Pa
     * more. Bedroom: 2 · 10 m and 2 m of fittings, 1790 Pa more.
     */
    @Test
    void lossesAddUpFromTheBoilerToEachRadiator() {
        assertThat(HOUSE.lossPascal().keySet()).containsExactly("cylinder", "lounge", "bedroom");
        assertThat(HOUSE.lossPascal().get("cylinder")).isCloseTo(2258.9, within(1.0));
        assertThat(HOUSE.lossPascal().get("lounge")).isCloseTo(2258.9 + 813.8, within(1.5));
        assertThat(HOUSE.lossPascal().get("bedroom")).isCloseTo(2258.9 + 1790.4, within(2.0));
    }

    /** The bedroom is hardest to reach: with 3000 Pa in the boiler (2259 + 1790 + 3000) / (974.9 · 9.80665) = 0.7373 m. */
    @Test
    void theIndexCircuitSetsTheHeadOfThePump() {
        assertThat(HOUSE.indexCircuit().leg()).isEqualTo(BEDROOM);
        assertThat(HOUSE.requiredHeadMetres(3000)).isCloseTo(0.7373, within(0.0003));
        ArgumentRange.limits("otherPascal", 0, 1e6, HOUSE::requiredHeadMetres);
    }

    @Test
    void everyLegShowsItsFlowVelocityAndVerdict() {
        Circuit.LegLoss boiler = HOUSE.legLosses().get(0);
        assertThat(boiler.flowLitresPerMinute()).isCloseTo(24.618, within(0.001));
        assertThat(boiler.velocityMetresPerSecond()).isCloseTo(0.761, within(0.001));
        assertThat(boiler.velocity()).isEqualTo(VelocityVerdict.WITHIN_DESIGN);
        assertThat(boiler.pascalPerMetre()).isCloseTo(225.89, within(0.1));
        Circuit.LegLoss lounge = HOUSE.legLosses().get(1);
        assertThat(lounge.velocity()).isEqualTo(VelocityVerdict.SLUGGISH);
        assertThat(lounge.ownPascal()).isCloseTo(813.8, within(0.5));
    }

    /** 1600 W at 10 K: 1600 / (4190 · 10) = 0.03819 kg/s, or 2.350 L/min. At 20 K half of that. */
    @Test
    void aRadiatorMayBeStatedByItsHeat() {
        Leg leg = Leg.toTee("boiler", 1, 20.2, 0, Leg.toRadiator("hall", 1, 13.6, 0, new Leg.HeatLoad(1600)));
        assertThat(new Circuit(leg, 10, SMOOTH, WATER).flowLitresPerMinute(leg)).isCloseTo(2.3502, within(0.0001));
        assertThat(new Circuit(leg, 20, SMOOTH, WATER).flowLitresPerMinute(leg)).isCloseTo(1.1751, within(0.0001));
        // A tee serves nothing itself, so it is not listed among what is served, however great its loss.
        assertThat(new Circuit(leg, 20, SMOOTH, WATER).lossPascal()).containsOnlyKeys("hall");
        assertThat(new Circuit(leg, 20, SMOOTH, WATER).indexCircuit().leg().name()).isEqualTo("hall");
    }

    /** A radiator that hangs on the tee itself loses no more than the tee does; it is still the radiator that is named. */
    @Test
    void theIndexCircuitIsARadiatorEvenRightAtTheTee() {
        Leg tee = Leg.toTee("tee", 5, 20.2, 0, Leg.toRadiator("towel rail", 0, 13.6, 0, RADIATOR));
        assertThat(new Circuit(tee, 11, SMOOTH, WATER).indexCircuit().leg().name()).isEqualTo("towel rail");
    }

    @Test
    void oneMetreOfHeadOfHotWater() {
        assertThat(WATER.pascalPerMetreOfHead()).isCloseTo(9560.5, within(0.1));
    }

    @Test
    void whatIsNoCircuitIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Leg.toTee("stub", 1, 13.6, 0))
                .withMessage("The leg stub serves nothing and leads nowhere; it must do one of both.");
        assertThatIllegalArgumentException().isThrownBy(() -> Leg.toRadiator(" ", 1, 13.6, 0, RADIATOR))
                .withMessageContaining("blank");
        assertThatIllegalArgumentException().isThrownBy(
                () -> new Circuit(Leg.toTee("boiler", 1, 20.2, 0, LOUNGE, BEDROOM, LOUNGE), 11, SMOOTH, WATER))
                .withMessage("Two legs are named lounge; each must have a name of its own.");
        ArgumentRange.limits("lengthMetres", 0, 5000, m -> Leg.toRadiator("x", m, 13.6, 0, RADIATOR));
        ArgumentRange.limits("boreMillimetres", 1, 500, bore -> Leg.toRadiator("x", 1, bore, 0, RADIATOR));
        ArgumentRange.limits("equivalentLengthMetres", 0, 10_000, m -> Leg.toRadiator("x", 1, 13.6, m, RADIATOR));
        ArgumentRange.limits("watts", 0, 1e6, Leg.HeatLoad::new);
        ArgumentRange.limits("litresPerMinute", 0, 10_000, Leg.FlowLoad::new);
        ArgumentRange.limits("dropKelvin", 1, 60, drop -> new Circuit(LOUNGE, drop, SMOOTH, WATER));
        ArgumentRange.limits("roughnessMillimetres", 0, 13.6 / 20,
                rough -> new Circuit(Leg.toTee("boiler", 1, 20.2, 0, LOUNGE), 11, rough, WATER));
        ArgumentRange.limits("densityKgPerCubicMetre", 900, 1200, rho -> new Fluid(rho, 1e-6, 4190));
        ArgumentRange.limits("kinematicViscositySquareMetresPerSecond", 1e-7, 1e-4, nu -> new Fluid(1000, nu, 4190));
        ArgumentRange.limits("specificHeatJoulesPerKgKelvin", 3000, 4500, heat -> new Fluid(1000, 1e-6, heat));
        ArgumentRange.limits("watts", 0, 1e6, watts -> WATER.flowLitresPerMinute(watts, 10));
        ArgumentRange.limits("dropKelvin", 1, 60, drop -> WATER.flowLitresPerMinute(1000, drop));
    }

    /** Losses 100 q² and 400 q²: the flows are as 1/√100 to 1/√400, two to one; 9 L/min split into 6 and 3, each at 3600 Pa. */
    @Test
    void aBypassLeftOpenStealsItsShare() {
        List<Double> flows = ParallelPaths.split(9, List.of(q -> 100 * q * q, q -> 400 * q * q));
        assertThat(flows.get(0)).isCloseTo(6, within(1e-8));
        assertThat(flows.get(1)).isCloseTo(3, within(1e-8));
        assertThat(ParallelPaths.split(9, List.of(q -> 5 * q))).singleElement()
                .satisfies(q -> assertThat(q).isCloseTo(9, within(1e-9)));
        assertThat(ParallelPaths.split(0, List.of(q -> 5 * q, q -> q))).containsExactly(0.0, 0.0);
        assertThatIllegalArgumentException().isThrownBy(() -> ParallelPaths.split(9, List.of()))
                .withMessageContaining("the number of paths is 0.0");
        ArgumentRange.limits("totalLitresPerMinute", 0, 10_000, q -> ParallelPaths.split(q, List.of(x -> x, x -> 2 * x * x)));
    }

    @Test
    void parallelFlowsSumAndShareOneLoss() {
        long seed = 20260105;
        Random random = new Random(seed);
        for (int i = 0; i < 60; i++) {
            List<DoubleUnaryOperator> paths = new ArrayList<>();
            for (int n = 0; n < 2 + random.nextInt(3); n++) {
                double bore = 6 + 16 * random.nextDouble();
                double length = 1 + 30 * random.nextDouble();
                paths.add(q -> length * PipeLoss.pressurePascalPerMetre(q, bore, SMOOTH, 975, 0.4e-6));
            }
            double total = 0.5 + 20 * random.nextDouble();
            List<Double> flows = ParallelPaths.split(total, paths);
            String as = "seed " + seed + ", round " + i + ", " + flows;
            assertThat(flows.stream().mapToDouble(Double::doubleValue).sum()).as(as).isCloseTo(total, within(1e-6));
            double common = paths.get(0).applyAsDouble(flows.get(0));
            for (int n = 1; n < flows.size(); n++) {
                assertThat(paths.get(n).applyAsDouble(flows.get(n))).as(as).isCloseTo(common, Percentage.withPercentage(0.01));
            }
        }
    }

    @Test
    void flowsAtEveryJunctionSumAndLossGrowsOutward() {
        long seed = 20260106;
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            Circuit circuit = new Circuit(randomLeg(random, "0", 0), 5 + 15 * random.nextDouble(), SMOOTH, WATER);
            for (Circuit.LegLoss loss : circuit.legLosses()) {
                String as = "seed " + seed + ", round " + i + ", leg " + loss.leg().name();
                double beyond = loss.leg().beyond().stream().mapToDouble(circuit::flowLitresPerMinute).sum();
                double own = loss.leg().load().map(load -> ((Leg.FlowLoad) load).litresPerMinute()).orElse(0.0);
                assertThat(loss.flowLitresPerMinute()).as(as).isCloseTo(own + beyond, within(1e-9));
                assertThat(loss.fromBoilerPascal()).as(as).isFinite().isGreaterThanOrEqualTo(loss.ownPascal())
                        .isLessThanOrEqualTo(circuit.indexCircuit().fromBoilerPascal());
            }
        }
    }

    private static Leg randomLeg(Random random, String name, int depth) {
        double length = 1 + 10 * random.nextDouble();
        double bore = 8 + 20 * random.nextDouble();
        List<Leg> beyond = new ArrayList<>();
        for (int n = 0; depth < 4 && n < random.nextInt(4); n++) {
            beyond.add(randomLeg(random, name + "." + n, depth + 1));
        }
        boolean loaded = beyond.isEmpty() || random.nextBoolean();
        return new Leg(name, length, bore, 2 * random.nextDouble(),
                loaded ? Optional.of(new Leg.FlowLoad(5 * random.nextDouble())) : Optional.empty(), beyond);
    }
}
