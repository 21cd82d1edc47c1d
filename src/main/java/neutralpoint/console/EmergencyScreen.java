package neutralpoint.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A screen at whose every prompt an emergency can be told; afterwards the very prompt that was left stands there again. A prompt
 * that itself offers the word is told when an emergency is over, and asks what is now to be asked.
 */
final class EmergencyScreen implements Screen {
    private final Screen screen;
    private final EmergencyDialogue desk;
    /** What was asked last, to be shown again; nothing once other text has been printed. */
    private String asked = "";
    private String said = "";

    EmergencyScreen(Screen screen, EmergencyDialogue desk) {
        this.screen = screen;
        this.desk = desk;
    }

    @Override
    public Optional<String> ask(String prompt, List<String> words) {
        List<String> offered = new ArrayList<>(words);
        if (!offered.contains(EmergencyDialogue.WORD)) {
            offered.add(EmergencyDialogue.WORD);
        }
        while (true) {
            Optional<String> line = screen.ask(prompt, offered);
            if (line.filter(EmergencyDialogue::isCalled).isEmpty()) {
                return line;
            }
            String typed = line.get();
            if (!desk.run(typed)) {
                return Optional.empty();
            }
            if (words.contains(EmergencyDialogue.WORD) && EmergencyDialogue.isOver(typed)) {
                // What is asked hangs on the stop that may be gone now; the conversation itself goes on from there.
                return Optional.of(EmergencyDialogue.WORD);
            }
            if (!asked.isEmpty()) {
                screen.heading(asked);
            }
            if (!said.isEmpty()) {
                screen.say(said);
            }
        }
    }

    @Override
    public void say(String words) {
        said = words;
        screen.say(words);
    }

    @Override
    public void line(String text) {
        asked = "";
        said = "";
        screen.line(text);
    }

    @Override
    public void heading(String words) {
        asked = words;
        said = "";
        screen.heading(words);
    }

    @Override
    public int width() {
        return screen.width();
    }

    @Override
    public boolean colour() {
        return screen.colour();
    }

    @Override
    public void close() {
        screen.close();
    }
}
