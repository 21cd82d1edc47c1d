package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import neutralpoint.hydronics.HeatUp;
import neutralpoint.hydronics.Range;
import neutralpoint.workings.Figures;

/** Heat, energy and time to bring the system from cold to the temperature at which it is cleaned or tried. */
final class Heating {
    static final double COLD_CELSIUS = 10;
    static final double HOT_CELSIUS = 60;
    private static final double ROOM_CELSIUS = 20;
    /**
     * What steel and copper take over what the water takes: a panel weighs some 5 kg for each litre in it and pipe half
     * as much, at a ninth of the heat capacity. From memory.
     */
    private static final Range METAL_SHARE = new Range(0.3, 0.45, 0.6);
    private static final String SOURCE = "mass x heat capacity x rise, water after IAPWS-IF97; the metal's share from memory";

    private Heating() {}

    static Part of(House house, Scope scope, Range systemLitres) {
        if (!scope.opensTheWater()) {
            return Part.NOTHING;
        }
        Range heat = heat(systemLitres);
        Figure once = new Figure("heat-up-kilowatt-hours", "Heat to bring the system to 60 degrees", heat, "kWh", List.of(
                Figures.sum("%s from %s to %s degrees, water alone: %s kWh", Said.range(systemLitres, "litres"), COLD_CELSIUS,
                        HOT_CELSIUS, HeatUp.kilowattHours(systemLitres.likely(), 0, COLD_CELSIUS, HOT_CELSIUS)),
                Figures.sum("steel and copper take %s of that again", Said.range(METAL_SHARE, "times")),
                "together " + Said.range(heat, "kWh")), SOURCE);
        int times = scope.way().does(Way.Does.PUMPED_ROUND) ? 2 : 1;
        Range energy = heat.times(times);
        Figure all = new Figure("energy-kilowatt-hours", "Energy for the job", energy, "kWh", List.of(times == 2
                ? "heated once to clean and once to prove the system" : "heated once to prove the system",
                Figures.sum("%s x %s = %s", (double) times, Said.range(heat, "kWh"), Said.range(energy, "kWh")),
                "what the rooms are given on the way warms the house and is not counted"), SOURCE);
        return Part.of(once, all).and(times(house, scope, heat));
    }

    /** The ends of the content with the ends of the metal. */
    private static Range heat(Range litres) {
        return new Range(HeatUp.kilowattHours(litres.low(), METAL_SHARE.low(), COLD_CELSIUS, HOT_CELSIUS),
                HeatUp.kilowattHours(litres.likely(), METAL_SHARE.likely(), COLD_CELSIUS, HOT_CELSIUS),
                HeatUp.kilowattHours(litres.high(), METAL_SHARE.high(), COLD_CELSIUS, HOT_CELSIUS));
    }

    private static Part times(House house, Scope scope, Range heat) {
        OptionalDouble boiler = Figures.of(house.job(), "boiler-output-kw");
        OptionalDouble heater = Figures.of(house.job(), "flushing-heater-kilowatts");
        boolean pumped = scope.way().does(Way.Does.PUMPED_ROUND);
        Part part = boiler.isPresent() ? time(house, heat, "boiler", boiler.getAsDouble(), pumped)
                : Part.missing("Read the boiler's heating output off its data plate: the time to heat up follows from it.");
        if (pumped && heater.isEmpty()) {
            part = part.and(Part.missing("Read the power of the flushing machine's heater off its label, 0 if it has none."));
        }
        if (pumped && heater.orElse(0) > 0) {
            part = part.and(time(house, heat, "heater", heater.getAsDouble(), pumped));
            if (boiler.isPresent()) {
                part = part.and(time(house, heat, "both", boiler.getAsDouble() + heater.getAsDouble(), pumped));
            }
        }
        return part;
    }

    private static Part time(House house, Range heat, String by, double kilowatts, boolean pumped) {
        Range given = house.radiatorKilowatts();
        OptionalDouble low = minutes(heat.low(), kilowatts, given.low());
        OptionalDouble likely = minutes(heat.likely(), kilowatts, given.likely());
        OptionalDouble high = minutes(heat.high(), kilowatts, given.high());
        String what = switch (by) {
            case "boiler" -> "the boiler";
            case "heater" -> "the flushing machine's heater";
            default -> "boiler and heater together";
        };
        if (low.isEmpty() || likely.isEmpty() || high.isEmpty()) {
            return Part.missing(Figures.sum("With every radiator open %s at %s kW cannot be relied on to reach %s degrees: heat with some "
                    + "radiators shut, and measure type and size of each to tell how many.", what, kilowatts, HOT_CELSIUS));
        }
        Range minutes = new Range(low.getAsDouble(), likely.getAsDouble(), high.getAsDouble());
        List<String> sums = new ArrayList<>();
        sums.add(Figures.sum("%s with %s kW and nothing given away: %s minutes", Said.range(heat, "kWh"), kilowatts,
                heat.likely() / kilowatts * 60));
        sums.add(Figures.sum("radiators of %s at 50 degrees over a room of %s take some of it on the way", Said.range(given, "kW"),
                ROOM_CELSIUS));
        sums.add("together " + Said.range(minutes, "minutes"));
        if (pumped && !by.equals("heater")) {
            sums.add("only while the boiler may fire: never with the vent or the vessel shut off");
        }
        return Part.of(new Figure("heat-up-minutes-by-" + by, "Time to 60 degrees by " + what, minutes, "minutes", sums,
                SOURCE + "; what radiators give by the law of EN 442"));
    }

    private static OptionalDouble minutes(double kilowattHours, double kilowatts, double ratedKilowatts) {
        return HeatUp.minutes(kilowattHours, kilowatts, ratedKilowatts, COLD_CELSIUS, HOT_CELSIUS, ROOM_CELSIUS);
    }
}
