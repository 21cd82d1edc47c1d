package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.hydronics.Cistern;
import neutralpoint.hydronics.Range;
import neutralpoint.hydronics.SealedSystem;
import neutralpoint.hydronics.Water;
import neutralpoint.workings.Figures;

/** Where to set the cold level of the loft tank, or the cold pressure of a sealed system. */
final class Filling {
    private static final double COLD_CELSIUS = 10;
    private static final double USUAL_HOT_CELSIUS = 70;
    private static final String HEIGHT = "highest-radiator-above-gauge-m";

    private Filling() {}

    static Part pressure(House house, Scope scope) {
        if (!scope.has("sealed") || !scope.setsTheLevel()) {
            return Part.NOTHING;
        }
        if (!Figures.has(house.job(), HEIGHT)) {
            return Part.missing("Measure how far the top of the highest radiator stands above the gauge: the cold pressure follows "
                    + "from it.");
        }
        double height = Math.max(0, Figures.get(house.job(), HEIGHT));
        double bar = SealedSystem.minimumFillBar(height);
        return Part.of(new Figure("fill-bar", "Cold pressure to set, at the least", Range.exactly(bar), "bar",
                List.of(Figures.sum("0.1 x %s m + 0.3 bar to vent by = %s bar", height, bar)),
                "common practice, no source; the maker's band decides"));
    }

    static Part room(House house, Scope scope, Range systemLitres) {
        if (!scope.has("loft-tank") || !scope.setsTheLevel()) {
            return Part.NOTHING;
        }
        double hot = Math.max(COLD_CELSIUS, Figures.of(house.job(), "boiler-flow-celsius").orElse(USUAL_HOT_CELSIUS));
        double fraction = Water.expansionFraction(COLD_CELSIUS, hot);
        Range gained = new Range(Cistern.expansionLitres(systemLitres.low(), fraction),
                Cistern.expansionLitres(systemLitres.likely(), fraction),
                Math.max(Cistern.expansionLitres(systemLitres.high(), fraction), Cistern.usualAllowanceLitres(systemLitres.high())));
        Figure room = new Figure("tank-room-litres", "Room to leave above the cold level of the loft tank", gained, "litres", List.of(
                Figures.sum("%s gain %s percent from %s to %s degrees = %s litres", Said.range(systemLitres, "litres"), fraction * 100,
                        COLD_CELSIUS, hot, gained.likely()),
                Figures.sum("at the most 4 percent, the room usually left: %s litres", gained.high()),
                "a litre is 1000000 / (length x width in mm) mm of level"), "steam tables (IAPWS-IF97); 4 percent: plumbing-textbook");
        if (!Figures.has(house.job(), "feed-tank-room-litres")) {
            return Part.of(room).and(Part.missing("Measure length, width and depth above the cold water line in the loft tank: its "
                    + "level is set by the room the heated water needs."));
        }
        double there = Figures.get(house.job(), "feed-tank-room-litres");
        String verdict = there >= gained.high() ? Figures.sum("it has room for %s litres: leave the float as it is", there)
                : there >= gained.likely() ? Figures.sum("it has room for %s litres, which may be short: set the float lower", there)
                : Figures.sum("it has room for %s litres only: set the float lower", there);
        List<String> sums = new ArrayList<>(room.sums());
        sums.add(verdict);
        return Part.of(new Figure(room.id(), room.title(), room.value(), room.unit(), sums, room.source()));
    }
}
