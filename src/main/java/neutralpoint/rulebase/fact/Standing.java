package neutralpoint.rulebase.fact;

import java.util.List;

/**
 * Where one cause stands after all evidence has been added up.
 *
 * @param cause       catalogue id
 * @param status      settled, likely, possible, unlikely or excluded
 * @param probability 0 to 1
 * @param chief       true for the one cause that best answers the complaint
 * @param course      the course that usually answers this cause
 * @param phase       where its remedy comes in the order of work
 * @param needs       kinds of work its remedy is
 */
public record Standing(
        String cause, String status, double probability, boolean chief, String course, String phase, List<String> needs) {

    /** True when the cause is settled or likely: it will be worked on. */
    public boolean isActive() {
        return status.equals("settled") || status.equals("likely");
    }

    /** True when it is active or, active or not, the chief cause: its course is the one recommended. */
    public boolean isAnswered() {
        return chief || isActive();
    }
}
