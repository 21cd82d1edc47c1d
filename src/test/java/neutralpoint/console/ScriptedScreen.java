package neutralpoint.console;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

/** A screen whose lines are typed by a script and which remembers all it showed. The script's end is the end of input. */
class ScriptedScreen implements Screen {
    private enum Kind { SHOWN, HEADING, TYPED }

    private record Entry(Kind kind, String text) {}

    private final Queue<String> script;
    private final List<Entry> entries = new ArrayList<>();
    private List<String> offered = List.of();

    ScriptedScreen(String... typed) {
        script = new ArrayDeque<>(List.of(typed));
    }

    @Override
    public void say(String words) {
        entries.add(new Entry(Kind.SHOWN, words));
    }

    @Override
    public void line(String text) {
        entries.add(new Entry(Kind.SHOWN, text));
    }

    @Override
    public void heading(String words) {
        entries.add(new Entry(Kind.HEADING, words));
    }

    @Override
    public Optional<String> ask(String prompt, List<String> words) {
        offered = words;
        Optional<String> typed = Optional.ofNullable(script.poll());
        entries.add(new Entry(Kind.TYPED, typed.orElse("(end of input)")));
        return typed;
    }

    @Override
    public int width() {
        return 80;
    }

    @Override
    public boolean colour() {
        return false;
    }

    @Override
    public void close() {}

    /** Every heading in the order shown: questions and stops. */
    List<String> headings() {
        return entries.stream().filter(e -> e.kind() == Kind.HEADING).map(Entry::text).toList();
    }

    /** Everything shown between this line, when it was first typed, and the next prompt. */
    List<String> after(String typed) {
        int from = entries.indexOf(new Entry(Kind.TYPED, typed)) + 1;
        if (from == 0) {
            throw new IllegalArgumentException("\"" + typed + "\" was never typed");
        }
        return entries.subList(from, entries.size()).stream().takeWhile(e -> e.kind() != Kind.TYPED).map(Entry::text).toList();
    }

    /** The words that Tab offered at the last prompt. */
    List<String> offered() {
        return offered;
    }
}
