package neutralpoint.report.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Component;
import neutralpoint.catalogue.Ids.ArrangementId;
import neutralpoint.report.text.Wrap;

/** What lies above and what below static pressure when the pump runs, in words. */
final class NeutralPointNotes {
    private NeutralPointNotes() {}

    static String of(Labels labels, int width) {
        Schematic sketch = labels.sketch();
        List<String> lines = new ArrayList<>();
        if (sketch.order().stream().anyMatch(sketch::inCase)) {
            lines.add("▪ inside the boiler's case");
        }
        Optional<Component> neutral = sketch.neutralPoint();
        if (neutral.isEmpty()) {
            lines.add("No cold feed or vessel is shown, so the neutral point cannot be marked.");
        } else {
            lines.add("◆ NEUTRAL POINT: " + joins(neutral.get()) + "; the pump leaves the pressure here at static.");
            lines.addAll(sketch.order().contains(Component.PUMP) ? sides(labels, neutral.get())
                    : List.of("No pump is shown; the pressure is static everywhere."));
        }
        if (sketch.order().contains(Component.VESSEL_TEE) && neutral.filter(p -> p != Component.VESSEL_TEE).isPresent()) {
            lines.add("An open feed and a vessel are both shown. A system has one or the other: find out which is joined.");
        }
        boolean open = neutral.filter(p -> p == Component.FEED_TEE || p == Component.COMBINED_TEE).isPresent();
        if (sketch.system().equals(ArrangementId.CONVERTED_TO_SEALED) && !open && !sketch.order().contains(Component.VENT_TEE)) {
            lines.add("The old feed and vent are not drawn: see in the loft that both are capped.");
        }
        return lines.stream().map(line -> Wrap.to(width, "", "  ", line) + "\n").collect(Collectors.joining());
    }

    private static String joins(Component neutral) {
        return switch (neutral) {
            case VESSEL_TEE -> "the expansion vessel joins";
            case CYLINDER -> "the cistern's cold feed joins in the cylinder";
            default -> "the cold feed joins";
        };
    }

    private static List<String> sides(Labels labels, Component neutral) {
        List<Component> above = between(labels.sketch().order(), Component.PUMP, neutral);
        List<Component> below = between(labels.sketch().order(), neutral, Component.PUMP);
        List<String> lines = new ArrayList<>();
        lines.add("Above static while the pump runs, from its outlet to ◆: " + names(labels, above) + ".");
        lines.add("Below static, from ◆ to the pump's inlet: " + names(labels, below) + ".");
        if (above.contains(Component.VENT_TEE)) {
            lines.add("Water rises in the vent by the pump head lost between the vent tee and ◆; little when they are close.");
        }
        if (below.contains(Component.VENT_TEE)) {
            lines.add("Water falls in the vent by the pump head lost between ◆ and the vent tee; much of it draws in air.");
        }
        return lines;
    }

    /** Parts that water meets between two others, going round. */
    static List<Component> between(List<Component> order, Component from, Component to) {
        List<Component> met = new ArrayList<>();
        for (int i = order.indexOf(from) + 1; order.get(i % order.size()) != to; i++) {
            met.add(order.get(i % order.size()));
        }
        return List.copyOf(met);
    }

    private static String names(Labels labels, List<Component> parts) {
        return parts.isEmpty() ? "only the pipe between them"
                : parts.stream().map(part -> labels.name(part).toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
    }
}
