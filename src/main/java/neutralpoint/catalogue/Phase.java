package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The stages of a job in the order they must be done. */
public enum Phase {
    SAFETY, LEAK, EXPANSION, FLOW, CLEANSE, BALANCE, PROTECT, PROVE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Phase::word).toList();
    }

    public static Phase of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
