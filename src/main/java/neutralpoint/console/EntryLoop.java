package neutralpoint.console;

import java.util.Iterator;
import java.util.List;
import java.util.function.Supplier;
import neutralpoint.document.BadInput;
import neutralpoint.document.Where;

/** A place in a call-out where lines are entered one after another, typed or pasted together, until there are no more. */
final class EntryLoop {
    private EntryLoop() {}

    /** What follows a line. */
    enum Next { STAY, DONE, LEAVE }

    /** What a desk makes of a line that is not blank. */
    interface EntryLines {

        /**
         * @param where what a message calls the line
         * @throws BadInput for a line that cannot be used; it is shown, and the lines after it are read all the same
         */
        Next read(String line, Where where);
    }

    /**
     * Reads lines until one ends it.
     *
     * @param words what Tab may complete to
     * @return true when the person leaves the call-out as well
     */
    static boolean run(Screen screen, String prompt, Supplier<List<String>> words, EntryLines lines) {
        Next next = Next.STAY;
        while (next == Next.STAY) {
            next = screen.ask(prompt, words.get())
                    .map(typed -> read(screen, typed.lines().map(String::strip).toList(), lines)).orElse(Next.LEAVE);
        }
        return next == Next.LEAVE;
    }

    private static Next read(Screen screen, List<String> typed, EntryLines lines) {
        Next next = Next.STAY;
        int number = 0;
        for (Iterator<String> rest = typed.iterator(); rest.hasNext() && next == Next.STAY; ) {
            String line = rest.next();
            number++;
            try {
                next = line.isEmpty() ? Next.STAY : lines.read(line, where(typed, number));
            } catch (BadInput e) {
                screen.say(e.getMessage());
            }
        }
        if (number < typed.size()) {
            screen.say("What was pasted below \"" + typed.get(number - 1) + "\" was not read.");
        }
        return next;
    }

    private static Where where(List<String> typed, int number) {
        return typed.size() > 1 ? new Where("what you pasted", number) : new Where("your line", 0);
    }
}
