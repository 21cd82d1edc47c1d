package neutralpoint.workplan.figures;

import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.EstimateFormat;

/**
 * Radiators run to the drain one by one until they are clear.
 *
 * @param each each radiator's litres and minutes, in the order of the table; no minutes where the supply gives nothing
 */
record Dumps(List<Dump> each, FigureSet part) {
    static final Dumps NONE = new Dumps(List.of(), FigureSet.NOTHING);
    private static final String SOURCE = "content x ln(1 / share left), well mixed; shares left by dirt: common practice, no source";

    static Dumps of(House house, JobScope scope) {
        if (!scope.does(WaterWork.DUMPED)) {
            return NONE;
        }
        List<House.Emitter> these = house.radiators().stream().filter(r -> scope.isWhole() || r.isColdAtBase()).toList();
        if (these.isEmpty()) {
            return new Dumps(List.of(), FigureSet.missing(scope.isWhole()
                    ? "List the radiators by room, with type and size if they can be measured: what each dump takes follows from them."
                    : "Say which radiators are cold at the base: only those are cleaned, and what they take follows from them."));
        }
        WaterCondition.Turnovers dirt = WaterCondition.Turnovers.of(house.job());
        List<Dump> each = these.stream().map(r -> dump(house, r, dirt)).toList();
        return new Dumps(each, total(house, each).and(toMeasure(these, dirt)));
    }

    private static Dump dump(House house, House.Emitter r, WaterCondition.Turnovers dirt) {
        Estimate litres = r.litres().times(dirt.turnovers());
        Figure water = new Figure("dump-litres-of-" + r.name(), "Water for the dump of " + r.name(), litres, "litres", List.of(
                "holds " + EstimateFormat.range(r.litres(), "litres") + (r.isSized() ? "" : ", taken as usual: common practice, no source"),
                "water " + dirt.says() + ": " + EstimateFormat.range(dirt.turnovers(), "turnovers") + " until clear",
                Decimals.sum("%s x %s = %s", r.litres().likely(), dirt.turnovers().likely(), EstimateFormat.range(litres, "litres"))), SOURCE);
        return new Dump(r.name(), water, house.supplyRuns() ? Optional.of(minutes(house.supply(), r.name(), litres)) : Optional.empty());
    }

    private static Figure minutes(MeasuredOrUsual supply, String name, Estimate litres) {
        Estimate minutes = litres.over(supply.value());
        return new Figure("dump-minutes-of-" + name, "Time for the dump of " + name, minutes, "minutes", List.of("supply " + supply.shown(),
                Decimals.sum("%s / %s = %s", litres.likely(), supply.value().likely(), EstimateFormat.range(minutes, "minutes"))), SOURCE);
    }

    private static FigureSet total(House house, List<Dump> each) {
        Estimate litres = Estimate.total(each.stream().map(d -> d.litres().value()).toList());
        FigureSet part = FigureSet.of(new Figure("dump-litres", "Water for the dumps", litres, "litres",
                List.of(each.size() + " radiators together " + EstimateFormat.range(litres, "litres")), SOURCE));
        if (!house.supplyRuns()) {
            return part;
        }
        Estimate minutes = Estimate.total(each.stream().map(d -> d.minutes().orElseThrow().value()).toList());
        return part.and(FigureSet.of(new Figure("dump-minutes", "Time for the dumps", minutes, "minutes",
                List.of(each.size() + " radiators together " + EstimateFormat.range(minutes, "minutes"), "valves opened and shut not counted"),
                SOURCE)));
    }

    private static FigureSet toMeasure(List<House.Emitter> radiators, WaterCondition.Turnovers dirt) {
        FigureSet part = radiators.stream().allMatch(House.Emitter::isSized) ? FigureSet.NOTHING
                : FigureSet.missing("Measure type, height and length of the radiators: what each dump takes follows from its content.");
        return dirt.isSeen() ? part
                : part.and(FigureSet.missing("Look at the water from a bleed screw or a drain cock: how dirty it is sets how long a dump "
                        + "runs."));
    }

    Optional<Estimate> litres() {
        return each.isEmpty() ? Optional.empty() : Optional.of(Estimate.total(each.stream().map(d -> d.litres().value()).toList()));
    }
}
