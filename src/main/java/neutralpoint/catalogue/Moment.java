package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** When a caution has to be heeded: before anything is touched, while the work goes on, or before the house is left. */
public enum Moment {
    BEFORE, DURING, LEAVING;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Moment::word).toList();
    }

    public static Moment of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
