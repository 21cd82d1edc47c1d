package neutralpoint.job;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.Collections;

/** What was answered to one finding. "Not checked" is an answer of its own and never means "no". */
public sealed interface Answer
        permits Answer.One, Answer.Several, Answer.Reading, Answer.ByRadiator, Answer.NotChecked {

    Answer NOT_CHECKED = new NotChecked();

    /** Yes, no, or one option. */
    record One(String choice) implements Answer {}

    /** The options chosen; none of them is an answer too. Order means nothing. */
    record Several(List<String> choices) implements Answer {
        public Several {
            choices = choices.stream().sorted().distinct().toList();
        }
    }

    /** A reading in the unit the finding is catalogued with. */
    record Reading(double value, String unit) implements Answer {}

    /** One option for each radiator, by the radiator's name. */
    record ByRadiator(Map<String, String> choices) implements Answer {
        public ByRadiator {
            choices = Collections.unmodifiableMap(new TreeMap<>(choices));
        }
    }

    /** Asked and left open. */
    record NotChecked() implements Answer {}
}
