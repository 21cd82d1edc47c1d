package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import neutralpoint.hydronics.Estimate;
import neutralpoint.job.Job;
import neutralpoint.workings.SystemLitres;

/**
 * Every figure of a plan. A pure function of the job and of what is to be done.
 *
 * @param figures   in the order of the work
 * @param dumps     each radiator run to the drain, in the order of the table
 * @param toMeasure what to measure, a sentence each, for what is missing or only guessed
 */
public record Quantities(List<Figure> figures, List<Dump> dumps, List<String> toMeasure) {
    /** Where work is left to somebody else there is nothing to work out and nothing to measure. */
    public static final Quantities NONE = new Quantities(List.of(), List.of(), List.of());

    public Quantities {
        figures = List.copyOf(figures);
        dumps = List.copyOf(dumps);
        toMeasure = List.copyOf(toMeasure);
    }

    /** @param known the job with what was worked out from its readings put in */
    public static Quantities of(Job known, JobScope scope) {
        House house = House.of(known);
        Dumps dumps = Dumps.of(house, scope);
        FigureSet part = house.content().map(c -> withContent(house, scope, c, dumps)).orElseGet(() -> withoutContent(house, scope, dumps))
                .and(Filling.pressure(house, scope));
        return new Quantities(part.figures(), dumps.each(),
                new ArrayList<>(new LinkedHashSet<>(part.toMeasure())));
    }

    private static FigureSet withContent(House house, JobScope scope, SystemLitres content, Dumps dumps) {
        Estimate litres = content.litres();
        FigureSet part = FigureSet.of(new Figure("system-litres", "Water in the heating", litres, "litres", content.sums(),
                litres.low() == litres.high() ? "measured" : "contents of parts and rules of thumb, as far out as they say"));
        if (litres.low() < litres.high() && scope.opensTheWater()) {
            part = part.and(FigureSet.missing("Measure the water when the system is next drained or filled: every figure rests on it."));
        }
        return part.and(Dosing.of(house, scope, litres)).and(Heating.of(house, scope, litres))
                .and(Circulation.turnovers(house, scope, litres)).and(Circulation.velocity(house, scope))
                .and(dumps.part()).and(WaterUse.of(house, scope, litres, dumps)).and(Filling.room(house, scope));
    }

    private static FigureSet withoutContent(House house, JobScope scope, Dumps dumps) {
        String sentence = house.job().radiators().size() >= SystemLitres.FEWEST_RADIATORS
                ? "The radiators in the table add up to more water than any house holds: measure them again."
                : "List at least three radiators, with type and size if they can be measured, or measure what the system holds: doses, "
                        + "heat and water all follow from it.";
        return FigureSet.missing(sentence).and(Circulation.velocity(house, scope)).and(dumps.part());
    }

    /** A figure by its id; empty where it does not belong to the job or could not be worked out. */
    public Optional<Figure> figure(String id) {
        return figures.stream().filter(f -> f.id().equals(id)).findFirst();
    }
}
