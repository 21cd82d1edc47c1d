package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import neutralpoint.hydronics.Range;
import neutralpoint.workings.Figures;

/** Litres of cleaner, neutraliser and inhibitor, and the containers to bring. */
final class Dosing {
    /** One litre to a hundred. Common practice, no source; the label decides. */
    private static final Range USUAL_PERCENT = Range.exactly(1);
    /** Common practice, no source. */
    private static final Range USUAL_CONTAINER_LITRES = Range.exactly(1);
    private static final String SOURCE = "the label; where it was not read, common practice, no source";

    private Dosing() {}

    static Part of(House house, Scope scope, Range systemLitres) {
        if (!scope.mayBeDosed() || !scope.opensTheWater()) {
            return Part.NOTHING;
        }
        Part part = Part.NOTHING;
        if (scope.way().does(Way.Does.CLEANED) && !house.holdsAnUnknownMix()) {
            Range cleansed = systemLitres.times(scope.cleansedShare());
            part = part.and(dose(house, "cleaner", cleansed, List.of()))
                    .and(dose(house, "neutraliser", cleansed, List.of("only after an acid cleaner")));
        }
        return part.and(dose(house, "inhibitor", systemLitres, List.of("for all of the water, whatever was let out of it")));
    }

    private static Part dose(House house, String what, Range water, List<String> notes) {
        Given percent = Given.of(house.job(), what + "-dose-percent", "in 100", USUAL_PERCENT);
        Given container = Given.of(house.job(), "container-size-litres", "litres", USUAL_CONTAINER_LITRES);
        Range litres = water.times(percent.value().times(0.01));
        Range count = litres.over(container.value());
        Range whole = new Range(full(count.low()), full(count.likely()), full(count.high()));
        String name = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
        List<String> sums = new ArrayList<>(notes);
        sums.add("dose " + percent.shown());
        sums.add(Figures.sum("%s x %s / 100 = %s", Said.range(water, "litres"), percent.value().likely(),
                Said.range(litres, "litres")));
        return Part.of(new Figure(what + "-litres", name, litres, "litres", sums, SOURCE),
                new Figure(what + "-containers", name + " to bring", whole, containers(whole, container), List.of(
                        "a container holds " + container.shown(), Figures.sum("%s / %s, counted up to whole ones = %s",
                                Said.range(litres, "litres"), container.value().likely(), Said.range(whole, ""))), SOURCE));
    }

    private static String containers(Range count, Given size) {
        double litres = size.value().likely();
        return Figures.sum("%s of %s %s", count.likely() == 1 ? "container" : "containers", litres, litres == 1 ? "litre" : "litres");
    }

    /** Whole containers; a hair over a whole one, which is rounding, wants no other. */
    private static double full(double containers) {
        return Math.ceil(containers - 1e-9);
    }
}
