package neutralpoint.console;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalExt;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;

/** A screen on a JLine terminal; plain when asked, when piped, or when the terminal is dumb. */
public final class TerminalScreen implements Screen {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 100;
    private static final int USUAL = 80;

    private final Terminal terminal;
    private final boolean colour;
    private List<String> words = List.of();
    private final LineReader reader;

    TerminalScreen(Terminal terminal, boolean colour) {
        this.terminal = terminal;
        this.colour = colour;
        this.reader = LineReaderBuilder.builder().terminal(terminal)
                .completer((line, parsed, found) -> new StringsCompleter(words).complete(line, parsed, found))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .variable(LineReader.DISABLE_HISTORY, true)
                .variable(LineReader.BELL_STYLE, "none")
                .build();
    }

    /**
     * @param plain no colour and no styling at all
     */
    public static TerminalScreen open(boolean plain) {
        try {
            // Probing the terminal for grapheme clusters would wait half a second on one that does not answer.
            Terminal terminal = TerminalBuilder.builder().system(true).dumb(true).graphemeCluster(false).build();
            boolean dumb = terminal.getType().startsWith(Terminal.TYPE_DUMB);
            return new TerminalScreen(terminal, !plain && !dumb && System.getenv("NO_COLOR") == null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * How a report is shown on standard output: with colour on a terminal that has it, and no wider than that.
     *
     * @param plain no colour in any case
     * @param width columns where it is no terminal, and at most
     */
    @SuppressWarnings("SystemConsoleNull")
    public static DisplayOptions standardOutput(boolean plain, int width) {
        if (System.console() == null) {
            return DisplayOptions.plain(width);
        }
        try (TerminalScreen screen = open(plain)) {
            // With output piped away the terminal found is that of the messages.
            return screen.terminal instanceof TerminalExt system && system.getSystemStream() == SystemStream.Output
                    ? new DisplayOptions(Math.min(width, screen.width() - 1), screen.colour) : DisplayOptions.plain(width);
        }
    }

    /** True when what is written to standard error is seen on a terminal. */
    public static boolean isErrorSeen() {
        return TerminalBuilder.builder().getProviders(null, new IllegalStateException()).stream()
                .anyMatch(provider -> provider.isSystemStream(SystemStream.Error));
    }

    @Override
    public void say(String paragraph) {
        line(Wrap.keepingIndent(width() - 1, paragraph));
    }

    @Override
    public void line(String text) {
        terminal.writer().println(text);
        terminal.flush();
    }

    @Override
    public void heading(String text) {
        String wrapped = Wrap.keepingIndent(width() - 1, text);
        line("");
        line(colour ? new AttributedString(wrapped, AttributedStyle.BOLD).toAnsi(terminal) : wrapped);
    }

    @Override
    public Optional<String> ask(String prompt, List<String> completions) {
        words = completions;
        try {
            return Optional.of(reader.readLine(prompt).strip());
        } catch (UserInterruptException | EndOfFileException e) {
            return Optional.empty();
        }
    }

    @Override
    public int width() {
        int columns = terminal.getSize().getColumns();
        return columns <= 0 ? USUAL : Math.max(NARROWEST, Math.min(WIDEST, columns));
    }

    @Override
    public boolean colour() {
        return colour;
    }

    @Override
    public void close() {
        try {
            terminal.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
