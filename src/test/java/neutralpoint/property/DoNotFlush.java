package neutralpoint.property;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;

/**
 * What the trade says must not be flushed, read straight from the answers and not through the rules.
 * Common practice, no source.
 */
final class DoNotFlush {
    /** Faults that a flush would make worse; they are mended first. */
    private static final Set<String> MENDED_FIRST =
            Set.of("radiator-pinholed", "cylinder-coil-pinholed", "mains-cross-leak", "exchanger-leaking-or-failed");
    private static final double LEAST_SUPPLY_LITRES_PER_MINUTE = 6;

    private DoNotFlush() {}

    /** Why this system must not be flushed as a whole; empty when nothing forbids it. */
    static Optional<String> fully(Assessment a) {
        Job job = a.job();
        Map<String, Boolean> forbidden = Map.of(
                "radiators or joints weep", is(job, "fabric-condition", "weeping"),
                "a radiator panel is wet", is(job, "leak-place", "panel"),
                "there is no foul drain", is(job, "waste-goes-to", "surface-water-only", "nowhere", "septic-tank"),
                "the cold supply is too weak", job.answers().get("cold-supply-litres-per-minute") instanceof Answer.Reading r
                        && r.value() < LEAST_SUPPLY_LITRES_PER_MINUTE,
                "feed or vent cannot be closed", is(job, "feed-and-vent-closable", "no"),
                "a narrow or aluminium exchanger is unprotected", is(job, "boiler-protected", "neither")
                        && (is(job, "exchanger-kind", "stainless-steel", "aluminium") || is(job, "aluminium-in-boiler", "yes")));
        return atAll(a).or(() -> forbidden.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).sorted().findFirst());
    }

    /** Why this system must not be cleansed at all; empty when nothing forbids it. */
    static Optional<String> atAll(Assessment a) {
        if (reachesTheTaps(a.job())) {
            return Optional.of("its water reaches the taps");
        }
        if (is(a.job(), "heat-source", "solid-fuel")) {
            return Optional.of("a fire cannot be switched off");
        }
        return a.causes().stream().filter(c -> c.isActive() && MENDED_FIRST.contains(c.id())).map(c -> c.id() + " is mended first").findFirst();
    }

    static boolean isDoubtful(Job job) {
        return is(job, "fabric-condition", "doubtful", "weeping");
    }

    static boolean reachesTheTaps(Job job) {
        return is(job, "cylinder-style", "single-feed", "direct") || is(job, "red-lines", "mixed-tap-water");
    }

    private static boolean is(Job job, String finding, String... answers) {
        Answer given = job.answers().get(finding);
        List<String> wanted = List.of(answers);
        return given instanceof Answer.One one && wanted.contains(one.choice())
                || given instanceof Answer.Several several && several.choices().stream().anyMatch(wanted::contains);
    }
}
