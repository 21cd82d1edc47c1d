package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.emitter.ContentRule;
import neutralpoint.hydronics.emitter.RadiatorType;
import neutralpoint.hydronics.emitter.WaterContent;
import neutralpoint.hydronics.pipework.Tube;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.workings.SystemLitres;

/** What the plan's figures are worked out from: the radiators, the pipes, the supply and the water of one house. */
public record House(Job job, Optional<SystemLitres> content, List<Emitter> radiators) {
    /** Water of a radiator nobody has measured: a small single panel to a long double one. Common practice, no source. */
    private static final Estimate USUAL_RADIATOR_LITRES = new Estimate(2.5, 5, 9);
    /** Output of one nobody has measured, at 50 K over the room. Common practice, no source. */
    private static final Estimate USUAL_RADIATOR_KILOWATTS = new Estimate(0.5, 1, 1.6);
    /** A kitchen tap with nothing else running. Common practice, no source. */
    private static final Estimate USUAL_SUPPLY_LITRES_PER_MINUTE = new Estimate(8, 12, 18);
    /** A dribble: less than this fills and rinses nothing in a day. Judgement, no source. */
    private static final double LEAST_SUPPLY_LITRES_PER_MINUTE = 1;
    private static final String USUAL_PIPE = "copper-22";

    /**
     * A radiator as the plan sees it.
     *
     * @param isSized   true when its type and size are known
     * @param isColdAtBase true when its base was found cold
     */
    record Emitter(String name, Estimate litres, Estimate kilowattsAt50Kelvin, boolean isSized, boolean isColdAtBase) {}

    public static House of(Job job) {
        Map<String, String> felt = job.answer(FindingId.RADIATOR_PATTERN).map(a -> a instanceof Answer.ByRadiator r ? r.choices() : Map.<String, String>of())
                .orElse(Map.of());
        Map<String, Optional<Radiator>> all = new LinkedHashMap<>();
        job.radiators().forEach(r -> all.put(r.name(), Optional.of(r)));
        felt.keySet().forEach(name -> all.putIfAbsent(name, Optional.empty()));
        List<Emitter> emitters = new ArrayList<>();
        all.forEach((name, r) -> emitters.add(emitter(name, r.filter(x -> x.body().isPresent()), "cold-at-base".equals(felt.get(name)))));
        return new House(job, SystemLitres.of(job), List.copyOf(emitters));
    }

    private static Emitter emitter(String name, Optional<Radiator> sized, boolean coldAtBase) {
        return sized.map(r -> new Emitter(name, SystemLitres.litres(r), kilowatts(r), true, coldAtBase))
                .orElseGet(() -> new Emitter(name, USUAL_RADIATOR_LITRES, USUAL_RADIATOR_KILOWATTS, false, coldAtBase));
    }

    private static Estimate kilowatts(Radiator r) {
        return r.body().map(b -> WaterContent.radiatorWattsAt50Kelvin(RadiatorType.called(b.type()),
                b.heightMillimetres(), b.lengthMillimetres()).times(0.001)).orElseThrow();
    }

    /** What all radiators give at 50 K over the room; by the water where none is listed, 10 litres to a radiator (VOL-02). */
    Estimate radiatorKilowatts() {
        if (radiators.isEmpty()) {
            return USUAL_RADIATOR_KILOWATTS.times(content.map(c -> c.litres().likely() / ContentRule.LITRES_PER_RADIATOR).orElse(0.0));
        }
        return Estimate.total(radiators.stream().map(Emitter::kilowattsAt50Kelvin).toList());
    }

    MeasuredOrUsual supply() {
        return MeasuredOrUsual.of(job, FindingId.COLD_SUPPLY_LITRES_PER_MINUTE, "litres a minute", USUAL_SUPPLY_LITRES_PER_MINUTE);
    }

    boolean supplyRuns() {
        return supply().value().low() >= LEAST_SUPPLY_LITRES_PER_MINUTE;
    }

    /** Nothing goes on top of chemicals that nobody knows: they are dumped and rinsed out first. */
    boolean holdsAnUnknownMix() {
        return job.answer(FindingId.CHEMICALS_IN).map(a -> a instanceof Answer.Several several && several.choices().contains("unknown-mix")).orElse(false);
    }

    boolean pipeIsKnown() {
        return job.answer(FindingId.LARGEST_PIPE).filter(Answer.One.class::isInstance).isPresent();
    }

    public Tube largestPipe() {
        String[] said = job.answer(FindingId.LARGEST_PIPE).map(a -> a instanceof Answer.One one ? one.choice() : USUAL_PIPE).orElse(USUAL_PIPE)
                .split("-", 0);
        return Tube.usual(said[0].equals("copper") ? Tube.Material.COPPER : Tube.Material.BARRIER_PLASTIC, Double.parseDouble(said[1]));
    }

    /** Size of the radiators' tails in words. */
    public String tails() {
        return job.answer(FindingId.RADIATOR_PIPING).map(new Answer.One("microbore-manifold")::equals).orElse(false) ? "8 or 10 mm" : "15 mm";
    }
}
