package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.hydronics.Dilution;
import neutralpoint.hydronics.Range;
import neutralpoint.workings.Figures;

/** Water let out, rinsed through and filled in, and the time each takes. */
final class WaterUse {
    /** A hose on a drain cock under a house of water: common practice, no source. */
    private static final Range DRAIN_LITRES_PER_MINUTE = new Range(4, 8, 12);
    /** A filling loop or a float valve passes less than the open tap. Common practice, no source. */
    private static final Range FILLING_SHARE = new Range(0.4, 0.7, 1);
    /** Dissolved solids of a system full of cleaner over the main's. Common practice, no source. */
    private static final Range USUAL_PERCENT_OF_MAINS = new Range(200, 300, 500);
    /** Rinsed enough within so much of the main's reading; {@code tds-rinse-limit} in the list of sources. */
    private static final double NEAR_ENOUGH = 0.10;

    private WaterUse() {}

    static Part of(House house, Scope scope, Range systemLitres, Dumps dumps) {
        if (!scope.opensTheWater()) {
            return Part.NOTHING;
        }
        Range drained = systemLitres.times(scope.drainedShare());
        Optional<Range> rinse = scope.way().does(Way.Does.RINSED) ? Optional.of(systemLitres.times(scope.cleansedShare())
                .times(turnovers(house))) : Optional.empty();
        Part part = drain(systemLitres, scope, drained);
        part = rinse.map(litres -> rinse(house, systemLitres.times(scope.cleansedShare()), litres)).map(part::and).orElse(part);
        part = part.and(refill(house, drained));
        boolean dumpsUnknown = scope.way().does(Way.Does.DUMPED) && dumps.litres().isEmpty();
        part = dumpsUnknown ? part : part.and(totals(dumps.litres(), rinse, drained));
        if (!house.supply().isRead()) {
            return part.and(Part.missing("Time a jug at the cold kitchen tap, such as 2 litres in 9 s: dumps, rinses and refill take as "
                    + "long as the supply makes them."));
        }
        return house.supplyRuns() ? part : part.and(Part.missing("The cold supply gives next to nothing: find out why before any water "
                + "is let out, for it could not be filled again."));
    }

    private static Part drain(Range systemLitres, Scope scope, Range drained) {
        Range share = scope.drainedShare();
        String let = share.low() == 1 ? "all of the water is let out: " + Said.range(drained, "litres")
                : Figures.sum("%s x a share of %s, by how high up the place is = %s", Said.range(systemLitres, "litres"),
                        Said.range(share, ""), Said.range(drained, "litres"));
        Range minutes = drained.over(DRAIN_LITRES_PER_MINUTE);
        String source = "content of the system" + (share.low() == 1 ? "" : "; the share let out common practice, no source");
        return Part.of(new Figure("drain-litres", "Water to let out of the system", drained, "litres", List.of(let), source),
                new Figure("drain-minutes", "Time to drain", minutes, "minutes", List.of(Figures.sum("%s / %s = %s",
                        Said.range(drained, "litres"), Said.range(DRAIN_LITRES_PER_MINUTE, "litres a minute"),
                        Said.range(minutes, "minutes"))),
                        "a hose on a drain cock: common practice, no source"));
    }

    private static Range turnovers(House house) {
        Range percent = percentOfMains(house);
        return new Range(turnovers(percent.low()), turnovers(percent.likely()), turnovers(percent.high()));
    }

    private static Range percentOfMains(House house) {
        OptionalDouble read = Figures.of(house.job(), "tds-of-mains-percent");
        // Softened fill below the main's reading is nothing to rinse out; the cleaner still is, so the guess is the least.
        return read.isPresent() && read.getAsDouble() > USUAL_PERCENT_OF_MAINS.low()
                ? new Range(read.getAsDouble(), read.getAsDouble(), Math.max(read.getAsDouble(), USUAL_PERCENT_OF_MAINS.high()))
                : USUAL_PERCENT_OF_MAINS;
    }

    private static double turnovers(double percentOfMains) {
        return Dilution.turnoversToMains(percentOfMains, 100, NEAR_ENOUGH);
    }

    private static Part rinse(House house, Range content, Range litres) {
        Range percent = percentOfMains(house);
        Range turnovers = turnovers(house);
        List<String> sums = new ArrayList<>();
        sums.add(Figures.sum("from %s of the main's reading to within 10 percent of it: ln((%s - 100) / 10) = %s",
                Said.range(percent, "percent"), percent.likely(), Said.range(turnovers, "turnovers")));
        sums.add(Figures.sum("%s x %s = %s", Said.range(content, "litres"), turnovers.likely(), Said.range(litres, "litres")));
        Part part = Part.of(new Figure("rinse-litres", "Water to rinse the circuit", litres, "litres", sums, "well-mixed dilution; "
                + "within 10 percent of the main: tds-rinse-limit; the reading with cleaner in it common practice, no source"));
        return house.supplyRuns() ? part.and(Part.of(timed(house, "rinse-minutes", "Time to rinse the circuit", litres,
                house.supply().value(), "supply " + house.supply().shown()))) : part;
    }

    private static Part refill(House house, Range litres) {
        Part part = Part.of(new Figure("refill-litres", "Water to fill in again", litres, "litres",
                List.of("as much as was let out: " + Said.range(litres, "litres")), "content of the system"));
        if (!house.supplyRuns()) {
            return part;
        }
        Range flow = house.supply().value().times(FILLING_SHARE);
        return part.and(Part.of(timed(house, "refill-minutes", "Time to refill", litres, flow, "supply " + house.supply().shown()
                + ", of which a loop or float valve passes " + Said.range(FILLING_SHARE, ""))));
    }

    private static Figure timed(House house, String id, String title, Range litres, Range flow, String by) {
        Range minutes = litres.over(flow);
        return new Figure(id, title, minutes, "minutes", List.of(by, Figures.sum("%s / %s = %s", Said.range(litres, "litres"),
                Said.range(flow, "litres a minute"), Said.range(minutes, "minutes"))), house.supply().isRead()
                ? "the supply as measured" : "a usual supply: common practice, no source");
    }

    private static Part totals(Optional<Range> dumps, Optional<Range> rinse, Range drained) {
        List<String> sums = new ArrayList<>();
        dumps.ifPresent(d -> sums.add("dumps " + Said.range(d, "litres")));
        rinse.ifPresent(r -> sums.add("rinsing " + Said.range(r, "litres")));
        Range through = dumps.orElse(Range.NOTHING).plus(rinse.orElse(Range.NOTHING));
        Range all = through.plus(drained);
        List<String> drawn = new ArrayList<>(sums);
        drawn.add("refill " + Said.range(drained, "litres"));
        drawn.add("together " + Said.range(all, "litres"));
        List<String> gone = new ArrayList<>(sums);
        gone.add("let out " + Said.range(drained, "litres"));
        gone.add("together " + Said.range(all, "litres"));
        return Part.of(new Figure("water-litres", "Water drawn from the main", all, "litres", drawn, "sum of the parts"),
                new Figure("waste-litres", "Water to the foul drain", all, "litres", gone, "sum of the parts"));
    }
}
