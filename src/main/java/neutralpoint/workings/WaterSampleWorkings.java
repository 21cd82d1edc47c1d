package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.chemistry.Conductivity;
import neutralpoint.hydronics.chemistry.Corrosion;
import neutralpoint.hydronics.chemistry.Hardness;
import neutralpoint.hydronics.chemistry.Langelier;
import neutralpoint.hydronics.chemistry.PhWindow;
import neutralpoint.hydronics.chemistry.Vdi2035;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/**
 * What the figures of a water sample come to. Where the inhibitor is at strength its maker has the last word on the water,
 * so that pH is then only noted; and an index of scale explains, whatever the water, and passes or fails nothing.
 */
final class WaterSampleWorkings {
    /** The finding takes no more and no less. */
    private static final double LEAST_PERCENT = 5;
    private static final double MOST_PERCENT = 3000;
    /** A heater that holds less than this for each kilowatt is one of low content. Source: VDI 2035, 2021, from memory. */
    private static final double LOW_CONTENT_LITRES_PER_KILOWATT = 0.3;
    private static final double MOST_BOILER_KILOWATTS = 10_000;
    private static final double MOST_LITRES_PER_KILOWATT = 1000;
    /** Hottest flow for which the index of scale is made. */
    private static final double MOST_INDEX_CELSIUS = 100;

    private WaterSampleWorkings() {}

    static List<Calculation> of(Job job) {
        return Stream.of(ph(job), overMains(job), salts(job), copper(job), iron(job), fill(job), scaling(job)).flatMap(Optional::stream).toList();
    }

    private static Optional<Calculation> ph(Job job) {
        if (!Readings.has(job, FindingId.SYSTEM_WATER_PH)) {
            return Optional.empty();
        }
        double ph = Readings.get(job, FindingId.SYSTEM_WATER_PH);
        Optional<Boolean> aluminium = aluminium(job);
        if (aluminium.isEmpty() && PhWindow.of(true).verdict(ph) != PhWindow.of(false).verdict(ph)) {
            return Optional.of(Calculation.figure(NOTE, Decimals.sum("At pH %s all depends on the boiler's metal: look whether its exchanger is aluminium.", ph),
                    window(PhWindow.of(false)), "with aluminium " + window(PhWindow.of(true))));
        }
        PhWindow window = PhWindow.of(aluminium.orElse(false));
        boolean inhibited = isInhibited(job);
        String last = inhibited ? "; the inhibitor is at strength, and its maker's figure decides" : "";
        String sum = window(window) + (aluminium.orElse(false) ? ", with aluminium in the boiler" : "");
        return Optional.of(switch (window.verdict(ph)) {
            case TOO_ACID -> Calculation.finding(FindingId.WATER_PH_WORKED_OUT, "too-acid", inhibited ? NOTE : WARN,
                    Decimals.sum("The system water is more acid than it should be, at pH %s%s.", ph, last), sum);
            case WITHIN -> Calculation.finding(FindingId.WATER_PH_WORKED_OUT, "within", inhibited ? NOTE : PASS,
                    Decimals.sum("The pH of the system water is as it should be, at %s.", ph), sum);
            case TOO_ALKALINE -> Calculation.finding(FindingId.WATER_PH_WORKED_OUT, "too-alkaline", inhibited ? NOTE : WARN,
                    Decimals.sum("The system water is more alkaline than it should be, at pH %s%s.", ph, last), sum);
        });
    }

    private static String window(PhWindow window) {
        return Decimals.sum("pH %s to %s (VDI 2035)", window.lowest(), window.highest());
    }

    /** Empty while nobody has looked. */
    private static Optional<Boolean> aluminium(Job job) {
        Optional<Answer> metal = job.answer(FindingId.EXCHANGER_KIND).filter(Answer.One.class::isInstance);
        return job.answer(FindingId.ALUMINIUM_IN_BOILER).filter(Answer.One.class::isInstance).map(new Answer.One("yes")::equals)
                .or(() -> metal.map(new Answer.One("aluminium")::equals));
    }

    private static boolean isInhibited(Job job) {
        return job.answer(FindingId.INHIBITOR_TEST).map(new Answer.One("at-strength")::equals).orElse(false);
    }

