package neutralpoint.workings;

import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.NOTE;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.expansion.SealedSystem;
import neutralpoint.hydronics.expansion.ThermalExpansion;
import neutralpoint.hydronics.expansion.Vessel;
import neutralpoint.hydronics.water.Water;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.workings.HotGauge.GaugeVerdict;

/** The sealed side: what the gauge should read hot, what the vessel must be like to explain what it does read, and the fill. */
public final class VesselWorkings {
    /** Filled higher than this cold, little is left for the rise. Common practice, no source. */
    private static final double MOST_FILL_BAR = 2;
    /** A gauge is read no closer. */
    private static final double GAUGE_BAR = 0.05;
    private static final double MOST_CELSIUS = 120;
    private static final String VESSEL = "vessel";

    private VesselWorkings() {}

    static List<Calculation> of(Job job) {
        return checks(job).stream().map(Check::made).flatMap(Optional::stream).toList();
    }

    static List<Check> checks(Job job) {
        return List.of(
                Check.of(job, "fill for the height", List.of(FindingId.PRESSURE_COLD_BAR, FindingId.HIGHEST_RADIATOR_ABOVE_GAUGE_M),
                        () -> FillPressure.of(job).map(asked -> fill(job, asked))),
                Check.of(job, "margin to the safety valve", List.of(FindingId.PRESSURE_HOT_BAR), () -> Optional.of(safetyMargin(job))),
                Check.of(job, VESSEL, HotGauge.needs(job), () -> HotGauge.of(job).map(VesselWorkings::vessel)));
    }

    /** The checks but for the vessel's where one was looked for and is not there. */
    static List<Check> checksOfWhatIsThere(Job job) {
        boolean none = job.answer(FindingId.PUMP_AND_VESSEL_PLACE).equals(Optional.of(new Answer.One("pump-no-vessel")));
        return checks(job).stream().filter(c -> !none || !c.title().equals(VESSEL)).toList();
    }

    private static Calculation vessel(HotGauge g) {
        Estimate litres = g.litres();
        List<GaugeVerdict> verdicts = Stream.of(litres.low(), litres.likely(), litres.high()).map(g::verdict).distinct().toList();
        GaugeVerdict verdict = verdicts.size() == 1 ? verdicts.get(0) : GaugeVerdict.UNCLEAR;
        double expected = g.expectedBar(litres.likely());
        String says = Decimals.sum("Hot gauge %s bar; a sound vessel of %s litres would %s. %s", g.hotBar(), g.vesselLitres(),
                expected > HotGauge.SAFETY_VALVE_BAR ? "lift the safety valve" : Decimals.sum("show %s bar", expected), conclusion(verdict, g));
        String[] sums = sums(g).toArray(String[]::new);
        return switch (verdict) {
            case CHARGE_LOST -> Calculation.finding(FindingId.VESSEL_WORKED_OUT, "charge-lost", FAIL, says.strip(), sums);
            case TOO_SMALL -> Calculation.finding(FindingId.VESSEL_WORKED_OUT, "too-small", FAIL, says.strip(), sums);
            case AS_EXPECTED -> Calculation.finding(FindingId.VESSEL_WORKED_OUT, "as-expected", PASS, says.strip(), sums);
            case OVER_CHARGED, OVER_FILLED -> Calculation.figure(WARN, says.strip(), sums);
            case UNCLEAR -> Calculation.figure(NOTE, says.strip(), sums);
        };
    }

    private static String conclusion(GaugeVerdict verdict, HotGauge g) {
        double litres = g.litres().likely();
        return switch (verdict) {
            case CHARGE_LOST -> g.measuredBar().isPresent() ? Decimals.sum("Its charge is only %s bar.", g.measuredBar().getAsDouble())
                    : Decimals.sum("Vessel charge about %s bar.", Math.max(0, g.explainedBar(litres).orElse(0)));
            case TOO_SMALL -> g.expectedBar(litres) >= HotGauge.SAFETY_VALVE_BAR - HotGauge.KEPT_UNDER_BAR
                    ? "It is too small for this much water." : "Its charge is there, so water does not reach all of it.";
            case OVER_CHARGED -> "Its charge stands above the fill: set that right first.";
            case OVER_FILLED -> "The system is filled too high: set that right first.";
            case UNCLEAR -> g.measuredBar().isPresent() ? "Read both again, cold and hot, to tell more."
                    : "Measure the vessel's charge to tell more.";
            case AS_EXPECTED -> "";
        };
    }

