package neutralpoint.document;

import java.util.Objects;

/**
 * Input that cannot be used. The message is one sentence for the person at the keyboard: what is
 * wrong, where, and what would be right.
 */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BadInput(String sentence) {
        super(sentence);
    }

    public BadInput(Where where, String sentence) {
        super(where + ": " + sentence);
    }

    public BadInput(Where where, String sentence, Throwable cause) {
        super(where + ": " + sentence, cause);
    }

    public BadInput(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    @Override
    public String getMessage() {
        return Objects.requireNonNullElse(super.getMessage(), "");
    }
}
