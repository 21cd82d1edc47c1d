package neutralpoint.workplan.figures;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import neutralpoint.catalogue.Ids.MethodId;

/** What each method of cleansing does with the water, as far as its figures go. */
enum MethodEffects {
    MACHINE(MethodId.MACHINE_FLUSH, Does.PUMPED_ROUND, Does.DUMPED, Does.RINSED, Does.CLEANED),
    MAINS(MethodId.MAINS_PRESSURE_FLUSH, Does.DUMPED),
    CHEMICAL(MethodId.CHEMICAL_DRAIN_AND_RINSE, Does.RINSED, Does.CLEANED),
    LEG(MethodId.LEG_BY_LEG, Does.PUMPED_ROUND, Does.DUMPED, Does.RINSED, Does.CLEANED),
    HOSED(MethodId.RADIATOR_OFF_AND_HOSED, Does.DUMPED),
    BENCH(MethodId.PART_CLEANED_ON_THE_BENCH),
    NONE("");

    /** One thing done with the water. */
    enum Does {
        /** Driven round by a flushing pump. */
        PUMPED_ROUND,
        /** Radiators are run to the drain one by one. */
        DUMPED,
        /** The whole circuit is rinsed with fresh water until it reads like the main. */
        RINSED,
        /** Cleaner is put in. */
        CLEANED
    }

    private final String method;
    private final Set<Does> does;

    MethodEffects(String method, Does... does) {
        this.method = method;
        this.does = EnumSet.noneOf(Does.class);
        this.does.addAll(List.of(does));
    }

    /** @throws IllegalArgumentException for a method whose figures are not known here */
    static MethodEffects of(String method) {
        return Arrays.stream(values()).filter(w -> w.method.equals(method)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The method is \"" + method + "\"; it must be one of "
                        + String.join(", ", Arrays.stream(values()).map(w -> w.method).filter(m -> !m.isEmpty()).toList())
                        + ", or empty where nothing is cleansed."));
    }

    boolean does(Does what) {
        return does.contains(what);
    }
}
