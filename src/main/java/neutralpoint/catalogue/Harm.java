package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can come of it when a caution is not heeded, the worst first. */
public enum Harm {
    KILLS, INJURES, DAMAGES, COSTS;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Harm::word).toList();
    }

    public static Harm of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
