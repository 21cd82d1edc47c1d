package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A part that water meets on its way from the boiler's flow round to its return. */
public enum Component {
    BOILER("boiler", "boiler"),
    VENT_TEE("vent tee", "open vent tee"),
    FEED_TEE("feed tee", "cold feed tee"),
    COMBINED_TEE("combined tee", "combined feed and vent tee"),
    PUMP("pump", "circulating pump"),
    BYPASS("bypass", "automatic bypass valve"),
    /** A three-port valve, one two-port valve, or a two-port valve on each branch. */
    VALVE("motorised valve", "motorised valve"),
    CYLINDER("cylinder", "hot-water cylinder"),
    RADIATORS("radiators", "radiators"),
    MIXING_SET("mixing set", "mixing set"),
    STORE("thermal store", "thermal store"),
    FILTER("filter", "magnetic filter"),
    VESSEL_TEE("vessel", "expansion vessel"),
    SAFETY_VALVE("safety valve", "safety valve"),
    GAUGE("gauge", "pressure gauge"),
    FILL_POINT("fill loop", "filling loop");

    private final String brief;
    private final String full;

    Component(String brief, String full) {
        this.brief = brief;
        this.full = full;
    }

    /** As an arrangement's order names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Component::word).toList();
    }

    public static Component of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** As it is printed. */
    public String name(boolean inFull) {
        return inFull ? full : brief;
    }

    /** True for what joins flow and return, so that water passes through it from one to the other. */
    public boolean bridges() {
        return this == BYPASS || this == CYLINDER || this == RADIATORS || this == MIXING_SET || this == STORE;
    }
}
