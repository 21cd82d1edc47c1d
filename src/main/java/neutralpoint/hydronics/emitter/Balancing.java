package neutralpoint.hydronics.emitter;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.pipework.Fluid;
import neutralpoint.hydronics.pipework.GenericLockshield;
import neutralpoint.hydronics.pipework.Kv;

/**
 * Balancing the radiators of a two-pipe system: what each should have, which has too much or too little, what its
 * lockshield must take up, and in which order to turn the lockshields. It works from tail readings, from the losses
 * of the pipes, or from both.
 */
public final class Balancing {
    /** Drop across radiators in older UK systems, K. Common practice, no source. */
    public static final double OLDER_PRACTICE_DROP_KELVIN = 11;
    /** Drop across radiators that lets a condensing boiler condense, K. Common practice, no source. */
    public static final double CONDENSING_DROP_KELVIN = 20;
    /** A drop this near to the wanted one is right, K. A judgement, no source. */
    public static final double NEAR_ENOUGH_KELVIN = 2;
    /** A radiator whose hotter tail is this far below the hottest of all is starved, K. A judgement, no source. */
    public static final double STARVED_BELOW_HOTTEST_KELVIN = 15;

    private static final double PASCAL_PER_BAR = 1e5;
    /** Less than any gauge shows; it keeps the take-up within what a Kv can be stated for. */
    private static final double NEGLIGIBLE_PASCAL = 1;

    private Balancing() {}

    /**
     * One radiator as found.
     *
     * @param name           its name, different from all others
     * @param watts          heat wanted of it, 1 to 50 000 W
     * @param tails          its tail temperatures, taken with every lockshield fully open, or as they stand on a repeat
     * @param pipeLossPascal loss in the pipes to it and back at its wanted flow, lockshield fully open, 0 to 1e6 Pa
     */
    public record AsFound(String name, double watts, Optional<TailReading> tails, OptionalDouble pipeLossPascal) {
        public AsFound {
            Bounds.within("watts", watts, 1, 50_000);
            pipeLossPascal.ifPresent(pascal -> Bounds.within("pipeLossPascal", pascal, 0, 1e6));
        }
    }

    /** How a radiator is fed, by its tail readings. */
    public enum Feed {
        /** Drop too small: more flow than its share. */
        OVER_FED,
        RIGHT,
        /** Drop too great: less flow than its share. */
        UNDER_FED,
        /** Next to no flow: look for a shut valve, air or a blockage before turning anything else. */
        STARVED,
        /** No reading was taken. */
        NOT_MEASURED
    }

    /** What to do to a lockshield. One to be opened that is open already gains as the others are closed down. */
    public enum Adjustment { CLOSE_DOWN, LEAVE, OPEN_UP, OPEN_FULLY }

    /**
     * What a lockshield must do besides its loss when fully open.
     *
     * @param takeUpPascal    pressure it must take up, Pa
     * @param kv              the Kv it then has, reckoned for a generic lockshield, m³/h at 1 bar
     * @param indicativeTurns turns open of a generic lockshield: an indication only
     */
    public record Lockshield(double takeUpPascal, double kv, double indicativeTurns) {}

    /**
     * One radiator as it should be.
     *
     * @param lockshield empty when neither the pipe losses nor the pump's pressure are known
     */
    public record Target(String name, double flowLitresPerMinute, double dropKelvin, Feed feed,
            Optional<Lockshield> lockshield, Adjustment adjustment) {}

    /**
     * The whole plan.
     *
     * @param indexRadiator the one hardest to reach; its lockshield stays fully open
     * @param order         all radiators in the order to turn their lockshields, the index radiator last
     * @param isBalanced    true when every radiator was measured and is right; else measure again afterwards and repeat
     */
    public record Plan(String indexRadiator, List<Target> order, double flowLitresPerMinute, boolean isBalanced) {}

    /**
     * The plan for a system.
     *
     * <p>The index radiator is the one with the greatest pipe loss where all are known, else the one that the readings
     * show to be fed least. Lockshields are turned from the most over-fed radiator to the least; without readings for
     * all, from the one nearest the pump by pipe loss. All radiators are wanted at the same drop.
     *
     * <p>With pipe losses a lockshield takes up what its radiator's loss falls short of the index radiator's. Without
     * them, and with the pressure at the radiators known, an over-fed radiator at drop d instead of D passes about D/d
     * of its share, as its heat hardly changes with the flow; loss goes with the square of the flow, so the lockshield
     * takes up pressure · (1 − (d/D)²).
     *
     * @param radiators      one or more; either all with tail readings or all with pipe losses
     * @param dropKelvin     drop wanted across every radiator, 5 to 30 K
     * @param pressurePascal pressure between flow and return at the radiators, if known, 1 to 1e6 Pa
     * @throws IllegalArgumentException if a value is out of range, two names are alike, or readings and losses are both
     *         incomplete
     */
    public static Plan plan(List<AsFound> radiators, double dropKelvin, OptionalDouble pressurePascal, Fluid fluid) {
        Bounds.within("dropKelvin", dropKelvin, 5, 30);
        Bounds.within("the number of radiators", radiators.size(), 1, 1000);
        pressurePascal.ifPresent(pascal -> Bounds.within("pressurePascal", pascal, NEGLIGIBLE_PASCAL, 1e6));
        checkNames(radiators);
        boolean allMeasured = radiators.stream().allMatch(r -> r.tails().isPresent());
        boolean allPiped = radiators.stream().allMatch(r -> r.pipeLossPascal().isPresent());
        if (!allMeasured && !allPiped) {
            throw new IllegalArgumentException("Some radiators have no tail reading and some no pipe loss; "
                    + "one of both must be known for all.");
        }
        double hottest = radiators.stream().flatMap(r -> r.tails().stream()).mapToDouble(TailReading::hotterCelsius)
                .max().orElse(0);
        Comparator<AsFound> byReading = leastFedLast(hottest);
        Comparator<AsFound> byLoss = Comparator.comparingDouble(r -> r.pipeLossPascal().orElseThrow());
        AsFound index = radiators.stream().max(allPiped ? byLoss : byReading).orElseThrow();
        WholeHouse house = new WholeHouse(index, allPiped ? index.pipeLossPascal() : OptionalDouble.empty(), pressurePascal,
                dropKelvin, hottest, fluid);
        List<Target> order = radiators.stream().sorted(allMeasured ? byReading : byLoss)
                .sorted(Comparator.comparing(index::equals)).map(r -> target(r, house)).toList();
        return new Plan(index.name(), order, order.stream().mapToDouble(Target::flowLitresPerMinute).sum(),
                order.stream().allMatch(t -> t.feed() == Feed.RIGHT));
    }

