package neutralpoint.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.document.Node;
import neutralpoint.job.Job;

/**
 * Something that can hurt people, and what is done about it. Every text about it on any page is made from this entry.
 *
 * @param means     what it is
 * @param hurts     whom it can hurt, and how
 * @param speed     how fast: at-once, within-hours or in-days
 * @param houseIsLeft true where everybody leaves the house; what else stands there waits until this is over
 * @param now       what to do now, in order
 * @param never     what must not be done
 * @param who       who must come, or who may put it right
 * @param clearing  what clears it on site; its steps are proved before any heat
 * @param answers   ids of the causes whose repair is what clears it, so that the order of work does not name them again
 * @param over      the condition under which it is over
 * @param ask       findings still asked while it stands, since an answer may show that it is none
 * @param heat      what may heat the house meanwhile
 * @param cautions  ids of the cautions that belong to it, whatever the course
 * @param emergency the word by which it is called up when it happens during the work; empty for none
 * @param ways      every way in which it can be told
 */
public record Danger(String id, String title, String means, String hurts, String speed, boolean houseIsLeft, List<Act> now, List<String> never,
        String who, List<Clearing> clearing, List<String> answers, String over, List<String> ask, Heat heat, List<String> cautions, Optional<String> emergency, String source,
        List<Way> ways) {

    /** What may heat the house until the danger is over. */
    public enum HeatMeanwhile {
        OFF, MAY_STAY, MUST_STAY;

        /** As it is written in the catalogue: may-stay. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * @param meanwhile whether heat must be off, may stay on or must stay on
     * @param sources   the sources of heat it speaks of, in words
     */
    public record Heat(HeatMeanwhile meanwhile, List<String> sources) {
        public boolean isOff() {
            return meanwhile == HeatMeanwhile.OFF;
        }

        public boolean mustStay() {
            return meanwhile == HeatMeanwhile.MUST_STAY;
        }
    }

    /**
     * One short step of what to do now.
     *
     * @param says   what to do
     * @param proves how it is seen done
     * @param when   the houses it is for
     */
    public record Act(String says, String proves, When when) {}

    /**
     * What clears the danger on site.
     *
     * @param minutes 0 or more
     * @param first   true when it is done before any other work is begun
     */
    public record Clearing(String says, String proves, String tools, double minutes, boolean first, When when) {}

    /**
     * One way in which the danger can be told.
     *
     * @param by  the kind of telling in words, such as "the radiator table"
     * @param job the smallest job file that tells it so
     */
    public record Way(String by, Node job) {}

    /** What to do now in this house, where no other danger stands. */
    public List<Act> now(Job known, Set<String> traits) {
        return now(known, traits, Set.of(id));
    }

    /**
     * What to do now in this house.
     *
     * @param dangers ids of all the dangers that stand
     */
    public List<Act> now(Job known, Set<String> traits, Set<String> dangers) {
        return inHouse(now, known, traits, dangers);
    }

    /** The steps that are for this house; said once where two say the same. */
    private static List<Act> inHouse(List<Act> acts, Job known, Set<String> traits, Set<String> dangers) {
        Map<String, Act> bySaying = new LinkedHashMap<>();
        acts.stream().filter(a -> a.when().fits(known, traits, dangers)).forEach(a -> bySaying.putIfAbsent(a.says(), a));
        return List.copyOf(bySaying.values());
    }

    /** What clears it in this house. */
    public List<Clearing> clearing(Job known, Set<String> traits) {
        return clearing.stream().filter(c -> c.when().fits(known, traits, Set.of(id))).toList();
    }
}
