package neutralpoint.workings;

import java.util.List;
import java.util.Optional;
import neutralpoint.job.Answer;

/**
 * Something worked out from readings.
 *
 * @param finding the finding it answers; none for a figure that is only shown
 * @param grade   how it stands against what it should be
 * @param says    the outcome in one sentence
 * @param sums    the arithmetic, line by line
 */
public record Calculation(Optional<Found> finding, Grade grade, String says, List<String> sums) {

    /** An answer to a catalogued finding. */
    public record Found(String id, Answer answer) {}

    /** Against what it should be; NOTE where there is nothing it should be. */
    public enum Grade {
        PASS("pass"), WARN("warn"), FAIL("fail"), NOTE("note");

        private final String word;

        Grade(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static Calculation finding(String id, Answer answer, Grade grade, String says, String... sums) {
        return new Calculation(Optional.of(new Found(id, answer)), grade, says, List.of(sums));
    }

    static Calculation finding(String id, String choice, Grade grade, String says, String... sums) {
        return finding(id, new Answer.One(choice), grade, says, sums);
    }

    static Calculation figure(Grade grade, String says, String... sums) {
        return new Calculation(Optional.empty(), grade, says, List.of(sums));
    }
}
