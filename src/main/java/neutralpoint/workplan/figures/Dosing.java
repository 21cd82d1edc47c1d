package neutralpoint.workplan.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.catalogue.WaterWork;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workings.EstimateFormat;

/** Litres of cleaner, neutraliser and inhibitor, and the containers to bring. */
final class Dosing {
    /** One litre to a hundred. Common practice, no source; the label decides. */
    private static final Estimate USUAL_PERCENT = Estimate.exactly(1);
    /** Common practice, no source. */
    private static final Estimate USUAL_CONTAINER_LITRES = Estimate.exactly(1);
    private static final String SOURCE = "the label; where it was not read, common practice, no source";

    private Dosing() {}

    static FigureSet of(House house, JobScope scope, Estimate systemLitres) {
        if (!scope.mayBeDosed() || !scope.opensTheWater()) {
            return FigureSet.NOTHING;
        }
        FigureSet part = FigureSet.NOTHING;
        if (scope.does(WaterWork.CLEANED) && !house.holdsAnUnknownMix()) {
            Estimate cleansed = systemLitres.times(scope.cleansedShare());
            part = part.and(dose(house, "cleaner", cleansed, List.of()))
                    .and(dose(house, "neutraliser", cleansed, List.of("only after an acid cleaner")));
        }
        return part.and(dose(house, "inhibitor", systemLitres, List.of("for all of the water, whatever was let out of it")));
    }

    private static FigureSet dose(House house, String what, Estimate water, List<String> notes) {
        MeasuredOrUsual percent = MeasuredOrUsual.of(house.job(), what + "-dose-percent", "in 100", USUAL_PERCENT);
        MeasuredOrUsual container = MeasuredOrUsual.of(house.job(), FindingId.CONTAINER_SIZE_LITRES, "litres", USUAL_CONTAINER_LITRES);
        Estimate litres = water.times(percent.value().times(0.01));
        Estimate count = litres.over(container.value());
        Estimate whole = new Estimate(full(count.low()), full(count.likely()), full(count.high()));
        String name = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
        List<String> sums = new ArrayList<>(notes);
        sums.add("dose " + percent.shown());
        sums.add(Decimals.sum("%s x %s / 100 = %s", EstimateFormat.range(water, "litres"), percent.value().likely(),
                EstimateFormat.range(litres, "litres")));
        return FigureSet.of(new Figure(what + "-litres", name, litres, "litres", sums, SOURCE),
                new Figure(what + "-containers", name + " to bring", whole, containers(whole, container), List.of(
                        "a container holds " + container.shown(), Decimals.sum("%s / %s, counted up to whole ones = %s",
                                EstimateFormat.range(litres, "litres"), container.value().likely(), EstimateFormat.range(whole, ""))), SOURCE));
    }

    private static String containers(Estimate count, MeasuredOrUsual size) {
        double litres = size.value().likely();
        return Decimals.sum("%s of %s %s", count.likely() == 1 ? "container" : "containers", litres, litres == 1 ? "litre" : "litres");
    }

    /** Whole containers; a hair over a whole one, which is rounding, wants no other. */
    private static double full(double containers) {
        return Math.ceil(containers - 1e-9);
    }
}