    private static Optional<Calculation> overMains(Job job) {
        if (!Readings.has(job, FindingId.SYSTEM_WATER_CONDUCTIVITY, FindingId.MAINS_WATER_CONDUCTIVITY)) {
            return Optional.empty();
        }
        double system = Readings.get(job, FindingId.SYSTEM_WATER_CONDUCTIVITY);
        double mains = Readings.get(job, FindingId.MAINS_WATER_CONDUCTIVITY);
        double percent = 100 * (1 + Conductivity.shareOverMains(system, mains));
        if (percent < LEAST_PERCENT || percent > MOST_PERCENT) {
            return Optional.empty();
        }
        String rinse = switch (Conductivity.rinse(system, mains)) {
            case ACCEPTED -> "after a rinse that would do";
            case REPEAT -> "after a rinse that would want another";
            case FAILED -> "after a rinse that would not do";
        };
        return Optional.of(Calculation.finding(FindingId.TDS_OF_MAINS_PERCENT, new Answer.Reading(percent, "percent"), NOTE,
                Decimals.sum("The system water carries %s %% of what the mains carries; %s.", Decimals.coarse(percent), rinse),
                Decimals.sum("%s / %s µS/cm = %s %%", system, mains, Decimals.coarse(percent)),
                Decimals.sum("dissolved solids some %s to %s mg/l, at %s to %s mg/l for each µS/cm",
                        Decimals.coarse(Conductivity.tdsMilligramsPerLitre(system, Conductivity.LEAST_TDS_FACTOR)),
                        Decimals.coarse(Conductivity.tdsMilligramsPerLitre(system, Conductivity.GREATEST_TDS_FACTOR)),
                        Conductivity.LEAST_TDS_FACTOR, Conductivity.GREATEST_TDS_FACTOR),
                "a rinse: within 10 % of the mains does, over 20 % does not (practice of the BS 7593:2006 era)"));
    }

    private static Optional<Calculation> salts(Job job) {
        return Readings.of(job, FindingId.SYSTEM_WATER_CONDUCTIVITY).stream().mapToObj(conductivity -> switch (Vdi2035.running(conductivity)) {
            case LOW_SALT -> salts("low-salt", "The system water holds next to no salt, at %s µS/cm.", conductivity);
            case SALINE -> salts("saline", "The system water holds as much salt as water from the main, at %s µS/cm.", conductivity);
            case TOO_SALINE -> salts("too-saline", "The system water holds more salt than water has by itself, at %s µS/cm.", conductivity);
        }).findFirst();
    }

    private static Calculation salts(String word, String says, double conductivity) {
        return Calculation.finding(FindingId.WATER_SALTS_WORKED_OUT, word, NOTE, Decimals.sum(says, conductivity), Decimals.sum(
                "low-salt to %s µS/cm, saline to %s (VDI 2035); an inhibitor at strength may stand over it",
                Vdi2035.LOW_SALT_MICROSIEMENS_PER_CENTIMETRE, Vdi2035.SALINE_MICROSIEMENS_PER_CENTIMETRE));
    }

    private static Optional<Calculation> copper(Job job) {
        return Readings.of(job, FindingId.COPPER_MG_PER_LITRE).stream().mapToObj(copper -> Calculation.figure(NOTE, switch (
                Corrosion.copper(copper, aluminium(job).orElse(false))) {
            case LITTLE -> Decimals.sum("Copper in the water is little, at %s mg/l.", copper);
            case ATTACKS_ALUMINIUM -> Decimals.sum("Copper in the water is enough to eat aluminium, at %s mg/l.", copper);
            case PLATES_OUT -> Decimals.sum("Copper in the water plates out on steel and aluminium, at %s mg/l.", copper);
            case CORROSION_OR_FLUX -> Decimals.sum("Copper is being eaten or flux was left in, at %s mg/l.", copper);
        }, Decimals.sum("on aluminium from %s, plating from %s, at work from %s mg/l: guide values (laboratory notes)",
                Corrosion.COPPER_ON_ALUMINIUM_MILLIGRAMS_PER_LITRE, Corrosion.COPPER_PLATES_FROM_MILLIGRAMS_PER_LITRE,
                Corrosion.COPPER_ACTION_MILLIGRAMS_PER_LITRE))).findFirst();
    }

    private static Optional<Calculation> iron(Job job) {
        return Readings.of(job, FindingId.IRON_MG_PER_LITRE).stream().mapToObj(iron -> Calculation.figure(NOTE, Decimals.sum(
                Corrosion.ironAboveGuide(iron, 0) ? "Iron stands over what is often quoted, at %s mg/l: steel is leaving the radiators."
                        : "Iron stands under what is often quoted, at %s mg/l.", iron),
                Decimals.sum("guide %s mg/l in all, from memory; no hard limit", Corrosion.TOTAL_IRON_GUIDE_MILLIGRAMS_PER_LITRE))).findFirst();
    }

