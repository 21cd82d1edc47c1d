package neutralpoint.hydronics.pipework;

import java.util.List;
import java.util.stream.Collectors;
import neutralpoint.hydronics.Bounds;

/**
 * A size of heating tube.
 *
 * @param outsideMillimetres outside diameter, by which the trade names it
 * @param boreMillimetres    inside diameter
 */
public record Tube(Material material, double outsideMillimetres, double boreMillimetres) {

    /** What tube is made of. */
    public enum Material {
        /** EN 1057 copper. */
        COPPER,
        /** Polybutylene or cross-linked polyethylene with an oxygen barrier, BS 7291 outside diameters. */
        BARRIER_PLASTIC
    }

    /** EN 1057 copper by outside diameter and wall; the usual UK wall of each diameter first (common practice). */
    public static final List<Tube> COPPER = List.of(
            copper(8, 0.6), copper(8, 0.8),
            copper(10, 0.6), copper(10, 0.7), copper(10, 0.8),
            copper(12, 0.6),
            copper(15, 0.7), copper(15, 1.0),
            copper(22, 0.9), copper(22, 1.0), copper(22, 1.2),
            copper(28, 0.9), copper(28, 1.0), copper(28, 1.2),
            copper(35, 1.2), copper(35, 1.0), copper(35, 1.5));

    /** Bores typical of barrier plastic, from memory: makes differ by some 6 % of content. */
    public static final List<Tube> BARRIER_PLASTIC = List.of(plastic(10, 6.7), plastic(15, 11.6),
            plastic(22, 17.6), plastic(28, 22.2));

    /** @throws IllegalArgumentException unless the outside is 4 to 120 mm and the bore lies inside it, 1 mm or more */
    public Tube {
        Bounds.within("The outside diameter in millimetres", outsideMillimetres, 4, 120);
        if (!(boreMillimetres >= 1 && boreMillimetres < outsideMillimetres)) {
            throw new IllegalArgumentException("The bore must be from 1.0 mm to less than the outside diameter of "
                    + outsideMillimetres + " mm, and was " + boreMillimetres + " mm.");
        }
    }

    /** Copper tube of an outside diameter and a wall, both in millimetres. */
    public static Tube copper(double outsideMillimetres, double wallMillimetres) {
        // Whole micrometres, so that 22 less twice 1.2 is 19.6 and not a hair beside it.
        return new Tube(Material.COPPER, outsideMillimetres,
                Math.round((outsideMillimetres - 2 * wallMillimetres) * 1000) / 1000.0);
    }

    /**
     * The tube a UK house most likely has at this outside diameter.
     *
     * @throws IllegalArgumentException if no such size is known; the sentence names those that are
     */
    public static Tube usual(Material material, double outsideMillimetres) {
        List<Tube> sizes = material == Material.COPPER ? COPPER : BARRIER_PLASTIC;
        return sizes.stream().filter(t -> t.outsideMillimetres == outsideMillimetres).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The outside diameter must be one of "
                        + sizes.stream().map(t -> "" + t.outsideMillimetres).distinct()
                                .collect(Collectors.joining(", "))
                        + " mm, and was " + outsideMillimetres + " mm."));
    }

    /** Water in a metre of it: the area of the bore, pi d squared / 4. */
    public double litresPerMetre() {
        // A square millimetre a metre long is a millilitre.
        return Math.PI * boreMillimetres * boreMillimetres / 4 / 1000;
    }

    private static Tube plastic(double outsideMillimetres, double boreMillimetres) {
        return new Tube(Material.BARRIER_PLASTIC, outsideMillimetres, boreMillimetres);
    }
}
