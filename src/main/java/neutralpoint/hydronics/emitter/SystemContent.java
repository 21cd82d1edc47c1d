package neutralpoint.hydronics.emitter;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import neutralpoint.hydronics.Bounds;
import neutralpoint.hydronics.Estimate;

/**
 * The water of a whole system, part by part.
 *
 * @param parts each counted once: no name twice
 */
public record SystemContent(List<ContentPart> parts) {

    /**
     * One part that holds water.
     *
     * @param name   not blank
     * @param litres 0 or more
     */
    public record ContentPart(String name, Estimate litres) {
        /** @throws IllegalArgumentException if the name is blank or the content could be less than nothing */
        public ContentPart {
            if (name.isBlank()) {
                throw new IllegalArgumentException("A part that holds water must have a name, and was blank.");
            }
            Bounds.within("The litres in " + name, litres.low(), 0, Double.MAX_VALUE);
        }
    }

    /** @throws IllegalArgumentException if a name is there twice: the same water would count twice */
    public SystemContent {
        parts = List.copyOf(parts);
        Set<String> names = new HashSet<>();
        for (ContentPart part : parts) {
            if (!names.add(part.name())) {
                throw new IllegalArgumentException(
                        "Each part must be counted once, and " + part.name() + " is there twice.");
            }
        }
    }

    /** The same system with one more part. */
    public SystemContent with(String name, Estimate litres) {
        List<ContentPart> more = new ArrayList<>(parts);
        more.add(new ContentPart(name, litres));
        return new SystemContent(more);
    }

    /** All of the water in litres; nothing when no part is known. */
    public Estimate totalLitres() {
        return Estimate.total(parts.stream().map(ContentPart::litres).toList());
    }

    /** The counted water held against a rule of thumb. */
    public ContentCheck against(ContentRule rule) {
        return new ContentCheck(totalLitres(), rule);
    }
}
