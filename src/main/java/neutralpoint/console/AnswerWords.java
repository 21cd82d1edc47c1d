package neutralpoint.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.catalogue.Option;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;
import neutralpoint.document.Where;
import neutralpoint.job.Answer;

/** Turns what is typed at a question into an answer: numbers of options, their ids, or words of them. */
final class AnswerWords {
    private static final Where TYPED = new Where("your answer", 0);

    private final JobCheck check;

    AnswerWords(JobCheck check) {
        this.check = check;
    }

    Answer read(Finding finding, String typed) {
        return switch (finding.type()) {
            case YES_NO, ONE_OF -> new Answer.One(option(finding, typed));
            case SEVERAL_OF -> several(finding, typed);
            case NUMBER -> check.answer(finding, new Node.Text(TYPED, typed));
            case PER_RADIATOR -> byRadiator(finding, typed);
        };
    }

    private Answer several(Finding finding, String typed) {
        if (typed.equalsIgnoreCase("none") || typed.equals("0")) {
            return new Answer.Several(List.of());
        }
        List<String> chosen = new ArrayList<>();
        String separator = typed.contains(",") ? "," : typed.matches("[\\d\\s]+") ? "\\s+" : ",";
        for (String part : typed.split(separator, 0)) {
            chosen.add(option(finding, part.strip()));
        }
        return new Answer.Several(chosen);
    }

    private Answer byRadiator(Finding finding, String typed) {
        Map<String, String> choices = new LinkedHashMap<>();
        for (String part : typed.split(",", 0)) {
            String[] pair = part.split("=", 2);
            if (pair.length < 2 || pair[0].isBlank()) {
                throw new BadInput("Give each radiator as name=answer, with commas between, like lounge=1, hall=2.");
            }
            choices.put(pair[0].strip(), option(finding, pair[1].strip()));
        }
        return new Answer.ByRadiator(choices);
    }

    private static String option(Finding finding, String typed) {
        String word = typed.toLowerCase(Locale.ROOT).strip();
        List<String> ids = finding.optionIds();
        if (word.matches("\\d+")) {
            int number = Integer.parseInt(word.substring(0, Math.min(word.length(), 4)));
            if (number >= 1 && number <= ids.size()) {
                return ids.get(number - 1);
            }
            throw new BadInput("There is no answer " + word + " here; choose 1 to " + ids.size() + ".");
        }
        if (finding.type() == AnswerType.YES_NO && !word.isEmpty() && ("yes".startsWith(word) || "no".startsWith(word))) {
            return "yes".startsWith(word) ? "yes" : "no";
        }
        List<String> matches = finding.options().stream()
                .filter(o -> o.id().equals(word)).map(Option::id).toList();
        if (matches.isEmpty() && !word.isEmpty()) {
            matches = finding.options().stream()
                    .filter(o -> o.id().startsWith(word) || o.say().toLowerCase(Locale.ROOT).contains(word))
                    .map(Option::id).toList();
        }
        if (matches.size() == 1) {
            return matches.get(0);
        }
        throw new BadInput(matches.isEmpty()
                ? "\"" + typed + "\" is not one of the answers; type its number or a word of it."
                : "\"" + typed + "\" fits " + matches.size() + " answers; type the number of the one you mean.");
    }
}