    private static Optional<Calculation> fill(Job job) {
        Optional<SystemLitres> content = Readings.has(job, FindingId.HARDNESS_MG_PER_LITRE, FindingId.BOILER_OUTPUT_KW) ? SystemLitres.of(job) : Optional.empty();
        double kilowatts = Readings.of(job, FindingId.BOILER_OUTPUT_KW).orElse(0);
        if (content.isEmpty() || kilowatts <= 0 || kilowatts > MOST_BOILER_KILOWATTS
                || content.get().litres().high() / kilowatts > MOST_LITRES_PER_KILOWATT) {
            return Optional.empty();
        }
        double hardness = Readings.get(job, FindingId.HARDNESS_MG_PER_LITRE);
        boolean lowContent = SystemLitres.boiler(job).litres().likely() / kilowatts < LOW_CONTENT_LITRES_PER_KILOWATT;
        double least = limit(kilowatts, content.get().litres().high(), lowContent);
        double most = limit(kilowatts, content.get().litres().low(), lowContent);
        String sum = Decimals.sum("%s kW and %s: %s mg/l as calcium carbonate at the most (VDI 2035 of 2021, from memory)", kilowatts,
                SystemLitres.shown(content.get().litres()), Double.isFinite(least) ? Decimals.coarse(least) : "no limit");
        if (hardness > most) {
            return Optional.of(Calculation.finding(FindingId.FILL_HARDNESS_WORKED_OUT, "over-limit", WARN, Decimals.sum(
                    "The mains at %s mg/l is harder than this boiler and this much water ask for.", hardness), sum));
        }
        return Optional.of(hardness <= least
                ? Calculation.finding(FindingId.FILL_HARDNESS_WORKED_OUT, "within-limit", PASS, Decimals.sum(
                        "The mains at %s mg/l is no harder than this boiler and this much water allow.", hardness), sum)
                : Calculation.figure(NOTE, Decimals.sum("Whether the mains at %s mg/l is too hard hangs on how much water there is: measure it.", hardness), sum));
    }

    /** In mg/l as calcium carbonate; infinite where there is no limit. */
    private static double limit(double kilowatts, double litres, boolean lowContent) {
        OptionalDouble millimoles = Vdi2035.millimolesPerLitre2021(kilowatts, litres / kilowatts, lowContent);
        return millimoles.isPresent() ? Hardness.milligramsPerLitre(Hardness.Scale.MILLIMOLES_PER_LITRE, millimoles.getAsDouble())
                : Double.POSITIVE_INFINITY;
    }

    private static Optional<Calculation> scaling(Job job) {
        if (!Readings.has(job, FindingId.MAINS_WATER_PH, FindingId.MAINS_WATER_CONDUCTIVITY, FindingId.HARDNESS_MG_PER_LITRE, FindingId.ALKALINITY_MG_PER_LITRE) || Readings.get(job, FindingId.HARDNESS_MG_PER_LITRE) < 1) {
            return Optional.empty();
        }
        double solids = Conductivity.tdsMilligramsPerLitre(Readings.get(job, FindingId.MAINS_WATER_CONDUCTIVITY), Conductivity.LEAST_TDS_FACTOR);
        double flow = Math.min(MOST_INDEX_CELSIUS, HotSystem.of(job).flowCelsius());
        Langelier.Analysis water = new Langelier.Analysis(Readings.get(job, FindingId.MAINS_WATER_PH), solids, Readings.get(job, FindingId.HARDNESS_MG_PER_LITRE),
                Readings.get(job, FindingId.ALKALINITY_MG_PER_LITRE));
        String does = switch (Langelier.saturation(water, flow)) {
            case DISSOLVES_SCALE -> "dissolves lime";
            case NEAR_BALANCE -> "is near balance";
            case LAYS_DOWN_SCALE -> "lays down lime";
        };
        String steel = switch (Langelier.tendency(water, flow)) {
            case SCALE_GROWS -> "scale grows";
            case LITTLE_EITHER_WAY -> "little either way";
            case NO_PROTECTIVE_FILM -> "no film forms on steel";
            case STEEL_CORRODES -> "steel corrodes";
        };
        return Optional.of(Calculation.figure(NOTE, Decimals.sum("Fresh water from this main %s at %s degrees; this judges no water with inhibitor in it.",
                does, flow), Decimals.sum("saturation pH %s, pH %s: Langelier index %s", Langelier.saturationPh(water, flow), water.ph(),
                Langelier.index(water, flow)), Decimals.sum("Ryznar index %s: %s", Langelier.ryznar(water, flow), steel),
                Decimals.sum("with hardness taken as calcium, and %s mg/l of dissolved solids (corrosion textbooks)", solids)));
    }
}
