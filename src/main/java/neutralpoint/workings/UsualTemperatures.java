package neutralpoint.workings;

/** How warm things are where nobody has read it, in degrees Celsius. Common practice, no source. */
public final class UsualTemperatures {
    /** Water fresh from the main, as a system is filled with it and its cold level or pressure is set. */
    public static final double FRESH_CELSIUS = 10;
    /** Water that stands unheated in a house, as it does when a gauge is read cold. */
    public static final double STANDING_CELSIUS = 15;
    public static final double ROOM_CELSIUS = 20;
    /** Leaving a boiler at work. */
    public static final double FLOW_CELSIUS = 75;
    /** What the water loses on its way round. */
    public static final double DROP_KELVIN = 20;

    private UsualTemperatures() {}
}
