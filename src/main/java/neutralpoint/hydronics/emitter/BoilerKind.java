package neutralpoint.hydronics.emitter;

import neutralpoint.hydronics.Estimate;

/** Boilers by how much heating water stands in them. All figures from memory of data plates. */
public enum BoilerKind {
    /** Wall-hung with a small exchanger: every combination boiler and nearly every one made to be condensing. */
    WALL_HUNG_LOW_CONTENT(1, 2.5, 4),
    /** Wall-hung with a cast-iron exchanger. */
    WALL_HUNG_CAST_IRON(3, 5, 10),
    /** Standing on the floor, cast iron. */
    FLOOR_STANDING_CAST_IRON(8, 12, 20),
    /** Gas boiler behind a fire. */
    GAS_BACK_BOILER(4, 6, 10),
    /** Steel shell, oil-fired. */
    OIL_STEEL_SHELL(12, 20, 40),
    /** Boiler of a solid-fuel fire or stove. */
    SOLID_FUEL(5, 12, 30);

    private final Estimate litres;

    BoilerKind(double low, double likely, double high) {
        litres = new Estimate(low, likely, high);
    }

    public Estimate litres() {
        return litres;
    }
}
