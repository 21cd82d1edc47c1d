package neutralpoint.hydronics.emitter;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import neutralpoint.hydronics.Bounds;

/**
 * Contact or infra-red readings of one radiator, the system hot and steady: face at the middle of the top and of the
 * base, and the two tails beside the valves. Thresholds are common practice, no source, but where they say otherwise.
 *
 * @param topCelsius        -5 to 110
 * @param baseCelsius       -5 to 110
 * @param flowTailCelsius   -5 to 110, if it was read
 * @param returnTailCelsius -5 to 110, if it was read
 * @param roomCelsius       -5 to 110
 */
public record RadiatorReading(double topCelsius, double baseCelsius, OptionalDouble flowTailCelsius,
        OptionalDouble returnTailCelsius, double roomCelsius) {
    /** How far two readings of one temperature may differ. */
    public static final double READING_ERROR_KELVIN = 3;
    /** Top over base beyond which the base may be restricted (10 to 12 K is the trade's figure). */
    public static final double RESTRICTED_KELVIN = 10;
    /** Tail-to-tail drop beyond which too little water comes through. */
    public static final double STARVED_KELVIN = 20;
    /** Base over top beyond which gas holds the water down. */
    public static final double GAS_KELVIN = 5;
    /** Return tail over flow tail beyond which the water runs backwards. */
    public static final double REVERSED_KELVIN = 3;
    /** Nearness to the room within which a radiator is out of use. */
    public static final double COLD_KELVIN = 5;
    /** Mean face over room below which little heat is given: at 20 K it is three tenths of the rating. */
    public static final double LUKEWARM_KELVIN = 20;
    /** Tail-to-tail drop below which water comes through faster than it can give its heat. */
    public static final double OVER_FED_KELVIN = 4;
    /** Return over room below which readings cannot tell a blocked base from a healthy one. */
    public static final double LEAST_RETURN_OVER_ROOM_KELVIN = 10;

    /** What the readings say of a radiator, each before those under it where several hold. */
    public enum RadiatorState {
        /** All that was read lies within 5 K of the room. */
        COLD,
        /** The return tail is the hotter by more than 3 K. */
        REVERSED,
        /** The top is more than 5 K under the base. */
        GAS_AT_TOP,
        /**
         * The tails differ by more than 20 K; a system balanced to 20 K for condensing lies on the edge of it. A body
         * that is restricted as well shows in its blocked share.
         */
        STARVED,
        /** The base is more than 10 K under the top, and colder than the water leaving, where that was read. */
        BASE_RESTRICTED,
        /** The face is on average less than 20 K over the room; as designed where the flow temperature is kept low. */
        LUKEWARM,
        /** The tails differ by less than 4 K. */
        OVER_FED,
        HEALTHY
    }

    /**
     * @throws IllegalArgumentException if a reading is outside -5 to 110, or the face is hotter than the water that
     *         feeds it by more than the reading error. Water may come in by the return, so the hotter tail counts.
     */
    public RadiatorReading {
        Bounds.within("The top in degrees C", topCelsius, -5, 110);
        Bounds.within("The base in degrees C", baseCelsius, -5, 110);
        flowTailCelsius.ifPresent(t -> Bounds.within("The flow tail in degrees C", t, -5, 110));
        returnTailCelsius.ifPresent(t -> Bounds.within("The return tail in degrees C", t, -5, 110));
        Bounds.within("The room in degrees C", roomCelsius, -5, 110);
        if (flowTailCelsius.isPresent()) {
            double feed = Math.max(flowTailCelsius.getAsDouble(), returnTailCelsius.orElse(-5));
            refuseHotter("top", topCelsius, feed);
            refuseHotter("base", baseCelsius, feed);
        }
    }

    /** All five readings. */
    static RadiatorReading of(double topCelsius, double baseCelsius, double flowTailCelsius,
            double returnTailCelsius, double roomCelsius) {
        return new RadiatorReading(topCelsius, baseCelsius, OptionalDouble.of(flowTailCelsius),
                OptionalDouble.of(returnTailCelsius), roomCelsius);
    }

    /** The face alone, where the tails cannot be reached. */
    public static RadiatorReading ofFace(double topCelsius, double baseCelsius, double roomCelsius) {
        return new RadiatorReading(topCelsius, baseCelsius, OptionalDouble.empty(), OptionalDouble.empty(),
                roomCelsius);
    }

    /** Top less base; negative when the base is the hotter. */
    public double topOverBaseKelvin() {
        return topCelsius - baseCelsius;
    }

    /** Flow tail less return tail; empty unless both were read, negative when the water runs backwards. */
    public OptionalDouble tailDropKelvin() {
        return flowTailCelsius.isPresent() && returnTailCelsius.isPresent()
                ? OptionalDouble.of(flowTailCelsius.getAsDouble() - returnTailCelsius.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Share of the base that does nothing, 0 to 1.
     *
     * <p>Model, of our own making: the face of a healthy radiator falls evenly from flow to return temperature, so its
     * base is as warm as the return tail. A base colder than that by more than the reading error is fed with less heat
     * than the water leaving has; the share missing is (expected - base) / (expected - room), with the reading error
     * taken off what is expected, so that the share grows from nothing without a jump and errs on the low side.
     *
     * <p>Limits: it is a share of heat at the base line, not of water or of sludge. Steel conducts, so a base wholly
     * blocked still reads over the room and the share is understated. It holds for tails at the bottom of opposite
     * ends or at top and bottom, hot and steady, and says nothing of a blockage at one end only.
     *
     * @return empty when the return tail was not read, the tails are reversed, or the return is less than 10 K over the
     *         room, where readings cannot tell
     */
    public OptionalDouble blockedShare() {
        if (returnTailCelsius.isEmpty() || isReversed()
                || returnTailCelsius.getAsDouble() - roomCelsius < LEAST_RETURN_OVER_ROOM_KELVIN) {
            return OptionalDouble.empty();
        }
        double expected = returnTailCelsius.getAsDouble() - READING_ERROR_KELVIN;
        return OptionalDouble.of(clamped((expected - baseCelsius) / (expected - roomCelsius)));
    }

    /** The first state that holds. */
    public RadiatorState state() {
        if (isCold()) {
            return RadiatorState.COLD;
        }
        if (isReversed()) {
            return RadiatorState.REVERSED;
        }
        if (topOverBaseKelvin() < -GAS_KELVIN) {
            return RadiatorState.GAS_AT_TOP;
        }
        if (tailDropKelvin().orElse(0) > STARVED_KELVIN) {
            return RadiatorState.STARVED;
        }
        if (topOverBaseKelvin() > RESTRICTED_KELVIN && isBaseUnderReturn()) {
            return RadiatorState.BASE_RESTRICTED;
        }
        if ((topCelsius + baseCelsius) / 2 - roomCelsius < LUKEWARM_KELVIN) {
            return RadiatorState.LUKEWARM;
        }
        return tailDropKelvin().orElse(OVER_FED_KELVIN) < OVER_FED_KELVIN ? RadiatorState.OVER_FED : RadiatorState.HEALTHY;
    }

    private boolean isCold() {
        return DoubleStream.concat(DoubleStream.of(topCelsius, baseCelsius),
                DoubleStream.concat(flowTailCelsius.stream(), returnTailCelsius.stream()))
                .allMatch(t -> Math.abs(t - roomCelsius) <= COLD_KELVIN);
    }

    private boolean isReversed() {
        return tailDropKelvin().orElse(0) < -REVERSED_KELVIN;
    }

    /** A base no colder than the water leaving is what a wide drop looks like; unread, it has no such excuse. */
    private boolean isBaseUnderReturn() {
        return baseCelsius < returnTailCelsius.orElse(Double.POSITIVE_INFINITY) - READING_ERROR_KELVIN;
    }

    private static double clamped(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** True where a surface reads hotter than the water that feeds it, by more than readings err; both 0 to 200. */
    public static boolean isHotterThanItsFeed(double celsius, double feedCelsius) {
        return celsius > feedCelsius + READING_ERROR_KELVIN;
    }

    private static void refuseHotter(String where, double celsius, double feedCelsius) {
        if (isHotterThanItsFeed(celsius, feedCelsius)) {
            throw new IllegalArgumentException("The " + where + " of a radiator cannot be hotter than the water that"
                    + " feeds it by more than the reading error of 3 K: the " + where + " reads " + celsius
                    + " and the hotter tail read " + feedCelsius + "; read both tails again.");
        }
    }
}
