package neutralpoint.catalogue;

import java.util.Arrays;
import java.util.List;

/** The form an answer takes. */
public enum AnswerType {
    YES_NO("yes-no"),
    ONE_OF("one-of"),
    SEVERAL_OF("several-of"),
    NUMBER("number"),
    PER_RADIATOR("per-radiator");

    private final String word;

    AnswerType(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(AnswerType::word).toList();
    }

    public static AnswerType of(String word) {
        return Arrays.stream(values()).filter(t -> t.word.equals(word)).findFirst().orElseThrow();
    }
}
