package neutralpoint.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.job.Job;

/**
 * Something in a house that work may shut, take out or set, and that is put back afterwards.
 *
 * @param title     what it is called on screen
 * @param relief    true when a heat source's water expands, is relieved or moves on by it; shut, it forbids firing
 * @param reopening where it is and how it is opened; given where it gives relief
 */
public record Closure(String id, String title, boolean relief, Optional<Reopening> reopening) {

    /**
     * @param place    where it is found
     * @param byHand   true when a valve is turned; false when a joint is opened, which waits until it is cold
     * @param when     the houses that may have it
     * @param shutWhen the answers that say it is shut: any of them is enough
     */
    public record Reopening(String place, boolean byHand, When when, Map<String, List<String>> shutWhen) {}

    /** True when it gives relief and may be there in this house, by what is recorded. */
    public boolean mayRelieve(Job known, Set<String> traits) {
        return reopening.filter(r -> r.when().fits(known, traits)).isPresent();
    }

    /** True when an answer says that it is shut. */
    public boolean isRecordedShut(Job known) {
        return reopening.filter(r -> r.shutWhen().entrySet().stream()
                .anyMatch(e -> new When(Map.of(e.getKey(), e.getValue()), Map.of()).fits(known, Set.of()))).isPresent();
    }
}
