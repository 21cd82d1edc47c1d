package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.expansion.Cistern;
import neutralpoint.workings.Expansion;
import neutralpoint.workings.FillPressure;
import neutralpoint.workings.Readings;

/** Where to set the cold level of the loft tank, or the cold pressure of a sealed system. */
final class Filling {
    private Filling() {}

    static FigureSet pressure(House house, JobScope scope) {
        if (!scope.has(TraitId.SEALED) || !scope.setsTheLevel()) {
            return FigureSet.NOTHING;
        }
        return FillPressure.of(house.job()).map(asked -> FigureSet.of(new Figure("fill-bar", "Cold pressure to set, at the least",
                        Estimate.exactly(asked.leastBar()), "bar", List.of(asked.sum()), "common practice, no source; the maker's band decides")))
                .orElseGet(() -> FigureSet.missing("Measure how far the top of the highest radiator stands above the gauge: the cold pressure "
                        + "follows from it."));
    }

    static FigureSet room(House house, JobScope scope) {
        Optional<Expansion> expansion = scope.has(TraitId.LOFT_TANK) && scope.setsTheLevel() ? Expansion.of(house.job()) : Optional.empty();
        return expansion.map(e -> room(house, e)).orElse(FigureSet.NOTHING);
    }

    private static FigureSet room(House house, Expansion expansion) {
        Estimate gained = expansion.litres();
        double allowance = Cistern.usualAllowanceLitres(expansion.content().high());
        List<String> sums = new ArrayList<>(List.of(expansion.sum(),
                Decimals.sum("4 percent, the room usually left: %s litres", Decimals.coarse(allowance)),
                "a litre is 1000000 / (length x width in mm) mm of level"));
        OptionalDouble there = Readings.of(house.job(), FindingId.FEED_TANK_ROOM_LITRES);
        there.ifPresent(litres -> sums.add(Decimals.sum(switch (expansion.room(litres)) {
            case ENOUGH -> "it has room for %s litres and the water gains %s at the most: leave the float as it is";
            case TOO_NEAR -> "it has room for %s litres, which may be short: set the float lower";
            case TOO_LITTLE -> "it has room for %s litres only: set the float lower";
        }, litres, Decimals.coarse(gained.high()))));
        FigureSet room = FigureSet.of(new Figure("tank-room-litres", "Room to leave above the cold level of the loft tank",
                new Estimate(gained.low(), gained.likely(), Math.max(gained.high(), allowance)), "litres", sums,
                "steam tables (IAPWS-IF97); 4 percent: plumbing-textbook"));
        return there.isPresent() ? room : room.and(FigureSet.missing("Measure length, width and depth above the cold water line in the loft tank: "
                + "its level is set by the room the heated water needs."));
    }
}
