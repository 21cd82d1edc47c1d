package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.emitter.HeatUp;
import neutralpoint.workings.EstimateFormat;
import neutralpoint.workings.Readings;
import neutralpoint.workings.UsualTemperatures;

/** Heat, energy and time to bring the system from cold to the temperature at which it is cleaned or tried. */
final class Heating {
    static final double HOT_CELSIUS = 60;
    /**
     * What steel and copper take over what the water takes: a panel weighs some 5 kg for each litre in it and pipe half
     * as much, at a ninth of the heat capacity. From memory.
     */
    private static final Estimate METAL_SHARE = new Estimate(0.3, 0.45, 0.6);
    private static final String SOURCE = "mass x heat capacity x rise, water after IAPWS-IF97; the metal's share from memory";

    private Heating() {}

    static FigureSet of(House house, JobScope scope, Estimate systemLitres) {
        if (!scope.opensTheWater()) {
            return FigureSet.NOTHING;
        }
        Estimate heat = heat(systemLitres);
        Figure once = new Figure("heat-up-kilowatt-hours", "Heat to bring the system to 60 degrees", heat, "kWh", List.of(
                Decimals.sum("%s from %s to %s degrees, water alone: %s kWh", EstimateFormat.range(systemLitres, "litres"), UsualTemperatures.FRESH_CELSIUS,
                        HOT_CELSIUS, HeatUp.kilowattHours(systemLitres.likely(), 0, UsualTemperatures.FRESH_CELSIUS, HOT_CELSIUS)),
                Decimals.sum("steel and copper take %s of that again", EstimateFormat.range(METAL_SHARE, "times")),
                "together " + EstimateFormat.range(heat, "kWh")), SOURCE);
        int times = scope.does(WaterWork.PUMPED_ROUND) ? 2 : 1;
        Estimate energy = heat.times(times);
        Figure all = new Figure("energy-kilowatt-hours", "Energy for the job", energy, "kWh", List.of(times == 2
                ? "heated once to clean and once to prove the system" : "heated once to prove the system",
                Decimals.sum("%s x %s = %s", (double) times, EstimateFormat.range(heat, "kWh"), EstimateFormat.range(energy, "kWh")),
                "what the rooms are given on the way warms the house and is not counted"), SOURCE);
        return FigureSet.of(once, all).and(times(house, scope, heat));
    }

    /** The ends of the content with the ends of the metal. */
    private static Estimate heat(Estimate litres) {
        return new Estimate(HeatUp.kilowattHours(litres.low(), METAL_SHARE.low(), UsualTemperatures.FRESH_CELSIUS, HOT_CELSIUS),
                HeatUp.kilowattHours(litres.likely(), METAL_SHARE.likely(), UsualTemperatures.FRESH_CELSIUS, HOT_CELSIUS),
                HeatUp.kilowattHours(litres.high(), METAL_SHARE.high(), UsualTemperatures.FRESH_CELSIUS, HOT_CELSIUS));
    }

    private static FigureSet times(House house, JobScope scope, Estimate heat) {
        OptionalDouble boiler = Readings.of(house.job(), FindingId.BOILER_OUTPUT_KW);
        OptionalDouble heater = Readings.of(house.job(), FindingId.FLUSHING_HEATER_KILOWATTS);
        boolean pumped = scope.does(WaterWork.PUMPED_ROUND);
        FigureSet part = boiler.isPresent() ? time(house, heat, "boiler", boiler.getAsDouble(), pumped)
                : FigureSet.missing("Read the boiler's heating output off its data plate: the time to heat up follows from it.");
        if (pumped && heater.isEmpty()) {
            part = part.and(FigureSet.missing("Read the power of the flushing machine's heater off its label, 0 if it has none."));
        }
        if (pumped && heater.orElse(0) > 0) {
            part = part.and(time(house, heat, "heater", heater.getAsDouble(), pumped));
            if (boiler.isPresent()) {
                part = part.and(time(house, heat, "both", boiler.getAsDouble() + heater.getAsDouble(), pumped));
            }
        }
        return part;
    }

    private static FigureSet time(House house, Estimate heat, String by, double kilowatts, boolean pumped) {
        Estimate given = house.radiatorKilowatts();
        OptionalDouble low = minutes(heat.low(), kilowatts, given.low());
        OptionalDouble likely = minutes(heat.likely(), kilowatts, given.likely());
        OptionalDouble high = minutes(heat.high(), kilowatts, given.high());
        String what = switch (by) {
            case "boiler" -> "the boiler";
            case "heater" -> "the flushing machine's heater";
            default -> "boiler and heater together";
        };
        if (low.isEmpty() || likely.isEmpty() || high.isEmpty()) {
            return FigureSet.missing(Decimals.sum("With every radiator open %s at %s kW cannot be relied on to reach %s degrees: heat with some "
                    + "radiators shut, and measure type and size of each to tell how many.", what, kilowatts, HOT_CELSIUS));
        }
        Estimate minutes = new Estimate(low.getAsDouble(), likely.getAsDouble(), high.getAsDouble());
        List<String> sums = new ArrayList<>();
        sums.add(Decimals.sum("%s with %s kW and nothing given away: %s minutes", EstimateFormat.range(heat, "kWh"), kilowatts,
                heat.likely() / kilowatts * 60));
        sums.add(Decimals.sum("radiators of %s at 50 degrees over a room of %s take some of it on the way", EstimateFormat.range(given, "kW"),
                UsualTemperatures.ROOM_CELSIUS));
        sums.add("together " + EstimateFormat.range(minutes, "minutes"));
        if (pumped && !by.equals("heater")) {
            sums.add("only while the boiler may fire: never with the vent or the vessel shut off");
        }
        return FigureSet.of(new Figure("heat-up-minutes-by-" + by, "Time to 60 degrees by " + what, minutes, "minutes", sums,
                SOURCE + "; what radiators give by the law of EN 442"));
    }

    private static OptionalDouble minutes(double kilowattHours, double kilowatts, double ratedKilowatts) {
        return HeatUp.minutes(kilowattHours, kilowatts, ratedKilowatts, UsualTemperatures.FRESH_CELSIUS, HOT_CELSIUS, UsualTemperatures.ROOM_CELSIUS);
    }
}
