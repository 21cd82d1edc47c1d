package neutralpoint.property;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;

/**
 * Where a boiler's relief, the tap water or the filling is in doubt or worse, read straight from the answers and not
 * through the rules. Common practice, no source.
 */
final class PathsByHand {
    private PathsByHand() {}

    /** Why nothing may be cleansed before a look or a repair; empty when no answer speaks against it. */
    static Optional<String> inDoubtOrWorse(Job job) {
        Map<String, Boolean> found = Map.of("relief to the tank", reliefToTheTank(job), "relief by vessel and valve", reliefByValve(job),
                "waters shared", shared(job), "waters in doubt", watersInDoubt(job), "filling", filling(job));
        return found.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).sorted().findFirst();
    }

    private static boolean reliefToTheTank(Job job) {
        boolean onePipe = is(job, "feed-and-vent-join", "one-pipe") || is(job, "feed-and-vent-layout", "one-pipe");
        boolean seenClear = is(job, "tank-level-when-drained", "falls") || is(job, "feed-pipe-opened", "clear");
        boolean plugged = onePipe && (is(job, "tank-level-when-drained", "does-not-fall")
                || is(job, "feed-pipe-opened", "soft-sludge", "hard-plug")
                || !seenClear && (is(job, "magnet-at-feed-tee", "clings") || is(job, "feed-pipe-warmth", "stops-dead")
                        || is(job, "tank-level-when-drained", "falls-slowly")));
        boolean ventShut = is(job, "vent-end", "capped-or-valved", "frozen") || is(job, "red-lines", "frozen-or-blocked-vent")
                || is(job, "ice-found", "tank-feed-or-vent");
        boolean valved = is(job, "flow-to-vent", "zone-valve", "pump-with-valves", "hand-valve", "check-valve")
                || is(job, "feed-and-vent-layout", "pump-pushes-at-vent") && !is(job, "flow-to-vent", "nothing");
        boolean loftTank = is(job, "heating-filled-by", "loft-tank");
        return plugged || ventShut || valved || onePipe && is(job, "boiler-overheat-cut-out", "no")
                || loftTank && is(job, "gauge-tells", "rises-when-hot")
                || loftTank && is(job, "old-vent-left", "capped-stub") && !is(job, "vent-end", "open-above-water");
    }

    private static boolean reliefByValve(Job job) {
        boolean noVessel = is(job, "pump-and-vessel-place", "pump-no-vessel");
        return noVessel && (is(job, "heating-filled-by", "filling-loop") || is(job, "recent-work", "converted-to-sealed"))
                || is(job, "safety-valve-and-discharge", "none-there", "discharge-closed", "valve-before-it", "not-found")
                || is(job, "safety-valve-by-hand", "nothing-came");
    }

    /** True when tap water and heating water are one, or meet. */
    static boolean shared(Job job) {
        boolean fallen = is(job, "pressure-behaviour", "falls-in-a-day", "falls-over-weeks");
        return is(job, "heating-filled-by", "shared-tank") && !is(job, "small-tank-serves", "heating")
                        && !is(job, "hot-tap-beside-cold", "alike-and-clear", "both-dirty")
                || is(job, "cylinder-style", "direct") && !is(job, "hot-water-made-by", "separately")
                || is(job, "red-lines", "mixed-tap-water") || is(job, "hot-tap-beside-cold", "hot-darker")
                || is(job, "tap-with-mains-off", "yes") || is(job, "rise-with-cylinder-feed-shut", "stops")
                || is(job, "cylinder-coil-shut-off", "holds") && fallen;
    }

    private static boolean watersInDoubt(Job job) {
        return is(job, "heating-filled-by", "shared-tank") && !is(job, "small-tank-serves", "heating")
                || is(job, "cylinder-style", "single-feed")
                || is(job, "loop-taken-off-test", "gauge-still-climbs") && !is(job, "tap-with-mains-off", "no")
                || is(job, "tank-level-supply-shut", "rises") && !is(job, "rise-with-cylinder-feed-shut", "carries-on")
                        && !is(job, "filling-loop-state", "open")
                || is(job, "heating-filled-by", "loft-tank") && is(job, "loft-tanks", "one-large");
    }

    private static boolean filling(Job job) {
        return is(job, "filling-loop-state", "open") && !is(job, "loop-taken-off-test", "mains-end-drips", "gauge-still-climbs", "dry-and-steady")
                && (is(job, "small-tank-serves", "heating") || is(job, "heating-filled-by", "loft-tank", "both"));
    }

    private static boolean is(Job job, String finding, String... answers) {
        List<String> wanted = List.of(answers);
        return job.answer(finding).map(given -> given instanceof Answer.One one && wanted.contains(one.choice())
                || given instanceof Answer.Several several && several.choices().stream().anyMatch(wanted::contains)).orElse(false);
    }
}
