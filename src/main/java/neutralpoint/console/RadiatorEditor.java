package neutralpoint.console;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import neutralpoint.document.BadInput;
import neutralpoint.document.Decimals;
import neutralpoint.document.Nearest;
import neutralpoint.document.Where;
import neutralpoint.job.Job;
import neutralpoint.job.Radiator;
import neutralpoint.job.RadiatorCsv;
import neutralpoint.job.RadiatorTable;
import neutralpoint.report.RadiatorSheet;
import neutralpoint.report.chart.HeatStrip;
import neutralpoint.workings.SurveyedRadiator;

/** The table of radiators in a call-out: rows typed, pasted, imported, replaced and removed, each saved at once. */
final class RadiatorEditor {
    private static final List<String> COMMANDS = List.of("table", "strips", "import", "remove", "done", "leave", "help");

    private final Screen screen;
    private final JobSaver record;
    private Job job;
    private boolean left;

    RadiatorEditor(Screen screen, JobSaver record, Job job) {
        this.screen = screen;
        this.record = record;
        this.job = job;
    }

    /** Holds the desk until "done" or "leave"; the job as it then is. */
    Job run() {
        screen.heading("Radiators of this house");
        screen.say("A line each: name, floor, top, base, flow tail, return tail, as in \"lounge, ground, 68, 41, 70, 58\"."
                + " \"done\" goes back, \"help\" lists what else you can type.");
        table();
        left = EntryLoop.run(screen, "radiators> ", this::words, this::read);
        strips();
        return record.withEmergencies(job);
    }

    /** True when the person left the call-out from here. */
    boolean isLeft() {
        return left;
    }

    private List<String> words() {
        List<String> words = new ArrayList<>(COMMANDS);
        job.radiators().forEach(r -> words.add(r.name()));
        return words;
    }

    private EntryLoop.Next read(String line, Where where) {
        String[] parts = line.split("\\s+", 2);
        String rest = parts.length > 1 ? parts[1] : "";
        switch (rest.isEmpty() ? line.toLowerCase(Locale.ROOT) : parts[0].toLowerCase(Locale.ROOT) + " …") {
            case "done" -> {
                return EntryLoop.Next.DONE;
            }
            case "leave" -> {
                return EntryLoop.Next.LEAVE;
            }
            case "help" -> help();
            case "table" -> table();
            case "strips" -> strips();
            case "import" -> throw new BadInput("Type \"import\" and the name of a table, such as \"import survey.csv\".");
            case "import …" -> importFrom(rest);
            case "remove" -> throw new BadInput("Type \"remove\" and the name of a radiator.");
            case "remove …" -> remove(rest);
            default -> row(line, where);
        }
        return EntryLoop.Next.STAY;
    }

    private void row(String line, Where where) {
        TypedRow typed = TypedRow.of(line, where);
        Optional<Radiator> before = find(typed.name());
        Radiator radiator = RadiatorTable.read(List.of(typed.over(before))).get(0);
        List<Radiator> radiators = new ArrayList<>(job.radiators());
        before.map(radiators::indexOf).ifPresentOrElse(at -> radiators.set(at, radiator), () -> radiators.add(radiator));
        keep(radiators);
        screen.say((before.isPresent() ? "Replaced " : "Kept ") + inWords(radiator));
    }

    private void importFrom(String name) {
        Path file = Path.of(name);
        Path beside = record.file().toAbsolutePath().resolveSibling(name);
        List<Radiator> rows = RadiatorCsv.read(Files.exists(file) || !Files.exists(beside) ? file : beside);
        long replaced = rows.stream().filter(r -> job.radiators().stream().anyMatch(o -> o.name().equals(r.name()))).count();
        keep(RadiatorTable.together(job.radiators(), rows));
        screen.say(rows.size() + (rows.size() == 1 ? " row" : " rows") + " read from " + name
                + (replaced == 0 ? "." : ", " + replaced + " in place of rows of the same name."));
        table();
    }

    private void remove(String name) {
        Radiator gone = find(name).orElseThrow(() -> new BadInput("There is no radiator \"" + name + "\""
                + Nearest.hint(name, job.radiators().stream().map(Radiator::name).toList())));
        keep(job.radiators().stream().filter(r -> !r.equals(gone)).toList());
        screen.say("Removed " + inWords(gone));
    }

    /** A radiator by its name, or by its name in other capitals. */
    private Optional<Radiator> find(String name) {
        return job.radiators().stream().filter(r -> r.name().equals(name)).findFirst()
                .or(() -> job.radiators().stream().filter(r -> r.name().equalsIgnoreCase(name)).findFirst());
    }

    private void keep(List<Radiator> radiators) {
        job = record.withEmergencies(job).withRadiators(radiators);
        record.keep(job);
    }

    private void table() {
        if (job.radiators().isEmpty()) {
            screen.say("No radiator is in the table yet.");
        } else {
            screen.line(RadiatorSheet.of(job, screen.width() - 1).stripTrailing());
        }
    }

    private void strips() {
        String strips = HeatStrip.of(job, screen.look());
        if (!strips.isEmpty()) {
            screen.line(strips.stripTrailing());
        }
    }

    private void help() {
        List.of("NAME, FLOOR, TOP, BASE, FLOW TAIL, RETURN TAIL: a row, or fresh figures for a row; the floor and what comes last may be left out",
                "NAME, top=68, type=type-22, height=600, length=1200, run=9, leg=front, valves=open: any column by its name; a blank one is cleared",
                "a unit beside a figure: 154 °F, 24 in; otherwise degrees C, mm, and m for the run",
                "several lines pasted together: each is read on its own",
                "import FILE.csv: rows from a spreadsheet", "remove NAME: takes a row out", "table: the rows", "strips: top to base as strips",
                "done: back to the questions", "0 or emergency: it went wrong; what to do now", "leave: keep the job and stop").forEach(l -> screen.say("  " + l));
    }

    /** Everything known of a radiator in one line, with what its readings say. */
    private String inWords(Radiator radiator) {
        String state = SurveyedRadiator.of(job.withRadiators(List.of(radiator))).stream().map(r -> ": " + r.stateShown() + ".")
                .findFirst().orElse(".");
        return RadiatorTable.fields(radiator).entrySet().stream()
                .filter(e -> !e.getValue().equals("unknown"))
                .map(e -> shown(e.getKey(), e.getValue())).collect(Collectors.joining(", ")) + state;
    }

    private static String shown(String field, Object value) {
        String title = RadiatorTable.COLUMNS.stream().filter(c -> c.field().equals(field)).findFirst().orElseThrow().title();
        String text = value instanceof Double d ? Decimals.given(d) : value.toString();
        return List.of("name", "floor", "type").contains(field) ? text : title + " " + text;
    }
}
