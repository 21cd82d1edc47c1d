package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;
import org.apache.commons.text.WordUtils;

/**
 * The words beside the parts of one drawing.
 *
 * @param inFull false where room is short
 */
record Labels(Schematic sketch, boolean inFull) {
    static final String NEUTRAL = "◆ NEUTRAL POINT";

    /** The name of a part as it is printed, once, in the drawing. */
    String name(Component part) {
        return switch (part) {
            case BOILER -> boiler();
            case VALVE -> valve();
            case FILTER -> sketch.system().equals(ArrangementId.HEAT_PUMP_SYSTEM) ? "strainer" : part.name(inFull);
            case CYLINDER -> inFull && sketch.sharesTank() ? sketch.system().replace("-cylinder", " cylinder")
                    : part.name(inFull);
            default -> part.name(inFull);
        };
    }

    private String boiler() {
        return switch (sketch.system()) {
            case ArrangementId.HEAT_PUMP_SYSTEM -> "HEAT PUMP UNIT";
            case ArrangementId.SOLID_FUEL -> "STOVE BOILER";
            case ArrangementId.COMBINATION_BOILER -> "COMBI BOILER";
            default -> "BOILER";
        };
    }

    private String valve() {
        if (sketch.features().contains(ArrangementId.Y_PLAN)) {
            return inFull ? "three-port mid-position valve" : "three-port valve";
        }
        if (sketch.features().contains(ArrangementId.W_PLAN)) {
            return inFull ? "three-port diverter valve" : "diverter valve";
        }
        if (sketch.hasValveOnEachBranch()) {
            return "zone valves";
        }
        return sketch.features().contains(ArrangementId.SINGLE_ZONE_VALVE) ? "zone valve" : Component.VALVE.name(inFull);
    }

    /** Name, doubt, figure and mark of a part, wrapped to the room there is. */
    List<String> of(Component part, String after, int room) {
        boolean unknown = sketch.unknown().contains(part);
        String sign = (sketch.inCase(part) ? "▪" : "") + (unknown ? "?" : "");
        List<String> lines = new ArrayList<>(wrap((sign.isEmpty() ? "" : sign + " ") + name(part) + after
                + (unknown ? " (not seen)" : ""), room));
        if (sketch.figures().containsKey(part)) {
            lines.addAll(wrap(sketch.figures().get(part), room));
        }
        if (sketch.neutralPoint().filter(part::equals).isPresent()) {
            lines.add(NEUTRAL);
        }
        return List.copyOf(lines);
    }

    private static List<String> wrap(String words, int room) {
        return List.of(WordUtils.wrap(words, room, "\n", true).split("\n"));
    }
}
