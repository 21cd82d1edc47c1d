package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.document.Lookup;
import neutralpoint.hydronics.emitter.RadiatorReading.RadiatorState;
import neutralpoint.hydronics.emitter.RadiatorReading;
import neutralpoint.job.Answer;

/** What the table of radiators says: the state of each, and the findings a hand would have given. */
final class SurveyWorkings {
    /** A count over fewer radiators than this says nothing of the house. */
    private static final int FEWEST = 3;
    private static final Map<RadiatorState, String> FELT = Map.of(RadiatorState.HEALTHY, "hot-all-over", RadiatorState.OVER_FED, "hot-all-over",
            RadiatorState.BASE_RESTRICTED, "cold-at-base", RadiatorState.GAS_AT_TOP, "cold-at-top",
            RadiatorState.COLD, "cold-all-over", RadiatorState.LUKEWARM, "lukewarm", RadiatorState.STARVED, "lukewarm");
    private static final List<Heading> HEADINGS = List.of(new Heading(RadiatorState.BASE_RESTRICTED, "Base restricted"),
            new Heading(RadiatorState.STARVED, "Starved of flow"), new Heading(RadiatorState.GAS_AT_TOP, "Gas at the top"),
            new Heading(RadiatorState.COLD, "Cold all over"), new Heading(RadiatorState.REVERSED, "Hotter at the return tail"),
            new Heading(RadiatorState.LUKEWARM, "Lukewarm"), new Heading(RadiatorState.OVER_FED, "Over-fed"));

    /** Least and greatest difference that can be believed: the ranges the findings are catalogued with. */
    private static final Map<String, double[]> BELIEVED = Map.of(FindingId.TOP_OVER_BASE_DEGREES, new double[] {-30, 60},
            FindingId.TAIL_DROP_DEGREES, new double[] {-40, 65});
    private static final int LONGEST_NAME = 30;
    private static final int LONGEST_LIST = 80;

    /** What radiators in one state are listed under. */
    private record Heading(RadiatorState state, String words) {}

    private SurveyWorkings() {}

    static List<Calculation> of(List<SurveyedRadiator> survey) {
        List<Calculation> out = new ArrayList<>();
        if (survey.isEmpty()) {
            return out;
        }
        Map<String, String> felt = new LinkedHashMap<>();
        survey.forEach(r -> felt.put(r.name(), felt(r)));
        long well = felt.values().stream().filter("hot-all-over"::equals).count();
        out.add(Calculation.finding(FindingId.RADIATOR_PATTERN, new Answer.ByRadiator(felt), well == survey.size() && survey.stream().noneMatch(SurveyedRadiator::isTooHot) ? PASS : NOTE,
                well + " of " + survey.size() + " radiators are hot all over.",
                survey.stream().map(SurveyWorkings::line).toArray(String[]::new)));
        HEADINGS.forEach(h -> listed(survey, h).ifPresent(out::add));
        if (survey.size() >= FEWEST) {
            out.add(baseCount(survey));
        }
        worst(survey).ifPresent(w -> {
            RadiatorReading t = w.reading();
            out.add(difference(FindingId.TOP_OVER_BASE_DEGREES, t.topOverBaseKelvin(), Decimals.sum("The worst radiator is %s: top over base %s degrees",
                    shortened(w.name()), t.topOverBaseKelvin()), t.topCelsius(), t.baseCelsius()));
            w.dropKelvin().ifPresent(drop -> out.add(difference(FindingId.TAIL_DROP_DEGREES, drop, Decimals.sum("%s drops %s degrees from tail to tail",
                    shortened(w.name()), drop), t.flowTailCelsius().getAsDouble(), t.returnTailCelsius().getAsDouble())));
        });
        return out;
    }

    /** A difference too great to be one is shown, and nothing is concluded from it. */
    private static Calculation difference(String finding, double kelvin, String says, double from, double less) {
        double[] believed = Lookup.known(BELIEVED, finding);
        String sum = Decimals.sum("%s - %s = %s", from, less, kelvin);
        return kelvin < believed[0] || kelvin > believed[1] ? Calculation.figure(WARN, says + ", which is hard to believe; read it again.", sum)
                : Calculation.finding(finding, new Answer.Reading(kelvin, "degrees"), NOTE, says + ".", sum);
    }

