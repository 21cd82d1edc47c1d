package neutralpoint.workplan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import neutralpoint.rulebase.fact.Step;

/** The stages of the work in their order. */
public enum Stage {
    MAKE_SAFE, PREPARE, ISOLATE, CONNECT, FILL, HEAT, CLEANSE, DUMP, RINSE, REPAIR, PUT_BACK, REFILL, PROVE, RECORD;

    /** As rules write it: put-back. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Stage::word).toList();
    }

    static Stage of(Step step) {
        return Arrays.stream(values()).filter(s -> s.word().equals(step.stage())).findFirst().orElseThrow(() ->
                new IllegalArgumentException("the stage of the step " + step.id() + " must be one of "
                        + String.join(", ", words()) + ", but is \"" + step.stage() + "\"."));
    }

    /** True where water is let out of the system. */
    boolean letsWaterOut() {
        return this == DUMP || this == RINSE;
    }
}
