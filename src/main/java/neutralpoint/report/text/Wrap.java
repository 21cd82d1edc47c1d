package neutralpoint.report.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.WordUtils;

/** Paragraphs wrapped to a width, with an indent for the first line and another for the rest. */
public final class Wrap {
    private static final Pattern BEGIN = Pattern.compile("^\\s*(?:\\d+\\s{2})?");

    private Wrap() {}

    public static String to(int width, String first, String rest, String words) {
        int indent = Math.max(first.length(), rest.length());
        return first + WordUtils.wrap(words.stripTrailing(), width - indent, "\n", true).replace("\n", "\n" + rest);
    }

    /** Wraps with the indent the words already begin with; a number and two blanks belong to it. */
    public static String keepingIndent(int width, String words) {
        Matcher begin = BEGIN.matcher(words);
        String indent = begin.find() ? begin.group() : "";
        boolean numbered = !indent.isBlank();
        String rest = indent.isEmpty() || numbered ? " ".repeat(indent.length()) : indent + "   ";
        return to(width, indent, rest, words.substring(indent.length()));
    }
}
