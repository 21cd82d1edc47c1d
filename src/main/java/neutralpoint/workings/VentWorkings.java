package neutralpoint.workings;

import static neutralpoint.workings.WorkedOut.Grade.FAIL;
import static neutralpoint.workings.WorkedOut.Grade.PASS;
import static neutralpoint.workings.WorkedOut.Grade.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import neutralpoint.hydronics.Cistern;
import neutralpoint.hydronics.Head;
import neutralpoint.hydronics.OpenVent;
import neutralpoint.hydronics.Vessel;
import neutralpoint.hydronics.Water;
import neutralpoint.job.Job;

/** The open side: what the pump does at the vent, the height over the system, and the room in the tank. */
final class VentWorkings {
    /** Water rocks as a pump starts; less than this is no margin. Common practice, no source. */
    private static final double ROCKING_METRES = 0.15;
    /** Kelvin to boiling below which a hot spot in the exchanger can boil. Common practice, no source. */
    private static final double BOILING_MARGIN_KELVIN = 15;
    /** A tape measure in a loft is read no closer. */
    private static final double TAPE_METRES = 0.005;
    private static final double COLD_CELSIUS = 10;
    /** Water is no hotter than this where its weight is reckoned. */
    private static final double HOTTEST_COLUMN_CELSIUS = 99;

    private VentWorkings() {}

    static List<WorkedOut> of(Job job) {
        List<WorkedOut> out = new ArrayList<>();
        vent(job).ifPresent(out::add);
        ventHeight(job).ifPresent(out::add);
        staticHead(job).ifPresent(out::add);
        boiling(job).ifPresent(out::add);
        tankRoom(job).ifPresent(out::add);
        return out;
    }

    private static double rise(Job job) {
        return OpenVent.riseAtVentMetres(Figures.get(job, "pump-head-m"), Figures.get(job, "tee-resistance-percent") / 100);
    }

    private static Optional<WorkedOut> vent(Job job) {
        if (!Figures.has(job, "pump-head-m", "tee-resistance-percent")) {
            return Optional.empty();
        }
        double rise = rise(job);
        String sum = Figures.sum("pump head %s m x share between the tees %s = %s m at the vent", Figures.get(job, "pump-head-m"),
                Figures.get(job, "tee-resistance-percent") / 100, rise);
        if (rise < 0) {
            return Figures.has(job, "vent-tee-below-water-m") ? Optional.of(drawnDown(job, rise, sum)) : Optional.empty();
        }
        return Figures.has(job, "vent-rise-mm") ? Optional.of(lifted(job, rise, sum)) : Optional.empty();
    }

    private static WorkedOut lifted(Job job, double rise, String sum) {
        double height = Figures.get(job, "vent-rise-mm") / 1000;
        double margin = OpenVent.marginBeforePumpingOverMetres(height, rise);
        String left = Figures.sum("vent above water %s m - %s m = %s m left", height, rise, margin);
        if (margin <= 0 && rise > 0) {
            return WorkedOut.finding("vent-worked-out", "pumps-over", FAIL, Figures.sum(
                    "The pump lifts water %s m up a vent of %s m: it will pump over at this setting.", rise, height), sum, left);
        }
        return margin < ROCKING_METRES
                ? WorkedOut.finding("vent-worked-out", "near-pumping-over", WARN,
                        Figures.sum("Vent margin %s m: it may pump over as the pump starts.", margin), sum, left)
                : WorkedOut.finding("vent-worked-out", "stays-put", PASS,
                        Figures.sum("Vent margin %s m: it will not pump over at this setting.", margin), sum, left);
    }

    private static WorkedOut drawnDown(Job job, double rise, String sum) {
        double water = Figures.get(job, "vent-tee-below-water-m");
        double margin = OpenVent.marginBeforeDrawingAirMetres(water, rise);
        String left = Figures.sum("water above the vent's tee %s m - %s m = %s m left", water, -rise, margin);
        return margin <= 0
                ? WorkedOut.finding("vent-worked-out", "draws-air", FAIL, Figures.sum(
                        "The pump draws the vent down %s m and its tee lies only %s m under: air is drawn in.", -rise, water), sum, left)
                : WorkedOut.finding("vent-worked-out", "stays-put", margin < ROCKING_METRES ? WARN : PASS,
                        Figures.sum("%s m of water is left in the vent with the pump running: no air is drawn in.", margin), sum, left);
    }

