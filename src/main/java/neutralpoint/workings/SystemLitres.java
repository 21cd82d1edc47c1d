package neutralpoint.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.emitter.BoilerKind;
import neutralpoint.hydronics.emitter.ContentCheck;
import neutralpoint.hydronics.emitter.ContentRule;
import neutralpoint.hydronics.emitter.RadiatorType;
import neutralpoint.hydronics.emitter.SystemContent;
import neutralpoint.hydronics.emitter.WaterContent;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;

/**
 * How much water the heating holds.
 *
 * @param litres as a range, as wide as the guesses in it
 * @param sums   what it was added up from
 * @param check  the same held against a rule of thumb, where there is one
 */
public record SystemLitres(Estimate litres, List<String> sums, Optional<ContentCheck> check) {
    /** Pipework of a house to each radiator: some 5 to 12 m of 15 mm and its share of 22 mm; common practice, no source. */
    private static final Estimate PIPE_TO_A_RADIATOR_LITRES = new Estimate(0.8, 1.4, 2.4);
    /** Fewest radiators that stand for a house. */
    public static final int FEWEST_RADIATORS = 3;
    /** Beyond these it is no house, and the sums are not made for it. */
    private static final int MOST = 200;
    private static final double MOST_LITRES = 5000;

    /** Empty when nothing is known to add it up from, or when it adds up to more than any house holds. */
    public static Optional<SystemLitres> of(Job job) {
        if (Readings.has(job, FindingId.SYSTEM_CONTENT_LITRES)) {
            double given = Readings.get(job, FindingId.SYSTEM_CONTENT_LITRES);
            return Optional.of(new SystemLitres(Estimate.exactly(given), List.of(Decimals.sum("measured: %s litres", given)), Optional.empty()));
        }
        if (job.radiators().size() < FEWEST_RADIATORS || job.radiators().size() > MOST) {
            return Optional.empty();
        }
        boolean sized = job.radiators().stream().allMatch(r -> r.body().isPresent());
        return Optional.of(sized ? counted(job) : byRule(ContentRule.byRadiators(job.radiators().size())))
                .filter(content -> content.litres().high() <= MOST_LITRES);
    }

    private static SystemLitres byRule(ContentRule rule) {
        return new SystemLitres(rule.litres(), List.of(rule.inWords() + ": " + shown(rule.litres())), Optional.empty());
    }

    private static SystemLitres counted(Job job) {
        // Named apart from the rest: a radiator may stand in a room called "boiler".
        List<SystemContent.ContentPart> parts = new ArrayList<>(job.radiators().stream()
                .map(r -> new SystemContent.ContentPart("radiator " + r.name(), litres(r))).toList());
        parts.add(new SystemContent.ContentPart("pipes", PIPE_TO_A_RADIATOR_LITRES.times(job.radiators().size())));
        parts.add(new SystemContent.ContentPart("boiler", boiler(job).litres()));
        SystemContent content = new SystemContent(parts);
        if (job.answer(FindingId.HOT_WATER_MADE_BY).map(new Answer.One("cylinder")::equals).orElse(false)) {
            content = content.with("cylinder coil", WaterContent.CYLINDER_COIL_LITRES);
        }
        List<String> sums = new ArrayList<>(content.parts().stream().map(p -> p.name() + ": " + shown(p.litres())).toList());
        sums.add("together: " + shown(content.totalLitres()));
        return new SystemLitres(content.totalLitres(), sums, Readings.has(job, FindingId.BOILER_OUTPUT_KW)
                ? Optional.of(content.against(ContentRule.byKilowatts(Readings.get(job, FindingId.BOILER_OUTPUT_KW)))) : Optional.empty());
    }

    /** Water in a radiator of which type and size are known; nothing when they are not. */
    public static Estimate litres(Radiator r) {
        return r.body().map(b -> WaterContent.radiatorLitres(RadiatorType.called(b.type()),
                b.heightMillimetres(), b.lengthMillimetres())).orElse(Estimate.NOTHING);
    }

    static BoilerKind boiler(Job job) {
        if (job.chosen(FindingId.HEAT_SOURCE).contains("solid-fuel")) {
            return BoilerKind.SOLID_FUEL;
        }
        return job.chosen(FindingId.HEAT_SOURCE).contains("oil-boiler") ? BoilerKind.OIL_STEEL_SHELL : BoilerKind.WALL_HUNG_LOW_CONTENT;
    }

    static String shown(Estimate litres) {
        return EstimateFormat.range(litres, "litres");
    }
}
