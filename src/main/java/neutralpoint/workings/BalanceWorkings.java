package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.emitter.Balancing.Adjustment;
import neutralpoint.hydronics.emitter.Balancing;
import neutralpoint.hydronics.emitter.HeatOutput;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import neutralpoint.hydronics.emitter.RadiatorType;
import neutralpoint.hydronics.emitter.TailReading;
import neutralpoint.hydronics.pipework.Fluid;
import neutralpoint.hydronics.water.HeatCarried;
import neutralpoint.job.Job;

/** How evenly the flow is shared out, and which lockshield to turn first. */
final class BalanceWorkings {
    private static final int FEWEST = 3;
    /** What a radiator gives where its size is not known; the order does not hang on it. */
    private static final double ANY_WATTS = 1000;
    /** No radiator of a house gives more. */
    private static final double MOST_WATTS = 50_000;
    private static final double LEAST_DROP_KELVIN = 8;
    /** Kinematic viscosity of water at 70 degrees, from memory; the order does not hang on it. */
    private static final Fluid WATER = new Fluid(HeatCarried.KILOGRAMS_PER_LITRE * 1000, 0.41e-6,
            HeatCarried.KILOJOULES_PER_KILOGRAM_KELVIN * 1000);
    /** A radiator that is blocked, gassed, cold or the wrong way round is mended before it is balanced. */
    private static final Set<RadiatorState> CAN_BE_BALANCED = Set.of(RadiatorState.HEALTHY, RadiatorState.OVER_FED, RadiatorState.STARVED, RadiatorState.LUKEWARM);

    private BalanceWorkings() {}

    static Optional<Calculation> of(Job job, List<SurveyedRadiator> survey) {
        List<SurveyedRadiator> these = survey.stream().filter(r -> CAN_BE_BALANCED.contains(r.state())
                && r.dropKelvin().orElse(-1) >= 0).toList();
        if (these.size() < FEWEST) {
            return Optional.empty();
        }
        double wanted = wantedDrop(job);
        Balancing.Plan plan = Balancing.plan(these.stream().map(BalanceWorkings::asFound).toList(), wanted, OptionalDouble.empty(), WATER);
        List<String> sums = new ArrayList<>(List.of(Decimals.sum("wanted drop %s degrees for every radiator", wanted)));
        plan.order().forEach(t -> sums.add(line(t, these)));
        if (plan.isBalanced()) {
            return Optional.of(new Calculation(Optional.empty(), PASS, Decimals.sum(
                    "Balanced: every drop is within %s degrees of %s.", Balancing.NEAR_ENOUGH_KELVIN, wanted), sums));
        }
        List<String> turn = plan.order().stream().filter(t -> t.adjustment() == Adjustment.CLOSE_DOWN).map(Balancing.Target::name).toList();
        return Optional.of(new Calculation(Optional.empty(), WARN, "Unbalanced: the index radiator is " + SurveyWorkings.shortened(plan.indexRadiator())
                + (turn.isEmpty() ? "; nothing takes more than its share." : "; close down in this order: " + SurveyWorkings.names(turn) + "."), sums));
    }

    /** The boiler's own drop where that is reasonable, otherwise the older practice. */
    private static double wantedDrop(Job job) {
        return Readings.of(job, FindingId.BOILER_FLOW_RETURN_KELVIN).stream()
                .filter(d -> d >= LEAST_DROP_KELVIN && d <= Balancing.CONDENSING_DROP_KELVIN).findFirst()
                .orElse(Balancing.OLDER_PRACTICE_DROP_KELVIN);
    }

    private static Balancing.AsFound asFound(SurveyedRadiator r) {
        double flow = r.reading().flowTailCelsius().getAsDouble();
        double back = r.reading().returnTailCelsius().getAsDouble();
        return new Balancing.AsFound(r.name(), watts(r, flow, back), Optional.of(new TailReading(flow, back)), OptionalDouble.empty());
    }

    private static double watts(SurveyedRadiator r, double flow, double back) {
        double room = r.reading().roomCelsius();
        if (r.radiator().body().isEmpty() || back <= room) {
            return ANY_WATTS;
        }
        var body = r.radiator().body().get();
        return Math.min(MOST_WATTS, Math.max(1, HeatOutput.watts(RadiatorType.called(body.type()), body.heightMillimetres(),
                body.lengthMillimetres(), flow, back, room).likely()));
    }

    private static String line(Balancing.Target t, List<SurveyedRadiator> these) {
        SurveyedRadiator r = these.stream().filter(s -> s.name().equals(t.name())).findFirst().orElseThrow();
        String flow = r.radiator().body().isPresent() ? Decimals.sum(", wants %s litres a minute", t.flowLitresPerMinute()) : "";
        return Decimals.sum("%s: drops %s%s: %s", SurveyWorkings.shortened(t.name()), r.dropKelvin().getAsDouble(), flow,
                t.adjustment().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