    private static Optional<WorkedOut> ventHeight(Job job) {
        if (!Figures.has(job, "tank-above-boiler-m", "vent-rise-mm")) {
            return Optional.empty();
        }
        double head = Figures.get(job, "tank-above-boiler-m");
        double lift = Figures.has(job, "pump-head-m", "tee-resistance-percent") ? Math.max(0, rise(job)) : 0;
        double needed = OpenVent.requiredVentHeightMetres(head, lift);
        double height = Figures.get(job, "vent-rise-mm") / 1000;
        return Optional.of(WorkedOut.figure(height < needed - TAPE_METRES ? FAIL : PASS, Figures.sum(
                "The vent stands %s m above the water; the rule asks for %s m.", height, needed),
                Figures.sum("0.04 x %s m above the boiler + 0.15 m + %s m lift of the pump = %s m", head, lift, needed)));
    }

    private static Optional<WorkedOut> staticHead(Job job) {
        if (!Figures.has(job, "tank-above-highest-part-m")) {
            return Optional.empty();
        }
        double head = Figures.get(job, "tank-above-highest-part-m");
        double least = OpenVent.SMALLEST_CISTERN_HEIGHT_FULLY_PUMPED_METRES;
        return Optional.of(WorkedOut.figure(head < least / 2 ? FAIL : head < least ? WARN : PASS, Figures.sum(
                "The tank's water stands %s m %s the highest pumped part; %s m above is wanted on a fully pumped system.", Math.abs(head),
                head < 0 ? "below" : "above", least),
                Figures.sum("static pressure there: %s m = %s bar", head, Head.bar(head, COLD_CELSIUS))));
    }

    private static Optional<WorkedOut> boiling(Job job) {
        if (!Figures.has(job, "tank-above-boiler-m", "boiler-flow-celsius")) {
            return Optional.empty();
        }
        double flow = Figures.get(job, "boiler-flow-celsius");
        double head = Figures.get(job, "tank-above-boiler-m");
        double absolute = Vessel.ATMOSPHERE_BAR + Head.bar(head, Math.min(flow, HOTTEST_COLUMN_CELSIUS));
        double boils = Water.boilingPointCelsius(absolute);
        double margin = OpenVent.boilingMarginKelvin(boils, flow);
        String sum = Figures.sum("1.01 bar of air + %s m of water = %s bar absolute", head, absolute);
        if (margin <= 0) {
            return Optional.of(WorkedOut.figure(FAIL, Figures.sum("Water boils at %s degrees in this boiler and the flow reads %s.", boils, flow), sum));
        }
        return Optional.of(WorkedOut.figure(margin < BOILING_MARGIN_KELVIN ? WARN : PASS, Figures.sum(
                "Water boils at %s degrees in this boiler; the flow stands %s degrees under that.", boils, margin), sum));
    }

    /** Overflows for certain only if the least content at its mean temperature does; fits only if the most at flow temperature does. */
    private static Optional<WorkedOut> tankRoom(Job job) {
        Optional<SystemLitres> content = Figures.has(job, "feed-tank-room-litres") ? SystemLitres.of(job) : Optional.empty();
        if (content.isEmpty()) {
            return Optional.empty();
        }
        HotSystem hot = HotSystem.of(job);
        double leastGain = Water.expansionFraction(COLD_CELSIUS, hot.meanCelsius());
        double mostGain = Water.expansionFraction(COLD_CELSIUS, hot.flowCelsius());
        double room = Figures.get(job, "feed-tank-room-litres");
        double least = Cistern.expansionLitres(content.get().litres().low(), leastGain);
        double most = Cistern.expansionLitres(content.get().litres().high(), mostGain);
        String sum = Figures.sum("%s litres x %s %% gained from %s to %s degrees = %s; %s litres x %s %% to %s degrees = %s",
                content.get().litres().low(), leastGain * 100, COLD_CELSIUS, hot.meanCelsius(), least,
                content.get().litres().high(), mostGain * 100, hot.flowCelsius(), most);
        if (room < least) {
            return Optional.of(WorkedOut.finding("tank-room-worked-out", "too-little", FAIL, Figures.sum(
                    "The heating gains %s litres or more and the tank has room for %s: it overflows when hot.", least, room), sum));
        }
        return Optional.of(room >= most
                ? WorkedOut.finding("tank-room-worked-out", "enough", PASS, Figures.sum(
                        "The tank has room for %s litres; the heating gains %s at most.", room, most), sum)
                : WorkedOut.figure(WARN, Figures.sum("The tank has room for %s litres and the heating gains %s to %s: too near to say.",
                        room, least, most), sum));
    }
}