    private static List<String> sums(HotGauge g) {
        double litres = g.litres().likely();
        double expected = g.expectedBar(litres);
        List<String> sums = new ArrayList<>();
        sums.add(Decimals.sum("content %s", SystemLitres.shown(g.litres())));
        sums.add(Decimals.sum("from %s to %s degrees it gains %s %% = %s litres", UsualTemperatures.STANDING_CELSIUS, g.hotCelsius(), g.expansion() * 100,
                ThermalExpansion.litres(litres, g.expansion())));
        sums.add(Decimals.sum("vessel %s litres charged to %s bar (%s), filled to %s bar: %s", g.vesselLitres(), g.soundChargeBar(),
                g.hasLostCharge() ? "as it should be" : g.measuredBar().isPresent() ? "measured" : "taken as the fill", g.coldBar(),
                Double.isFinite(expected) ? Decimals.sum("expected %s bar hot", expected) : "it cannot take that much at any pressure"));
        g.explainedBar(litres).ifPresent(p -> sums.add(p < 0
                ? Decimals.sum("only a vessel full of water would explain %s bar hot", g.hotBar())
                : Decimals.sum("a charge of %s bar would explain %s bar hot", p, g.hotBar())));
        return sums;
    }

    private static Calculation fill(Job job, FillPressure asked) {
        double least = asked.leastBar();
        double cold = Readings.get(job, FindingId.PRESSURE_COLD_BAR);
        Calculation.Grade grade = cold < asked.staticBar() ? FAIL : cold < least - GAUGE_BAR || cold > MOST_FILL_BAR ? WARN : PASS;
        return Calculation.figure(grade, Decimals.sum(cold > MOST_FILL_BAR
                        ? "Filled to %s bar; the height asks for %s bar, and so much leaves little room to rise."
                        : "Filled to %s bar; the height asks for %s bar.", cold, least), asked.sum());
    }

    private static Calculation safetyMargin(Job job) {
        double hot = Readings.get(job, FindingId.PRESSURE_HOT_BAR);
        double margin = SealedSystem.safetyValveMarginBar(hot, HotGauge.SAFETY_VALVE_BAR);
        String sum = Decimals.sum("%s - %s = %s bar", HotGauge.SAFETY_VALVE_BAR, hot, margin);
        if (margin <= 0) {
            return Calculation.figure(FAIL, Decimals.sum("Hot, the gauge stands at %s bar and the usual safety valve lifts at %s.",
                    hot, HotGauge.SAFETY_VALVE_BAR), sum);
        }
        return Calculation.figure(margin < HotGauge.KEPT_UNDER_BAR ? WARN : PASS,
                Decimals.sum("Hot, the gauge stands %s bar under the safety valve.", margin), sum);
    }

    /**
     * Expected gauge pressure at each temperature, 15 to 120 degrees C, for a sound vessel, to draw as a line; empty without
     * the readings it needs. A temperature beyond either end is taken as that end.
     */
    public static Optional<PressureLine> line(Job job) {
        return HotGauge.of(job).map(g -> new PressureLine(UsualTemperatures.STANDING_CELSIUS, g.coldBar(), g.hotCelsius(), g.hotBar(),
                HotGauge.SAFETY_VALVE_BAR, t -> SealedSystem.hotPressureBar(new Vessel(g.vesselLitres(), g.soundChargeBar()), g.coldBar(),
                        g.litres().likely(), Water.expansionFraction(UsualTemperatures.STANDING_CELSIUS,
                                Math.min(MOST_CELSIUS, Math.max(UsualTemperatures.STANDING_CELSIUS, t))))));
    }
}
