package neutralpoint.console;

import java.util.List;
import java.util.Optional;
import neutralpoint.report.text.DisplayOptions;

/** Where a conversation is held: a terminal, a pipe, or a script in a test. */
public interface Screen extends AutoCloseable {

    /** Shows a paragraph, wrapped to the width. */
    void say(String words);

    /** Shows a line exactly as it is. */
    void line(String text);

    /** Shows a heading. */
    void heading(String words);

    /**
     * Asks for one line.
     *
     * @param words what Tab may complete to
     * @return the line; empty when the person leaves (end of input or Ctrl-C)
     */
    Optional<String> ask(String prompt, List<String> words);

    /** Columns to write in, 40 to 100. */
    int width();

    /** True where colour and block characters are shown. */
    boolean colour();

    /** How a report is shown here. */
    default DisplayOptions look() {
        return new DisplayOptions(width() - 1, colour());
    }

    @Override
    void close();
}
