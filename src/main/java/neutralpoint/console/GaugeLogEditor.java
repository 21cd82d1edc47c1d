package neutralpoint.console;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import neutralpoint.document.BadInput;
import neutralpoint.document.Decimals;
import neutralpoint.document.Node;
import neutralpoint.document.Where;
import neutralpoint.job.GaugeLog;
import neutralpoint.job.GaugeReading;
import neutralpoint.job.Job;

/** The pressure gauge over time in a call-out: readings typed or pasted, each saved at once. */
final class GaugeLogEditor {
    private static final List<String> COMMANDS = List.of("table", "remove", "done", "leave", "help");
    private static final String SHAPE = "a reading is pressure, water temperature and time, as in 1.2 bar, 15 C, 2026-11-02 08:00, or now";
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Screen screen;
    private final JobSaver record;
    private final Supplier<LocalDateTime> clock;
    private Job job;
    private boolean left;

    GaugeLogEditor(Screen screen, JobSaver record, Job job, Supplier<LocalDateTime> clock) {
        this.screen = screen;
        this.record = record;
        this.job = job;
        this.clock = clock;
    }

    /** Holds the desk until "done" or "leave"; the job as it then is. */
    Job run() {
        screen.heading("The pressure gauge over time");
        screen.say("A line each: pressure, water temperature, time, as in \"1.2 bar, 15 C, 2026-11-02 08:00\" or \"1.2, 15, now\"."
                + " \"done\" goes back.");
        table();
        left = EntryLoop.run(screen, "gauge> ", () -> COMMANDS, this::read);
        return record.withEmergencies(job);
    }

    /** True when the person left the call-out from here. */
    boolean isLeft() {
        return left;
    }

    private EntryLoop.Next read(String line, Where where) {
        String word = line.toLowerCase(Locale.ROOT);
        switch (word.startsWith("remove") ? "remove" : word) {
            case "done" -> {
                return EntryLoop.Next.DONE;
            }
            case "leave" -> {
                return EntryLoop.Next.LEAVE;
            }
            case "help" -> help();
            case "table" -> table();
            case "remove" -> remove(line.substring("remove".length()).strip());
            default -> reading(line, where);
        }
        return EntryLoop.Next.STAY;
    }

    private void reading(String line, Where where) {
        String[] cells = line.split(line.contains("\t") ? "\t" : line.contains(";") ? ";" : ",", -1);
        if (cells.length < 2 || cells.length > 3) {
            throw new BadInput(where, SHAPE + ".");
        }
        String time = cells.length == 3 ? cells[2].strip() : "now";
        Node.Fields row = Node.noFields(where);
        put(row, "at", time.equalsIgnoreCase("now") ? now().toString() : time.replaceFirst("\\s+", "T"));
        put(row, "bar", cells[0].strip());
        put(row, "waterCelsius", cells[1].strip());
        GaugeReading reading = GaugeLog.reading(row);
        if (reading.at().isAfter(now())) {
            throw new BadInput(where, SHOWN.format(reading.at()) + " is still to come; give the time at which the gauge was read.");
        }
        List<GaugeReading> readings = new ArrayList<>(job.gauge());
        boolean replaced = readings.removeIf(r -> r.at().equals(reading.at()));
        readings.add(reading);
        keep(readings);
        screen.say((replaced ? "Replaced " : "Kept ") + shown(reading) + ".");
    }

    private LocalDateTime now() {
        return clock.get().truncatedTo(ChronoUnit.MINUTES);
    }

    private static void put(Node.Fields row, String field, String text) {
        row.fields().put(field, new Node.Text(row.where(), text));
        row.names().put(field, row.where());
    }

    private void remove(String number) {
        if (!number.matches("\\d{1,4}") || Integer.parseInt(number) < 1 || Integer.parseInt(number) > job.gauge().size()) {
            throw new BadInput("Type \"remove\" and the number of a reading in the table"
                    + (job.gauge().isEmpty() ? ", which is empty." : ", 1 to " + job.gauge().size() + "."));
        }
        List<GaugeReading> readings = new ArrayList<>(job.gauge());
        GaugeReading gone = readings.remove(Integer.parseInt(number) - 1);
        keep(readings);
        screen.say("Removed " + shown(gone) + ".");
    }

    private void keep(List<GaugeReading> readings) {
        job = record.withEmergencies(job).withGauge(readings);
        record.keep(job);
    }

    private void table() {
        if (job.gauge().isEmpty()) {
            screen.say("No reading is in the table yet.");
        }
        for (int i = 0; i < job.gauge().size(); i++) {
            screen.line(String.format("%3d  %s", i + 1, shown(job.gauge().get(i))));
        }
    }

    private static String shown(GaugeReading r) {
        return SHOWN.format(r.at()) + ", " + Decimals.given(r.bar()) + " bar, water at " + Decimals.given(r.waterCelsius()) + " C";
    }

    private void help() {
        List.of("PRESSURE, WATER TEMPERATURE, TIME: a reading; without a time it is of now", "several lines pasted together: each is read on its own",
                "a unit beside a figure: 17 psi, 60 °F; otherwise bar and degrees C", "remove NUMBER: takes a reading out",
                "table: the readings", "done: back to the questions", "0 or emergency: it went wrong; what to do now", "leave: keep the job and stop").forEach(l -> screen.say("  " + l));
    }
}
