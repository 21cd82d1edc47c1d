package neutralpoint.job;

import java.util.List;
import java.util.stream.Stream;
import neutralpoint.hydronics.emitter.RadiatorType;

/**
 * What a radiator is and how large.
 *
 * @param type              one of {@link #TYPES}; panels are numbered as in EN 442: first digit panels, second rows of fins
 * @param heightMillimetres 100 to 2500
 * @param lengthMillimetres 100 to 6000
 */
public record RadiatorSize(String type, int heightMillimetres, int lengthMillimetres) {
    public static final List<String> TYPES = Stream.of(RadiatorType.values()).map(RadiatorType::word).toList();
}
