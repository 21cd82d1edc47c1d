package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Dilution;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.EstimateFormat;
import neutralpoint.workings.Readings;

/** Water let out, rinsed through and filled in, and the time each takes. */
final class WaterUse {
    /** A hose on a drain cock under a house of water: common practice, no source. */
    private static final Estimate DRAIN_LITRES_PER_MINUTE = new Estimate(4, 8, 12);
    /** A filling loop or a float valve passes less than the open tap. Common practice, no source. */
    private static final Estimate FILLING_SHARE = new Estimate(0.4, 0.7, 1);
    /** Dissolved solids of a system full of cleaner over the main's. Common practice, no source. */
    private static final Estimate USUAL_PERCENT_OF_MAINS = new Estimate(200, 300, 500);
    /** Rinsed enough within so much of the main's reading; {@code tds-rinse-limit} in the list of sources. */
    private static final double NEAR_ENOUGH = 0.10;

    private WaterUse() {}

    static FigureSet of(House house, JobScope scope, Estimate systemLitres, Dumps dumps) {
        if (!scope.opensTheWater()) {
            return FigureSet.NOTHING;
        }
        Estimate drained = systemLitres.times(scope.drainedShare());
        Optional<Estimate> rinse = scope.does(WaterWork.RINSED) ? Optional.of(systemLitres.times(scope.cleansedShare())
                .times(turnovers(house))) : Optional.empty();
        FigureSet part = drain(systemLitres, scope, drained);
        part = rinse.map(litres -> rinse(house, systemLitres.times(scope.cleansedShare()), litres)).map(part::and).orElse(part);
        part = part.and(refill(house, drained));
        boolean dumpsUnknown = scope.does(WaterWork.DUMPED) && dumps.litres().isEmpty();
        part = dumpsUnknown ? part : part.and(totals(dumps.litres(), rinse, drained));
        if (!house.supply().isRead()) {
            return part.and(FigureSet.missing("Time a jug at the cold kitchen tap, such as 2 litres in 9 s: dumps, rinses and refill take as "
                    + "long as the supply makes them."));
        }
        return house.supplyRuns() ? part : part.and(FigureSet.missing("The cold supply gives next to nothing: find out why before any water "
                + "is let out, for it could not be filled again."));
    }

    private static FigureSet drain(Estimate systemLitres, JobScope scope, Estimate drained) {
        Estimate share = scope.drainedShare();
        String let = share.low() == 1 ? "all of the water is let out: " + EstimateFormat.range(drained, "litres")
                : Decimals.sum("%s x a share of %s, by how high up the place is = %s", EstimateFormat.range(systemLitres, "litres"),
                        EstimateFormat.range(share, ""), EstimateFormat.range(drained, "litres"));
        Estimate minutes = drained.over(DRAIN_LITRES_PER_MINUTE);
        String source = "content of the system" + (share.low() == 1 ? "" : "; the share let out common practice, no source");
        return FigureSet.of(new Figure("drain-litres", "Water to let out of the system", drained, "litres", List.of(let), source),
                new Figure("drain-minutes", "Time to drain", minutes, "minutes", List.of(Decimals.sum("%s / %s = %s",
                        EstimateFormat.range(drained, "litres"), EstimateFormat.range(DRAIN_LITRES_PER_MINUTE, "litres a minute"),
                        EstimateFormat.range(minutes, "minutes"))),
                        "a hose on a drain cock: common practice, no source"));
    }

    private static Estimate turnovers(House house) {
        Estimate percent = percentOfMains(house);
        return new Estimate(turnovers(percent.low()), turnovers(percent.likely()), turnovers(percent.high()));
    }

