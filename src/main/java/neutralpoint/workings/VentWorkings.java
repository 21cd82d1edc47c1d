package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.expansion.OpenVent;
import neutralpoint.hydronics.expansion.Vessel;
import neutralpoint.hydronics.water.Head;
import neutralpoint.hydronics.water.Water;
import neutralpoint.job.Job;

/** The open side: what the pump does at the vent, the height over the system, and the room in the tank. */
final class VentWorkings {
    /** Water rocks as a pump starts; less than this is no margin. Common practice, no source. */
    private static final double ROCKING_METRES = 0.15;
    /** Kelvin to boiling below which a hot spot in the exchanger can boil. Common practice, no source. */
    private static final double BOILING_MARGIN_KELVIN = 15;
    /** A tape measure in a loft is read no closer. */
    private static final double TAPE_METRES = 0.005;
    /** Water is no hotter than this where its weight is reckoned. */
    private static final double HOTTEST_COLUMN_CELSIUS = 99;

    private VentWorkings() {}

    static List<Calculation> of(Job job) {
        return checks(job).stream().map(Check::made).flatMap(Optional::stream).toList();
    }

    static List<Check> checks(Job job) {
        return List.of(
                Check.of(job, "what the pump does at the vent", needsAtVent(job), () -> Optional.of(vent(job))),
                Check.of(job, "height of the vent", List.of(FindingId.TANK_ABOVE_BOILER_M, FindingId.VENT_RISE_MM),
                        () -> Optional.of(ventHeight(job))),
                Check.of(job, "height of the tank", List.of(FindingId.TANK_ABOVE_HIGHEST_PART_M), () -> Optional.of(staticHead(job))),
                Check.of(job, "margin to boiling", List.of(FindingId.TANK_ABOVE_BOILER_M, FindingId.BOILER_FLOW_CELSIUS),
                        () -> Optional.of(boiling(job))),
                Check.of(job, "room in the tank", Check.withContent(job, FindingId.FEED_TANK_ROOM_LITRES),
                        () -> Expansion.of(job).map(expansion -> tankRoom(job, expansion))));
    }

    /** A vent that the pump draws down is judged by the water over its tee, any other by its height. */
    private static List<String> needsAtVent(Job job) {
        return List.of(FindingId.PUMP_HEAD_M, FindingId.TEE_RESISTANCE_PERCENT,
                isRiseKnown(job) && rise(job) < 0 ? FindingId.VENT_TEE_BELOW_WATER_M : FindingId.VENT_RISE_MM);
    }

    private static boolean isRiseKnown(Job job) {
        return Readings.has(job, FindingId.PUMP_HEAD_M, FindingId.TEE_RESISTANCE_PERCENT);
    }

    private static double rise(Job job) {
        return OpenVent.riseAtVentMetres(Readings.get(job, FindingId.PUMP_HEAD_M), Readings.get(job, FindingId.TEE_RESISTANCE_PERCENT) / 100);
    }

    private static Calculation vent(Job job) {
        double rise = rise(job);
        String sum = Decimals.sum("pump head %s m x share between the tees %s = %s m at the vent", Readings.get(job, FindingId.PUMP_HEAD_M),
                Readings.get(job, FindingId.TEE_RESISTANCE_PERCENT) / 100, rise);
        return rise < 0 ? drawnDown(job, rise, sum) : lifted(job, rise, sum);
    }

    private static Calculation lifted(Job job, double rise, String sum) {
        double height = Readings.get(job, FindingId.VENT_RISE_MM) / 1000;
        double margin = OpenVent.marginBeforePumpingOverMetres(height, rise);
        String left = Decimals.sum("vent above water %s m - %s m = %s m left", height, rise, margin);
        if (margin <= 0 && rise > 0) {
            return Calculation.finding(FindingId.VENT_WORKED_OUT, "pumps-over", FAIL, Decimals.sum(
                    "The pump lifts water %s m up a vent of %s m: it will pump over at this setting.", rise, height), sum, left);
        }
        return margin < ROCKING_METRES
                ? Calculation.finding(FindingId.VENT_WORKED_OUT, "near-pumping-over", WARN,
                        Decimals.sum("Vent margin %s m: it may pump over as the pump starts.", margin), sum, left)
                : Calculation.finding(FindingId.VENT_WORKED_OUT, "stays-put", PASS,
                        Decimals.sum("Vent margin %s m: it will not pump over at this setting.", margin), sum, left);
    }

