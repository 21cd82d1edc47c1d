package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** One thing that a method of cleansing does with the water. */
public enum WaterWork {
    /** Driven round by a flushing pump. */
    PUMPED_ROUND,
    /** Radiators are run to the drain one by one. */
    DUMPED,
    /** The whole system is drained, whatever the course. */
    DRAINED,
    /** The whole circuit is rinsed with fresh water until it reads like the main. */
    RINSED,
    /** Cleaner is put in. */
    CLEANED;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(WaterWork::word).toList();
    }

    public static WaterWork of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
