package neutralpoint.workings;

import static neutralpoint.workings.WorkedOut.Grade.FAIL;
import static neutralpoint.workings.WorkedOut.Grade.NOTE;
import static neutralpoint.workings.WorkedOut.Grade.PASS;
import static neutralpoint.workings.WorkedOut.Grade.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import neutralpoint.hydronics.Range;
import neutralpoint.hydronics.SealedSystem;
import neutralpoint.hydronics.Vessel;
import neutralpoint.hydronics.Water;
import neutralpoint.job.Job;

/** The sealed side: what the gauge should read hot, what the vessel must be like to explain what it does read, and the fill. */
public final class VesselWorkings {
    /** Setting of the usual safety valve. */
    static final double SAFETY_VALVE_BAR = 3;
    /** Working pressure is kept this far under the safety valve. Source: sealed-system table practice, from memory. */
    private static final double KEPT_UNDER_BAR = 0.35;
    /** Two readings of one gauge, and temperatures taken as usual, differ by this much. */
    private static final double READING_ERROR_BAR = 0.3;
    /** A vessel with less than half the charge it should have is one that has lost it. Common practice, no source. */
    private static final double LOST_SHARE = 0.5;
    private static final double COLD_CELSIUS = 15;
    private static final double USUAL_HOT_CELSIUS = 65;

    private VesselWorkings() {}

    static List<WorkedOut> of(Job job) {
        List<WorkedOut> out = new ArrayList<>();
        fill(job).ifPresent(out::add);
        safetyMargin(job).ifPresent(out::add);
        vessel(job).ifPresent(out::add);
        return out;
    }

    /** What the hot gauge is compared with. */
    private record Case(double coldBar, double hotBar, double vesselLitres, double chargeBar, boolean chargeMeasured, Range litres,
            double hotCelsius) {

        double expansion() {
            return Water.expansionFraction(COLD_CELSIUS, hotCelsius);
        }

        /** Expected hot gauge with a sound vessel; beyond any gauge when no air would be left. */
        double expectedBar(double systemLitres) {
            return SealedSystem.hotPressureBar(new Vessel(vesselLitres, chargeBar), coldBar, systemLitres, expansion()).orElse(20);
        }

        /** charge-lost, too-small, as-expected, or empty when neither can be said, for one guess at the content. */
        String verdict(double systemLitres) {
            double expected = expectedBar(systemLitres);
            boolean runsUp = hotBar >= SAFETY_VALVE_BAR - KEPT_UNDER_BAR;
            if (chargeMeasured && chargeBar < LOST_SHARE * Math.max(coldBar, 0.5)) {
                return "charge-lost";
            }
            if (hotBar <= expected + READING_ERROR_BAR) {
                return runsUp && expected >= SAFETY_VALVE_BAR - KEPT_UNDER_BAR ? "too-small" : runsUp ? "" : "as-expected";
            }
            if (chargeMeasured) {
                return "too-small";
            }
            OptionalDouble charge = explainedCharge(systemLitres);
            return charge.isPresent() && charge.getAsDouble() < LOST_SHARE * coldBar ? "charge-lost" : "";
        }

        OptionalDouble explainedCharge(double systemLitres) {
            return SealedSystem.preChargeThatExplainsBar(vesselLitres, coldBar, hotBar, systemLitres, expansion());
        }
    }

    private static Optional<Case> read(Job job) {
        Optional<SystemLitres> content = SystemLitres.of(job);
        if (content.isEmpty() || !Figures.has(job, "pressure-cold-bar", "pressure-hot-bar", "vessel-size-litres")) {
            return Optional.empty();
        }
        double cold = Figures.get(job, "pressure-cold-bar");
        double hotMean = Figures.of(job, "boiler-flow-celsius").orElse(USUAL_HOT_CELSIUS + 10)
                - Figures.of(job, "boiler-flow-return-kelvin").orElse(20) / 2;
        return Optional.of(new Case(cold, Figures.get(job, "pressure-hot-bar"), Figures.get(job, "vessel-size-litres"),
                Figures.of(job, "vessel-charge-bar").orElse(cold), Figures.has(job, "vessel-charge-bar"), content.get().litres(),
                Math.max(COLD_CELSIUS, hotMean)));
    }