    private static Estimate percentOfMains(House house) {
        OptionalDouble read = Readings.of(house.job(), FindingId.TDS_OF_MAINS_PERCENT);
        // Softened fill below the main's reading is nothing to rinse out; the cleaner still is, so the guess is the least.
        return read.isPresent() && read.getAsDouble() > USUAL_PERCENT_OF_MAINS.low()
                ? new Estimate(read.getAsDouble(), read.getAsDouble(), Math.max(read.getAsDouble(), USUAL_PERCENT_OF_MAINS.high()))
                : USUAL_PERCENT_OF_MAINS;
    }

    private static double turnovers(double percentOfMains) {
        return Dilution.turnoversToMains(percentOfMains, 100, NEAR_ENOUGH);
    }

    private static FigureSet rinse(House house, Estimate content, Estimate litres) {
        Estimate percent = percentOfMains(house);
        Estimate turnovers = turnovers(house);
        List<String> sums = new ArrayList<>();
        sums.add(Decimals.sum("from %s of the main's reading to within 10 percent of it: ln((%s - 100) / 10) = %s",
                EstimateFormat.range(percent, "percent"), percent.likely(), EstimateFormat.range(turnovers, "turnovers")));
        sums.add(Decimals.sum("%s x %s = %s", EstimateFormat.range(content, "litres"), turnovers.likely(), EstimateFormat.range(litres, "litres")));
        FigureSet part = FigureSet.of(new Figure("rinse-litres", "Water to rinse the circuit", litres, "litres", sums, "well-mixed dilution; "
                + "within 10 percent of the main: tds-rinse-limit; the reading with cleaner in it common practice, no source"));
        return house.supplyRuns() ? part.and(FigureSet.of(timed(house, "rinse-minutes", "Time to rinse the circuit", litres,
                house.supply().value(), "supply " + house.supply().shown()))) : part;
    }

    private static FigureSet refill(House house, Estimate litres) {
        FigureSet part = FigureSet.of(new Figure("refill-litres", "Water to fill in again", litres, "litres",
                List.of("as much as was let out: " + EstimateFormat.range(litres, "litres")), "content of the system"));
        if (!house.supplyRuns()) {
            return part;
        }
        Estimate flow = house.supply().value().times(FILLING_SHARE);
        return part.and(FigureSet.of(timed(house, "refill-minutes", "Time to refill", litres, flow, "supply " + house.supply().shown()
                + ", of which a loop or float valve passes " + EstimateFormat.range(FILLING_SHARE, ""))));
    }

    private static Figure timed(House house, String id, String title, Estimate litres, Estimate flow, String by) {
        Estimate minutes = litres.over(flow);
        return new Figure(id, title, minutes, "minutes", List.of(by, Decimals.sum("%s / %s = %s", EstimateFormat.range(litres, "litres"),
                EstimateFormat.range(flow, "litres a minute"), EstimateFormat.range(minutes, "minutes"))), house.supply().isRead()
                ? "the supply as measured" : "a usual supply: common practice, no source");
    }

    private static FigureSet totals(Optional<Estimate> dumps, Optional<Estimate> rinse, Estimate drained) {
        List<String> sums = new ArrayList<>();
        dumps.ifPresent(d -> sums.add("dumps " + EstimateFormat.range(d, "litres")));
        rinse.ifPresent(r -> sums.add("rinsing " + EstimateFormat.range(r, "litres")));
        Estimate through = dumps.orElse(Estimate.NOTHING).plus(rinse.orElse(Estimate.NOTHING));
        Estimate all = through.plus(drained);
        List<String> drawn = new ArrayList<>(sums);
        drawn.add("refill " + EstimateFormat.range(drained, "litres"));
        drawn.add("together " + EstimateFormat.range(all, "litres"));
        List<String> gone = new ArrayList<>(sums);
        gone.add("let out " + EstimateFormat.range(drained, "litres"));
        gone.add("together " + EstimateFormat.range(all, "litres"));
        return FigureSet.of(new Figure("water-litres", "Water drawn from the main", all, "litres", drawn, "sum of the parts"),
                new Figure("waste-litres", "Water to the foul drain", all, "litres", gone, "sum of the parts"));
    }
}
