package neutralpoint.document;

import java.util.Map;

/** Looking up what must be there. */
public final class Lookup {
    private Lookup() {}

    /**
     * The value of a key that the caller knows is in the map.
     *
     * @throws IllegalStateException if it is not, which is a fault of the program
     */
    public static <K, V> V known(Map<K, V> map, K key) {
        V value = map.get(key);
        if (value == null) {
            throw new IllegalStateException("nothing is kept for " + key);
        }
        return value;
    }
}
