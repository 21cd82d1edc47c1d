package neutralpoint.workplan;

import java.util.List;
import java.util.Optional;
import neutralpoint.hydronics.Range;
import neutralpoint.workings.Figures;

/**
 * Radiators run to the drain one by one until they are clear.
 *
 * @param each each radiator's litres and minutes, in the order of the table; no minutes where the supply gives nothing
 */
record Dumps(List<Dump> each, Part part) {
    static final Dumps NONE = new Dumps(List.of(), Part.NOTHING);
    private static final String SOURCE = "content x ln(1 / share left), well mixed; shares left by dirt: common practice, no source";

    static Dumps of(House house, Scope scope) {
        if (!scope.way().does(Way.Does.DUMPED)) {
            return NONE;
        }
        List<House.Emitter> these = house.radiators().stream().filter(r -> scope.isWhole() || r.isColdAtBase()).toList();
        if (these.isEmpty()) {
            return new Dumps(List.of(), Part.missing(scope.isWhole()
                    ? "List the radiators by room, with type and size if they can be measured: what each dump takes follows from them."
                    : "Say which radiators are cold at the base: only those are cleaned, and what they take follows from them."));
        }
        Dirt.Judged dirt = Dirt.Judged.of(house.job());
        List<Dump> each = these.stream().map(r -> dump(house, r, dirt)).toList();
        return new Dumps(each, total(house, each).and(toMeasure(these, dirt)));
    }

    private static Dump dump(House house, House.Emitter r, Dirt.Judged dirt) {
        Range litres = r.litres().times(dirt.turnovers());
        Figure water = new Figure("dump-litres-of-" + r.name(), "Water for the dump of " + r.name(), litres, "litres", List.of(
                "holds " + Said.range(r.litres(), "litres") + (r.isSized() ? "" : ", taken as usual: common practice, no source"),
                "water " + dirt.says() + ": " + Said.range(dirt.turnovers(), "turnovers") + " until clear",
                Figures.sum("%s x %s = %s", r.litres().likely(), dirt.turnovers().likely(), Said.range(litres, "litres"))), SOURCE);
        return new Dump(r.name(), water, house.supplyRuns() ? Optional.of(minutes(house.supply(), r.name(), litres)) : Optional.empty());
    }

    private static Figure minutes(Given supply, String name, Range litres) {
        Range minutes = litres.over(supply.value());
        return new Figure("dump-minutes-of-" + name, "Time for the dump of " + name, minutes, "minutes", List.of("supply " + supply.shown(),
                Figures.sum("%s / %s = %s", litres.likely(), supply.value().likely(), Said.range(minutes, "minutes"))), SOURCE);
    }

    private static Part total(House house, List<Dump> each) {
        Range litres = Range.total(each.stream().map(d -> d.litres().value()).toList());
        Part part = Part.of(new Figure("dump-litres", "Water for the dumps", litres, "litres",
                List.of(each.size() + " radiators together " + Said.range(litres, "litres")), SOURCE));
        if (!house.supplyRuns()) {
            return part;
        }
        Range minutes = Range.total(each.stream().map(d -> d.minutes().orElseThrow().value()).toList());
        return part.and(Part.of(new Figure("dump-minutes", "Time for the dumps", minutes, "minutes",
                List.of(each.size() + " radiators together " + Said.range(minutes, "minutes"), "valves opened and shut not counted"),
                SOURCE)));
    }

    private static Part toMeasure(List<House.Emitter> radiators, Dirt.Judged dirt) {
        Part part = radiators.stream().allMatch(House.Emitter::isSized) ? Part.NOTHING
                : Part.missing("Measure type, height and length of the radiators: what each dump takes follows from its content.");
        return dirt.isSeen() ? part
                : part.and(Part.missing("Look at the water from a bleed screw or a drain cock: how dirty it is sets how long a dump "
                        + "runs."));
    }

    Optional<Range> litres() {
        return each.isEmpty() ? Optional.empty() : Optional.of(Range.total(each.stream().map(d -> d.litres().value()).toList()));
    }
}
