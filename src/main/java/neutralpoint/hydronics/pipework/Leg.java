package neutralpoint.hydronics.pipework;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import neutralpoint.hydronics.Bounds;

/**
 * One leg of a two-pipe system: a flow and a return pipe side by side, of one bore, up to the next tee or the end.
 *
 * @param name                   its name, not blank
 * @param lengthMetres           how far it runs, one way, 0 to 5000 m; flow and return together are twice that
 * @param boreMillimetres        inside diameter of either pipe, 1 to 500 mm
 * @param equivalentLengthMetres all fittings on both pipes as a length of tube, 0 to 10 000 m; not doubled again
 * @param load                   what is served at its end, if anything is
 * @param beyond                 legs that lead on from its end; a leg that serves nothing must have some
 */
public record Leg(String name, double lengthMetres, double boreMillimetres, double equivalentLengthMetres,
        Optional<Load> load, List<Leg> beyond) {

    /** What is served at the end of a leg. */
    public sealed interface Load permits HeatLoad, FlowLoad {}

    /** A radiator or coil by the heat it is to give, 0 to 1e6 W. */
    public record HeatLoad(double watts) implements Load {
        public HeatLoad {
            Bounds.within("watts", watts, 0, 1e6);
        }
    }

    /** A radiator or coil by the flow it is to have, 0 to 10 000 L/min. */
    public record FlowLoad(double litresPerMinute) implements Load {
        public FlowLoad {
            Bounds.within("litresPerMinute", litresPerMinute, 0, 10_000);
        }
    }

    public Leg {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A leg's name is blank; it must hold at least one letter.");
        }
        Bounds.within("lengthMetres", lengthMetres, 0, 5000);
        Bounds.within("boreMillimetres", boreMillimetres, 1, 500);
        PipeLoss.checkLength("equivalentLengthMetres", equivalentLengthMetres);
        beyond = List.copyOf(beyond);
        if (load.isEmpty() && beyond.isEmpty()) {
            throw new IllegalArgumentException("The leg " + name
                    + " serves nothing and leads nowhere; it must do one of both.");
        }
    }

    /** A leg that ends at a radiator. */
    public static Leg toRadiator(String name, double lengthMetres, double boreMillimetres,
            double equivalentLengthMetres, Load load) {
        return new Leg(name, lengthMetres, boreMillimetres, equivalentLengthMetres, Optional.of(load), List.of());
    }

    /** A leg that ends at a tee. */
    public static Leg toTee(String name, double lengthMetres, double boreMillimetres,
            double equivalentLengthMetres, Leg... beyond) {
        return new Leg(name, lengthMetres, boreMillimetres, equivalentLengthMetres, Optional.empty(), List.of(beyond));
    }

    /** This leg and all beyond it, each before those it leads to. */
    Stream<Leg> all() {
        return Stream.concat(Stream.of(this), beyond.stream().flatMap(Leg::all));
    }
}
