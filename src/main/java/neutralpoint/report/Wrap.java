package neutralpoint.report;

import org.apache.commons.text.WordUtils;

/** Paragraphs wrapped to a width, with an indent for the first line and another for the rest. */
public final class Wrap {
    private Wrap() {}

    public static String to(int width, String first, String rest, String words) {
        int indent = Math.max(first.length(), rest.length());
        return first + WordUtils.wrap(words.stripTrailing(), width - indent, "\n", true).replace("\n", "\n" + rest);
    }

    /** Wraps with the indent the words already begin with, the following lines two columns deeper. */
    public static String keepingIndent(int width, String words) {
        String indent = words.substring(0, words.length() - words.stripLeading().length());
        return to(width, indent, indent.isEmpty() ? "" : indent + "   ", words.stripLeading());
    }
}
