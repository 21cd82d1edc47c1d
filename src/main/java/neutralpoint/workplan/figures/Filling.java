package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.expansion.Cistern;
import neutralpoint.hydronics.expansion.SealedSystem;
import neutralpoint.hydronics.water.Water;
import neutralpoint.workings.Readings;

/** Where to set the cold level of the loft tank, or the cold pressure of a sealed system. */
final class Filling {
    private static final double COLD_CELSIUS = 10;
    private static final double USUAL_HOT_CELSIUS = 70;
    private static final String HEIGHT = "highest-radiator-above-gauge-m";

    private Filling() {}

    static FigureSet pressure(House house, JobScope scope) {
        if (!scope.has("sealed") || !scope.setsTheLevel()) {
            return FigureSet.NOTHING;
        }
        if (!Readings.has(house.job(), HEIGHT)) {
            return FigureSet.missing("Measure how far the top of the highest radiator stands above the gauge: the cold pressure follows "
                    + "from it.");
        }
        double height = Math.max(0, Readings.get(house.job(), HEIGHT));
        double bar = SealedSystem.minimumFillBar(height);
        return FigureSet.of(new Figure("fill-bar", "Cold pressure to set, at the least", Estimate.exactly(bar), "bar",
                List.of(Readings.sum("0.1 x %s m + 0.3 bar to vent by = %s bar", height, bar)),
                "common practice, no source; the maker's band decides"));
    }

    static FigureSet room(House house, JobScope scope, Estimate systemLitres) {
        if (!scope.has("loft-tank") || !scope.setsTheLevel()) {
            return FigureSet.NOTHING;
        }
        double hot = Math.max(COLD_CELSIUS, Readings.of(house.job(), "boiler-flow-celsius").orElse(USUAL_HOT_CELSIUS));
        double fraction = Water.expansionFraction(COLD_CELSIUS, hot);
        Estimate gained = new Estimate(Cistern.expansionLitres(systemLitres.low(), fraction),
                Cistern.expansionLitres(systemLitres.likely(), fraction),
                Math.max(Cistern.expansionLitres(systemLitres.high(), fraction), Cistern.usualAllowanceLitres(systemLitres.high())));
        Figure room = new Figure("tank-room-litres", "Room to leave above the cold level of the loft tank", gained, "litres", List.of(
                Readings.sum("%s gain %s percent from %s to %s degrees = %s litres", FigureFormat.range(systemLitres, "litres"), fraction * 100,
                        COLD_CELSIUS, hot, gained.likely()),
                Readings.sum("at the most 4 percent, the room usually left: %s litres", gained.high()),
                "a litre is 1000000 / (length x width in mm) mm of level"), "steam tables (IAPWS-IF97); 4 percent: plumbing-textbook");
        if (!Readings.has(house.job(), "feed-tank-room-litres")) {
            return FigureSet.of(room).and(FigureSet.missing("Measure length, width and depth above the cold water line in the loft tank: its "
                    + "level is set by the room the heated water needs."));
        }
        double there = Readings.get(house.job(), "feed-tank-room-litres");
        String verdict = there >= gained.high() ? Readings.sum("it has room for %s litres: leave the float as it is", there)
                : there >= gained.likely() ? Readings.sum("it has room for %s litres, which may be short: set the float lower", there)
                : Readings.sum("it has room for %s litres only: set the float lower", there);
        List<String> sums = new ArrayList<>(room.sums());
        sums.add(verdict);
        return FigureSet.of(new Figure(room.id(), room.title(), room.value(), room.unit(), sums, room.source()));
    }
}
