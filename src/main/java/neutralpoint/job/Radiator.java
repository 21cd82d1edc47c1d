package neutralpoint.job;

/**
 * A radiator of the house.
 *
 * @param name  the room or place, unique in the house
 * @param floor ground, first, second, or unknown
 */
public record Radiator(String name, String floor) {}