    private static Calculation drawnDown(Job job, double rise, String sum) {
        double water = Readings.get(job, FindingId.VENT_TEE_BELOW_WATER_M);
        double margin = OpenVent.marginBeforeDrawingAirMetres(water, rise);
        String left = Decimals.sum("water above the vent's tee %s m - %s m = %s m left", water, -rise, margin);
        return margin <= 0
                ? Calculation.finding(FindingId.VENT_WORKED_OUT, "draws-air", FAIL, Decimals.sum(
                        "The pump draws the vent down %s m and its tee lies only %s m under: air is drawn in.", -rise, water), sum, left)
                : Calculation.finding(FindingId.VENT_WORKED_OUT, "stays-put", margin < ROCKING_METRES ? WARN : PASS,
                        Decimals.sum("%s m of water is left in the vent with the pump running: no air is drawn in.", margin), sum, left);
    }

    private static Calculation ventHeight(Job job) {
        double head = Readings.get(job, FindingId.TANK_ABOVE_BOILER_M);
        double lift = isRiseKnown(job) ? Math.max(0, rise(job)) : 0;
        double needed = OpenVent.requiredVentHeightMetres(head, lift);
        double height = Readings.get(job, FindingId.VENT_RISE_MM) / 1000;
        return Calculation.figure(height < needed - TAPE_METRES ? FAIL : PASS, Decimals.sum(
                "The vent stands %s m above the water; the rule asks for %s m.", height, needed),
                Decimals.sum("0.04 x %s m above the boiler + 0.15 m + %s m lift of the pump = %s m", head, lift, needed));
    }

    private static Calculation staticHead(Job job) {
        double head = Readings.get(job, FindingId.TANK_ABOVE_HIGHEST_PART_M);
        double least = OpenVent.SMALLEST_CISTERN_HEIGHT_FULLY_PUMPED_METRES;
        return Calculation.figure(head < least / 2 ? FAIL : head < least ? WARN : PASS, Decimals.sum(
                "The tank's water stands %s m %s the highest pumped part; %s m above is wanted on a fully pumped system.", Math.abs(head),
                head < 0 ? "below" : "above", least),
                Decimals.sum("static pressure there: %s m = %s bar", head, Head.bar(head, UsualTemperatures.FRESH_CELSIUS)));
    }

    private static Calculation boiling(Job job) {
        double flow = Readings.get(job, FindingId.BOILER_FLOW_CELSIUS);
        double head = Readings.get(job, FindingId.TANK_ABOVE_BOILER_M);
        double absolute = Vessel.ATMOSPHERE_BAR + Head.bar(head, Math.min(flow, HOTTEST_COLUMN_CELSIUS));
        double boils = Water.boilingPointCelsius(absolute);
        double margin = OpenVent.boilingMarginKelvin(boils, flow);
        String sum = Decimals.sum("1.01 bar of air + %s m of water = %s bar absolute", head, absolute);
        if (margin <= 0) {
            return Calculation.figure(FAIL, Decimals.sum("Water boils at %s degrees in this boiler and the flow reads %s.", boils, flow), sum);
        }
        return Calculation.figure(margin < BOILING_MARGIN_KELVIN ? WARN : PASS, Decimals.sum(
                "Water boils at %s degrees in this boiler; the flow stands %s degrees under that.", boils, margin), sum);
    }

    private static Calculation tankRoom(Job job, Expansion expansion) {
        double room = Readings.get(job, FindingId.FEED_TANK_ROOM_LITRES);
        String least = Decimals.coarse(expansion.litres().low());
        String most = Decimals.coarse(expansion.litres().high());
        String sum = expansion.sum();
        return switch (expansion.room(room)) {
            case TOO_LITTLE -> Calculation.finding(FindingId.TANK_ROOM_WORKED_OUT, "too-little", FAIL, Decimals.sum(
                    "The heating gains %s litres or more and the tank has room for %s: it overflows when hot.", least, room), sum);
            case ENOUGH -> Calculation.finding(FindingId.TANK_ROOM_WORKED_OUT, "enough", PASS, Decimals.sum(
                    "The tank has room for %s litres; the heating gains %s at most.", room, most), sum);
            case TOO_NEAR -> Calculation.figure(WARN, Decimals.sum("The tank has room for %s litres and the heating gains %s to %s: too near to say.",
                    room, least, most), sum);
        };
    }
}
