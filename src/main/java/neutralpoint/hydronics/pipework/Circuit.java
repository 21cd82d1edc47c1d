package neutralpoint.hydronics.pipework;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import neutralpoint.hydronics.Bounds;

/**
 * A two-pipe system as a tree of legs, with every radiator given the flow it should have.
 *
 * @param boilerLeg            the leg at the boiler, from which all others branch; names of legs are all different
 * @param dropKelvin           drop across every radiator that is stated by its heat, 1 to 60 K
 * @param roughnessMillimetres roughness of the tube, 0 to a twentieth of the smallest bore
 */
public record Circuit(Leg boilerLeg, double dropKelvin, double roughnessMillimetres, Fluid fluid) {

    /**
     * The sums of one leg.
     *
     * @param ownPascal        loss in this leg, flow and return
     * @param fromBoilerPascal loss from the boiler to the end of this leg and back
     */
    public record LegLoss(Leg leg, double flowLitresPerMinute, double velocityMetresPerSecond, VelocityVerdict velocity,
            double pascalPerMetre, double ownPascal, double fromBoilerPascal) {}

    public Circuit {
        Bounds.within("dropKelvin", dropKelvin, 1, 60);
        double smallestBore = boilerLeg.all().mapToDouble(Leg::boreMillimetres).min().orElseThrow();
        Bounds.within("roughnessMillimetres", roughnessMillimetres, 0, smallestBore / 20);
        List<String> names = boilerLeg.all().map(Leg::name).sorted().toList();
        for (int i = 1; i < names.size(); i++) {
            if (names.get(i).equals(names.get(i - 1))) {
                throw new IllegalArgumentException("Two legs are named " + names.get(i)
                        + "; each must have a name of its own.");
            }
        }
    }

    /** The flow in a leg: what it serves and all that is served beyond it, L/min. */
    public double flowLitresPerMinute(Leg leg) {
        return leg.load().map(this::flowLitresPerMinute).orElse(0.0)
                + leg.beyond().stream().mapToDouble(this::flowLitresPerMinute).sum();
    }

    /** The sums of every leg, each before those it leads to. */
    public List<LegLoss> legLosses() {
        List<LegLoss> losses = new ArrayList<>();
        addLosses(boilerLeg, 0, losses);
        return List.copyOf(losses);
    }

    /** The loss from the boiler to each radiator and back, Pa, by the name of the leg that serves it. */
    public Map<String, Double> lossPascal() {
        Map<String, Double> losses = new LinkedHashMap<>();
        served().forEach(l -> losses.put(l.leg().name(), l.fromBoilerPascal()));
        return Collections.unmodifiableMap(losses);
    }

    /** The index circuit: the radiator that is hardest to reach, at which the loss is greatest. */
    public LegLoss indexCircuit() {
        return served().max(Comparator.comparingDouble(LegLoss::fromBoilerPascal)).orElseThrow();
    }

    /**
     * The head the pump must give.
     *
     * @param otherPascal what the boiler, its valves and the index radiator lose besides the pipes, 0 to 1e6 Pa
     * @return m
     * @throws IllegalArgumentException if it is out of range
     */
    public double requiredHeadMetres(double otherPascal) {
        Bounds.within("otherPascal", otherPascal, 0, 1e6);
        return (indexCircuit().fromBoilerPascal() + otherPascal) / fluid.pascalPerMetreOfHead();
    }

    private Stream<LegLoss> served() {
        return legLosses().stream().filter(l -> l.leg().load().isPresent());
    }

    private double flowLitresPerMinute(Leg.Load load) {
        if (load instanceof Leg.HeatLoad heat) {
            return fluid.flowLitresPerMinute(heat.watts(), dropKelvin);
        }
        return ((Leg.FlowLoad) load).litresPerMinute();
    }

    private void addLosses(Leg leg, double beforePascal, List<LegLoss> losses) {
        double flow = flowLitresPerMinute(leg);
        double velocity = PipeLoss.velocityMetresPerSecond(flow, leg.boreMillimetres());
        double perMetre = PipeLoss.pressurePascalPerMetre(flow, leg.boreMillimetres(), roughnessMillimetres,
                fluid.densityKgPerCubicMetre(), fluid.kinematicViscositySquareMetresPerSecond());
        double own = PipeLoss.lossPascal(perMetre, 2 * leg.lengthMetres(), leg.equivalentLengthMetres());
        losses.add(new LegLoss(leg, flow, velocity, VelocityVerdict.of(velocity), perMetre, own, beforePascal + own));
        leg.beyond().forEach(next -> addLosses(next, beforePascal + own, losses));
    }
}
