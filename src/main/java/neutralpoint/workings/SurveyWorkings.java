package neutralpoint.workings;

import static neutralpoint.workings.WorkedOut.Grade.NOTE;
import static neutralpoint.workings.WorkedOut.Grade.PASS;
import static neutralpoint.workings.WorkedOut.Grade.WARN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import neutralpoint.hydronics.RadiatorReading.State;
import neutralpoint.job.Answer;

/** What the table of radiators says: the state of each, and the findings a hand would have given. */
final class SurveyWorkings {
    /** A count over fewer radiators than this says nothing of the house. */
    private static final int FEWEST = 3;
    private static final Map<State, String> FELT = Map.of(State.HEALTHY, "hot-all-over", State.OVER_FED, "hot-all-over",
            State.REVERSED, "hot-all-over", State.BASE_RESTRICTED, "cold-at-base", State.GAS_AT_TOP, "cold-at-top",
            State.COLD, "cold-all-over", State.LUKEWARM, "lukewarm", State.STARVED, "lukewarm");
    private static final List<Heading> HEADINGS = List.of(new Heading(State.BASE_RESTRICTED, "Base restricted"),
            new Heading(State.STARVED, "Starved of flow"), new Heading(State.GAS_AT_TOP, "Gas at the top"),
            new Heading(State.COLD, "Cold all over"), new Heading(State.REVERSED, "Hotter at the return tail"),
            new Heading(State.LUKEWARM, "Lukewarm"), new Heading(State.OVER_FED, "Over-fed"));

    /** What radiators in one state are listed under. */
    private record Heading(State state, String words) {}

    private SurveyWorkings() {}

    static List<WorkedOut> of(List<SurveyedRadiator> survey) {
        List<WorkedOut> out = new ArrayList<>();
        if (survey.isEmpty()) {
            return out;
        }
        Map<String, String> felt = new LinkedHashMap<>();
        survey.forEach(r -> felt.put(r.name(), FELT.get(r.state())));
        long well = survey.stream().filter(r -> r.state() == State.HEALTHY || r.state() == State.OVER_FED).count();
        out.add(WorkedOut.finding("radiator-pattern", new Answer.ByRadiator(felt), well == survey.size() ? PASS : NOTE,
                well + " of " + survey.size() + " radiators are hot all over.",
                survey.stream().map(SurveyWorkings::line).toArray(String[]::new)));
        HEADINGS.forEach(h -> listed(survey, h).ifPresent(out::add));
        if (survey.size() >= FEWEST) {
            out.add(baseCount(survey));
        }
        worst(survey).ifPresent(w -> {
            out.add(WorkedOut.finding("top-over-base-degrees", new Answer.Reading(w.reading().topOverBaseKelvin(), "degrees"), NOTE,
                    Figures.sum("The worst radiator is %s: top over base %s degrees.", w.name(), w.reading().topOverBaseKelvin()),
                    Figures.sum("%s - %s = %s", w.reading().topCelsius(), w.reading().baseCelsius(), w.reading().topOverBaseKelvin())));
            w.dropKelvin().ifPresent(drop -> out.add(WorkedOut.finding("tail-drop-degrees", new Answer.Reading(drop, "degrees"), NOTE,
                    Figures.sum("%s drops %s degrees from tail to tail.", w.name(), drop),
                    Figures.sum("%s - %s = %s", w.reading().flowTailCelsius().getAsDouble(),
                            w.reading().returnTailCelsius().getAsDouble(), drop))));
        });
        return out;
    }

    private static Optional<WorkedOut> listed(List<SurveyedRadiator> survey, Heading h) {
        List<SurveyedRadiator> these = survey.stream().filter(r -> r.state() == h.state()).toList();
        return these.isEmpty() ? Optional.empty() : Optional.of(WorkedOut.figure(WARN, h.words() + ": "
                + these.stream().map(SurveyedRadiator::name).collect(Collectors.joining(", ")) + ", " + these.size() + " of "
                + survey.size() + ".", these.stream().map(SurveyWorkings::line).toArray(String[]::new)));
    }

    private static WorkedOut baseCount(List<SurveyedRadiator> survey) {
        long restricted = survey.stream().filter(r -> r.state() == State.BASE_RESTRICTED).count();
        String count = restricted == 0 ? "none" : restricted == 1 ? "one" : restricted * 2 >= survey.size() ? "most" : "few";
        return WorkedOut.finding("cold-base-count", count, restricted == 0 ? PASS : WARN,
                restricted + " of " + survey.size() + " bases are restricted.");
    }

    /** The one a hand would have picked: the most blocked base, or else the most gas, or else the widest drop. */
    private static Optional<SurveyedRadiator> worst(List<SurveyedRadiator> survey) {
        Comparator<SurveyedRadiator> byName = Comparator.comparing(SurveyedRadiator::name);
        return survey.stream().filter(r -> r.state() == State.BASE_RESTRICTED)
                .max(Comparator.comparingDouble((SurveyedRadiator r) -> r.reading().topOverBaseKelvin()).thenComparing(byName))
                .or(() -> survey.stream().filter(r -> r.state() == State.GAS_AT_TOP)
                        .min(Comparator.comparingDouble((SurveyedRadiator r) -> r.reading().topOverBaseKelvin()).thenComparing(byName)))
                .or(() -> survey.stream().filter(r -> r.state() != State.COLD && r.dropKelvin().isPresent())
                        .max(Comparator.comparingDouble((SurveyedRadiator r) -> Math.abs(r.dropKelvin().getAsDouble())).thenComparing(byName)));
    }

    private static String line(SurveyedRadiator r) {
        String tails = r.reading().flowTailCelsius().isPresent() && r.reading().returnTailCelsius().isPresent()
                ? Figures.sum("; tails %s and %s, drop %s", r.reading().flowTailCelsius().getAsDouble(),
                        r.reading().returnTailCelsius().getAsDouble(), r.dropKelvin().getAsDouble()) : "";
        String blocked = r.reading().blockedShare().isPresent() && r.reading().blockedShare().getAsDouble() > 0
                ? Figures.sum("; about %s in 100 of the base does nothing", (double) Math.round(r.reading().blockedShare().getAsDouble() * 100)) : "";
        return Figures.sum("%s: top %s, base %s, difference %s%s%s", r.name(), r.reading().topCelsius(), r.reading().baseCelsius(),
                r.reading().topOverBaseKelvin(), tails, blocked);
    }
}
