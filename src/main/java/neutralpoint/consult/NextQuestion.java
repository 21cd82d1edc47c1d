package neutralpoint.consult;

import java.util.List;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Option;

/**
 * A question worth asking.
 *
 * @param gain          expected share of the verdict that its answer would move, per minute on site
 * @param changesCourse how likely its answer is to change the recommended course, 0 to 1
 * @param outcomes      what each answer would lead to; empty where that was not looked into
 */
public record NextQuestion(Finding finding, double gain, double changesCourse, List<AnswerOutcome> outcomes) {

    /** An answer and the course it would lead to. */
    public record AnswerOutcome(Option answer, Course course) {}

    NextQuestion(Finding finding, double gain, double changesCourse) {
        this(finding, gain, changesCourse, List.of());
    }
}