    /** What is the same for every radiator; the index loss only where the losses to all are known. */
    private record WholeHouse(AsFound index, OptionalDouble indexLossPascal, OptionalDouble pressurePascal,
            double dropKelvin, double hottestCelsius, Fluid fluid) {}

    /** Least drop first; those that get next to no flow come last, the coldest of them at the very end. */
    private static Comparator<AsFound> leastFedLast(double hottestCelsius) {
        return Comparator.comparingDouble(r -> {
            TailReading tails = r.tails().orElseThrow();
            // No drop of a radiator that is fed comes near 1000, so that the two kinds never mix.
            return isStarved(tails, hottestCelsius) ? 1000 - tails.hotterCelsius() : tails.dropKelvin();
        });
    }

    private static boolean isStarved(TailReading tails, double hottestCelsius) {
        return hottestCelsius - tails.hotterCelsius() >= STARVED_BELOW_HOTTEST_KELVIN;
    }

    private static Target target(AsFound r, WholeHouse house) {
        double flow = house.fluid().flowLitresPerMinute(r.watts(), house.dropKelvin());
        Feed feed = r.tails().map(tails -> feed(tails, house)).orElse(Feed.NOT_MEASURED);
        OptionalDouble takeUp = takeUp(r, feed, house);
        Optional<Lockshield> lockshield = takeUp.isEmpty() ? Optional.empty()
                : Optional.of(lockshield(flow, takeUp.getAsDouble(), house.fluid()));
        return new Target(r.name(), flow, house.dropKelvin(), feed, lockshield,
                r.equals(house.index()) ? Adjustment.OPEN_FULLY : adjustment(feed, takeUp));
    }

    private static Feed feed(TailReading tails, WholeHouse house) {
        if (isStarved(tails, house.hottestCelsius())) {
            return Feed.STARVED;
        }
        double over = tails.dropKelvin() - house.dropKelvin();
        if (Math.abs(over) <= NEAR_ENOUGH_KELVIN) {
            return Feed.RIGHT;
        }
        return over < 0 ? Feed.OVER_FED : Feed.UNDER_FED;
    }

    private static OptionalDouble takeUp(AsFound r, Feed feed, WholeHouse house) {
        if (r.equals(house.index())) {
            return OptionalDouble.of(0);
        }
        if (house.indexLossPascal().isPresent()) {
            return OptionalDouble.of(house.indexLossPascal().getAsDouble() - r.pipeLossPascal().orElseThrow());
        }
        if (house.pressurePascal().isEmpty()) {
            return OptionalDouble.empty();
        }
        double share = feed == Feed.OVER_FED ? r.tails().orElseThrow().dropKelvin() / house.dropKelvin() : 1;
        return OptionalDouble.of(house.pressurePascal().getAsDouble() * (1 - share * share));
    }

    private static Lockshield lockshield(double flowLitresPerMinute, double takeUpPascal, Fluid fluid) {
        if (takeUpPascal < NEGLIGIBLE_PASCAL) {
            return new Lockshield(takeUpPascal, GenericLockshield.FULLY_OPEN_KV, GenericLockshield.FULLY_OPEN_TURNS);
        }
        double throttle = Kv.kv(flowLitresPerMinute * 60 / 1000, takeUpPascal / PASCAL_PER_BAR,
                fluid.densityKgPerCubicMetre());
        double kv = Kv.inSeries(GenericLockshield.FULLY_OPEN_KV, throttle);
        return new Lockshield(takeUpPascal, kv, GenericLockshield.indicativeTurns(kv));
    }

    private static Adjustment adjustment(Feed feed, OptionalDouble takeUp) {
        return switch (feed) {
            case OVER_FED -> Adjustment.CLOSE_DOWN;
            case RIGHT -> Adjustment.LEAVE;
            case UNDER_FED -> Adjustment.OPEN_UP;
            case STARVED -> Adjustment.OPEN_FULLY;
            case NOT_MEASURED -> takeUp.orElse(0) < NEGLIGIBLE_PASCAL ? Adjustment.OPEN_FULLY : Adjustment.CLOSE_DOWN;
        };
    }

    private static void checkNames(List<AsFound> radiators) {
        Set<String> names = new HashSet<>();
        radiators.stream().map(AsFound::name).filter(name -> !names.add(name)).findFirst().ifPresent(name -> {
            throw new IllegalArgumentException("Two radiators are named " + name
                    + "; each must have a name of its own.");
        });
    }
}