    private static Optional<WorkedOut> vessel(Job job) {
        return read(job).map(c -> {
            Range litres = c.litres();
            List<String> sums = sums(c);
            List<String> verdicts = Stream.of(litres.low(), litres.likely(), litres.high()).map(c::verdict).distinct().toList();
            String says = Figures.sum("Hot gauge %s bar; a sound vessel of %s litres would show %s bar.", c.hotBar(), c.vesselLitres(),
                    c.expectedBar(litres.likely()));
            if (verdicts.size() > 1 || verdicts.get(0).isEmpty()) {
                return new WorkedOut(Optional.empty(), NOTE, says + " Measure the vessel's charge to tell more.", sums);
            }
            String verdict = verdicts.get(0);
            return new WorkedOut(Optional.of(new WorkedOut.Found("vessel-worked-out", new neutralpoint.job.Answer.One(verdict))),
                    verdict.equals("as-expected") ? PASS : FAIL, says + conclusion(verdict, c), sums);
        });
    }

    private static String conclusion(String verdict, Case c) {
        return switch (verdict) {
            case "charge-lost" -> c.chargeMeasured() ? Figures.sum(" Its charge is only %s bar.", c.chargeBar())
                    : Figures.sum(" Vessel charge about %s bar.", Math.max(0, c.explainedCharge(c.litres().likely()).orElse(0)));
            case "too-small" -> c.expectedBar(c.litres().likely()) >= SAFETY_VALVE_BAR - KEPT_UNDER_BAR
                    ? " It is too small for this much water." : " Its charge is right, so water does not reach all of it.";
            default -> "";
        };
    }

    private static List<String> sums(Case c) {
        double litres = c.litres().likely();
        double gained = SealedSystem.expansionLitres(litres, c.expansion());
        List<String> sums = new ArrayList<>();
        sums.add(Figures.sum("content %s", SystemLitres.shown(c.litres())));
        sums.add(Figures.sum("from %s to %s degrees it gains %s %% = %s litres", COLD_CELSIUS, c.hotCelsius(), c.expansion() * 100, gained));
        sums.add(Figures.sum("vessel %s litres charged to %s bar%s, filled to %s bar: expected %s bar hot", c.vesselLitres(), c.chargeBar(),
                c.chargeMeasured() ? " (measured)" : " (taken as the fill)", c.coldBar(), c.expectedBar(litres)));
        c.explainedCharge(litres).ifPresent(p -> sums.add(Figures.sum("a charge of %s bar would explain %s bar hot", p, c.hotBar())));
        return sums;
    }

    private static Optional<WorkedOut> fill(Job job) {
        if (!Figures.has(job, "pressure-cold-bar", "highest-radiator-above-gauge-m")) {
            return Optional.empty();
        }
        double height = Math.max(0, Figures.get(job, "highest-radiator-above-gauge-m"));
        double least = SealedSystem.minimumFillBar(height);
        double cold = Figures.get(job, "pressure-cold-bar");
        return Optional.of(WorkedOut.figure(cold < least - 0.05 ? cold < height / 10 ? FAIL : WARN : PASS, Figures.sum(
                "Filled to %s bar; the height asks for %s bar.", cold, least), Figures.sum("0.1 x %s m + 0.3 bar = %s bar", height, least)));
    }

    private static Optional<WorkedOut> safetyMargin(Job job) {
        if (!Figures.has(job, "pressure-hot-bar")) {
            return Optional.empty();
        }
        double hot = Figures.get(job, "pressure-hot-bar");
        double margin = SealedSystem.safetyValveMarginBar(hot, SAFETY_VALVE_BAR);
        return Optional.of(WorkedOut.figure(margin <= 0 ? FAIL : margin < KEPT_UNDER_BAR ? WARN : PASS, Figures.sum(
                "Hot, the gauge stands %s bar under the safety valve.", margin), Figures.sum("%s - %s = %s bar", SAFETY_VALVE_BAR, hot, margin)));
    }

    /** Expected gauge pressure at each temperature for a sound vessel, to draw as a line; empty without the readings it needs. */
    public static Optional<PressureLine> line(Job job) {
        return read(job).map(c -> new PressureLine(COLD_CELSIUS, c.coldBar(), c.hotCelsius(), c.hotBar(), SAFETY_VALVE_BAR,
                t -> SealedSystem.hotPressureBar(new Vessel(c.vesselLitres(), c.chargeBar()), c.coldBar(), c.litres().likely(),
                        Water.expansionFraction(COLD_CELSIUS, Math.max(COLD_CELSIUS, t)))));
    }
}
