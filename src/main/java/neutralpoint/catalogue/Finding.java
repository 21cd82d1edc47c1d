package neutralpoint.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.job.Answer;

/**
 * Something a person can see, hear, feel, ask or measure on site.
 *
 * @param ask       the question in plain words
 * @param how       how to check it, in two sentences
 * @param options   possible answers; yes and no for a yes-no, none for a number
 * @param unit      unit of a number, otherwise empty
 * @param lowest    least plausible reading
 * @param highest   greatest plausible reading
 * @param place     where on the site it is found
 * @param minutes   time it takes
 * @param intrusive hands-off, hands-on, opens-water or takes-apart
 * @param cautions  ids of the cautions to read first
 * @param onlyOn    traits of which the system must have one for the question to make sense; empty for any
 * @param askWhen   earlier answers of which one must have been given; empty for always
 * @param family    findings of one family are one observation seen twice
 * @param words     words a householder might use for it
 * @param workedOut true when it is worked out from readings and never asked
 * @param notBelow  another reading that this one cannot lie below
 */
public record Finding(String id, String ask, String how, AnswerType type, List<Option> options, String unit,
        double lowest, double highest, String place, int minutes, List<String> tools, String intrusive,
        List<String> cautions, List<String> onlyOn, Map<String, List<String>> askWhen, String family,
        List<String> words, boolean workedOut, Optional<String> notBelow) {

    public List<String> optionIds() {
        return options.stream().map(Option::id).toList();
    }

    /** The answer that gives this one option and nothing else. */
    public Answer answering(Option option) {
        return type == AnswerType.SEVERAL_OF ? new Answer.Several(List.of(option.id())) : new Answer.One(option.id());
    }

    public Optional<Option> option(String optionId) {
        return options.stream().filter(o -> o.id().equals(optionId)).findFirst();
    }

    /** The words shown for an answer: an option's own, or the answer itself. */
    public String say(String answer) {
        return option(answer).map(Option::say).orElse(answer);
    }
}
