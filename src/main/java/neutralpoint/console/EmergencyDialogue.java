package neutralpoint.console;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Emergency;
import neutralpoint.job.EmergencyTold;
import neutralpoint.job.Job;
import neutralpoint.report.EmergencyPage;
import neutralpoint.report.text.Wrap;

/** It went wrong: one question, and what to do in this house, page by page. Waits for nothing but the keyboard. */
final class EmergencyDialogue {
    static final String WORD = "emergency";
    /** Rows of one page with its prompt, so that its beginning is still to be seen on a small screen. */
    static final int ROWS = 20;
    private static final String KEY = "0";
    private static final String BACK = "back";
    private static final String OVER = "over";

    private final Screen screen;
    private final Catalogue catalogue;
    private final Log log;
    private final Supplier<LocalDateTime> clock;

    /** The job as far as it goes, and its log of emergencies, which only grows. */
    interface Log {
        Job job();

        /** What is certain of the system by the last weighing; empty before it. */
        Set<String> traits();

        void add(EmergencyTold told);
    }

    EmergencyDialogue(Screen screen, Catalogue catalogue, Log log, Supplier<LocalDateTime> clock) {
        this.screen = screen;
        this.catalogue = catalogue;
        this.log = log;
        this.clock = clock;
    }

    /** True when what was typed ends an emergency. */
    static boolean isOver(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT).startsWith(WORD + " " + OVER);
    }

    /** True for the key and the word, whatever follows it. */
    static boolean isCalled(String typed) {
        return typed.equals(KEY) || typed.split("\\s+", 2)[0].equalsIgnoreCase(WORD);
    }

    /**
     * Holds the desk for what was typed.
     *
     * @return false when the person leaves the call-out from here
     */
    boolean run(String typed) {
        String rest = typed.equals(KEY) ? "" : typed.substring(WORD.length()).strip();
        Optional<Boolean> done = rest.isEmpty() ? Optional.empty() : answered(rest);
        if (done.isEmpty() && !rest.isEmpty()) {
            again(rest);
        }
        while (done.isEmpty()) {
            question();
            Optional<String> line = screen.ask("emergency> ", words());
            if (line.isEmpty()) {
                return false;
            }
            String answer = line.get();
            done = answer.equalsIgnoreCase(BACK) ? Optional.of(true) : answered(answer);
            if (done.isEmpty()) {
                again(answer);
            }
        }
        return done.get();
    }

    /** Deals with an answer to the question; empty when it is none. */
    private Optional<Boolean> answered(String answer) {
        String[] parts = answer.strip().split("\\s+", 2);
        if (parts[0].equalsIgnoreCase(OVER)) {
            over(parts.length > 1 ? parts[1] : "");
            return Optional.of(true);
        }
        return Emergency.meant(all(), answer).map(this::tell);
    }

    private void question() {
        screen.heading("What has happened?");
        for (int i = 0; i < all().size(); i++) {
            screen.say(String.format("%3d  %s", i + 1, all().get(i).say()));
        }
        screen.say("A number or a word; \"back\" if nothing has." + standing());
    }

    private String standing() {
        Set<String> standing = log.job().emergenciesStanding();
        return standing.isEmpty() ? "" : " \"over\" ends: " + String.join(", ", standing) + ".";
    }

    private void again(String answer) {
        screen.say((answer.isEmpty() ? "Nothing was typed" : "\"" + answer + "\" is none of these") + "; type 1 to " + all().size()
                + ", a word of it, or \"back\".");
    }

    private boolean tell(Emergency emergency) {
        List<List<String>> pages = pages(EmergencyPage.of(emergency, catalogue, log.job(), log.traits()), screen.width() - 1);
        show(pages.get(0));
        log.add(new EmergencyTold(clock.get().truncatedTo(ChronoUnit.MINUTES), emergency.id(), false));
        int page = 0;
        while (true) {
            boolean last = page == pages.size() - 1;
            Optional<String> line = screen.ask(last ? "Enter goes back> " : "Enter for more> ", List.of(BACK, WORD));
            if (line.isEmpty()) {
                return false;
            }
            String typed = line.get();
            if (isCalled(typed)) {
                return run(typed);
            }
            if (typed.equalsIgnoreCase(BACK) || typed.isEmpty() && last) {
                return true;
            }
            if (typed.isEmpty()) {
                page++;
                show(pages.get(page));
            } else {
                screen.say("Enter goes on and \"back\" leaves this page; then answer.");
            }
        }
    }

    private void show(List<String> page) {
        screen.heading(page.get(0));
        page.stream().skip(1).forEach(screen::say);
    }

    /** Lines put together to pages; each after the first says what it goes on with. */
    static List<List<String>> pages(List<String> lines, int width) {
        List<List<String>> pages = new ArrayList<>();
        List<String> page = new ArrayList<>();
        int rows = 0;
        for (int i = 0; i < lines.size(); i++) {
            // A blank row above the heading and the prompt belong to the page.
            int room = ROWS - 2 - rows;
            int section = rows(sectionAt(lines, i), width);
            if (!page.isEmpty() && (rows(List.of(lines.get(i)), width) > room || section > room && section < ROWS - 2)) {
                pages.add(page);
                page = new ArrayList<>(List.of(lines.get(0) + ", continued"));
                rows = rows(page, width);
            }
            page.add(lines.get(i));
            rows += rows(List.of(lines.get(i)), width);
        }
        pages.add(page);
        return pages;
    }

    /** The name of a danger with the steps below it, so that they are not torn apart; for any other line itself. */
    private static List<String> sectionAt(List<String> lines, int at) {
        int end = at + 1;
        while (lines.get(at).endsWith(":") && end < lines.size() && lines.get(end).startsWith(" ")) {
            end++;
        }
        return lines.subList(at, end);
    }

    private static int rows(List<String> lines, int width) {
        return lines.stream().mapToInt(line -> (int) Wrap.keepingIndent(width, line).lines().count()).sum();
    }

    private void over(String word) {
        List<String> standing = List.copyOf(log.job().emergenciesStanding());
        Optional<String> meant = Emergency.meant(all(), word).map(Emergency::id).filter(standing::contains);
        if (standing.isEmpty()) {
            screen.say("No emergency stands.");
        } else if (meant.isEmpty() && (!word.isBlank() || standing.size() > 1)) {
            screen.say("Say which is over, such as \"emergency over " + standing.get(0) + "\"; these stand: " + String.join(", ", standing) + ".");
        } else {
            String id = meant.orElse(standing.get(0));
            log.add(new EmergencyTold(clock.get().truncatedTo(ChronoUnit.MINUTES), id, true));
            screen.say("Kept as over: " + catalogue.emergency(id).say() + ". That holds only if this is so:");
            catalogue.dangersOf(catalogue.emergency(id), log.job(), log.traits()).stream().map(Danger::over).forEach(screen::say);
        }
    }

    private List<Emergency> all() {
        return List.copyOf(catalogue.emergencies().values());
    }

    private List<String> words() {
        List<String> words = new ArrayList<>(catalogue.emergencies().keySet());
        words.addAll(List.of(BACK, OVER));
        return words.stream().map(w -> w.toLowerCase(Locale.ROOT)).toList();
    }
}