    /** What a hand would say. A cold body with one hot tail is not lukewarm, and a radiator fed backwards may be anything. */
    private static String felt(SurveyedRadiator r) {
        RadiatorReading t = r.reading();
        RadiatorState face = RadiatorReading.ofFace(t.topCelsius(), t.baseCelsius(), t.roomCelsius()).state();
        if (face == RadiatorState.COLD) {
            double hottestTail = Math.max(t.flowTailCelsius().orElse(t.roomCelsius()), t.returnTailCelsius().orElse(t.roomCelsius()));
            return hottestTail - t.roomCelsius() >= RadiatorReading.LUKEWARM_KELVIN ? "one-tail-hot" : Lookup.known(FELT, RadiatorState.COLD);
        }
        return Lookup.known(FELT, r.state() == RadiatorState.REVERSED ? face : r.state());
    }

    private static Optional<Calculation> listed(List<SurveyedRadiator> survey, Heading h) {
        List<SurveyedRadiator> these = survey.stream().filter(r -> r.state() == h.state()).toList();
        return these.isEmpty() ? Optional.empty() : Optional.of(Calculation.figure(WARN, h.words() + ": "
                + names(these.stream().map(SurveyedRadiator::name).toList()) + ", " + these.size() + " of " + survey.size() + ".", these.stream().map(SurveyWorkings::line).toArray(String[]::new)));
    }

    /** As many names as fit into a sentence. */
    static String names(List<String> radiators) {
        StringBuilder names = new StringBuilder();
        int shown = 0;
        for (String radiator : radiators) {
            String name = shortened(radiator);
            if (shown > 0 && names.length() + name.length() > LONGEST_LIST) {
                return names + " and " + (radiators.size() - shown) + " more";
            }
            names.append(shown++ == 0 ? "" : ", ").append(name);
        }
        return names.toString();
    }

    static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1).strip() + "…";
    }

    private static Calculation baseCount(List<SurveyedRadiator> survey) {
        long restricted = survey.stream().filter(r -> r.state() == RadiatorState.BASE_RESTRICTED).count();
        String count = restricted == 0 ? "none" : restricted == 1 ? "one" : restricted * 2 >= survey.size() ? "most" : "few";
        return Calculation.finding(FindingId.COLD_BASE_COUNT, count, restricted == 0 ? PASS : WARN,
                restricted + " of " + survey.size() + " bases are restricted.");
    }

    /** The one a hand would have picked: the most blocked base, or else the most gas, or else the widest drop. */
    private static Optional<SurveyedRadiator> worst(List<SurveyedRadiator> survey) {
        Comparator<SurveyedRadiator> byName = Comparator.comparing(SurveyedRadiator::name);
        return survey.stream().filter(r -> r.state() == RadiatorState.BASE_RESTRICTED)
                .max(Comparator.comparingDouble((SurveyedRadiator r) -> r.reading().topOverBaseKelvin()).thenComparing(byName))
                .or(() -> survey.stream().filter(r -> r.state() == RadiatorState.GAS_AT_TOP)
                        .min(Comparator.comparingDouble((SurveyedRadiator r) -> r.reading().topOverBaseKelvin()).thenComparing(byName)))
                .or(() -> survey.stream().filter(r -> r.state() != RadiatorState.COLD && r.dropKelvin().isPresent())
                        .max(Comparator.comparingDouble((SurveyedRadiator r) -> Math.abs(r.dropKelvin().getAsDouble())).thenComparing(byName)));
    }

    private static String line(SurveyedRadiator r) {
        String tails = r.reading().flowTailCelsius().isPresent() && r.reading().returnTailCelsius().isPresent()
                ? Decimals.sum("; tails %s and %s, drop %s", r.reading().flowTailCelsius().getAsDouble(),
                        r.reading().returnTailCelsius().getAsDouble(), r.dropKelvin().getAsDouble()) : "";
        String blocked = r.reading().blockedShare().isPresent() && r.reading().blockedShare().getAsDouble() > 0
                ? Decimals.sum("; about %s in 100 of the base does nothing", (double) Math.round(r.reading().blockedShare().getAsDouble() * 100)) : "";
        return Decimals.sum("%s: top %s, base %s, difference %s%s%s", r.name(), r.reading().topCelsius(), r.reading().baseCelsius(),
                r.reading().topOverBaseKelvin(), tails, blocked);
    }
}
