package neutralpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Closure;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Emergency;
import neutralpoint.job.Job;

/**
 * What to do in this house when something goes wrong at work. Made from the catalogue and the job alone, so that it
 * is there at once, and from the same steps as the danger has on every other page.
 */
public final class EmergencyPage {
    private final Emergency emergency;
    private final Catalogue catalogue;
    private final Job job;
    private final Set<String> traits;

    private EmergencyPage(Emergency emergency, Catalogue catalogue, Job job, Set<String> traits) {
        this.emergency = emergency;
        this.catalogue = catalogue;
        this.job = job;
        this.traits = traits;
    }

    /**
     * The lines of the page, each to be wrapped with its own indent; the first is its heading.
     *
     * @param traits what is certain of the system; empty while nothing has been weighed
     */
    public static List<String> of(Emergency emergency, Catalogue catalogue, Job job, Set<String> traits) {
        return new EmergencyPage(emergency, catalogue, job, traits).lines();
    }

    private List<String> lines() {
        List<Danger> dangers = dangers();
        List<String> lines = new ArrayList<>(List.of("NOW: " + emergency.say()));
        if (dangers.size() > 1) {
            lines.add("First " + dangers.stream().map(d -> d.title().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", then ")) + ".");
        }
        lines.addAll(steps(dangers));
        dangers.stream().map(StopLines::who).distinct().forEach(lines::add);
        if (emergency.reopen() == Emergency.Reopen.NOW) {
            lines.addAll(reopened());
        }
        dangers.stream().flatMap(d -> StopLines.never(d).stream()).distinct().forEach(lines::add);
        if (emergency.reopen() == Emergency.Reopen.BEFORE_HEAT) {
            line(lines, "Before anything heats again, open what you have shut: ", c -> !c.isRecordedShut(job));
            line(lines, "Recorded as shut, and to be opened before anything heats: ", c -> c.isRecordedShut(job));
        }
        dangers.forEach(d -> lines.add("Over when: " + d.over()));
        lines.add("Then type \"emergency over\". Until then the stop stands.");
        return lines;
    }

    /** What it may be, the worst first. */
    private List<Danger> dangers() {
        Set<String> told = standing();
        return catalogue.dangers().values().stream().filter(d -> told.contains(d.id())).toList();
    }

    /** What stands with it, by its ids: it may be any of the dangers it tells. */
    private Set<String> standing() {
        return emergency.tells(job, traits).stream().map(Emergency.Tells::danger).collect(Collectors.toSet());
    }

    /** The steps of each danger; what two of them ask for is said in both, for only one of them may be read. */
    private List<String> steps(List<Danger> dangers) {
        List<String> lines = new ArrayList<>();
        for (Danger danger : dangers) {
            if (dangers.size() > 1) {
                lines.add(danger.title() + ":");
            }
            int number = 1;
            for (Danger.Act act : danger.now(job, traits, standing())) {
                lines.add(String.format("%3d  %s", number++, act.says()));
            }
        }
        return lines;
    }

    private List<String> reopened() {
        List<String> lines = new ArrayList<>();
        line(lines, "Recorded as shut, open it now: ", c -> c.isRecordedShut(job) && byHand(c));
        line(lines, "If you have shut one of these, open it now: ", c -> !c.isRecordedShut(job) && byHand(c));
        line(lines, "Recorded as shut, to be opened only when it is cold: ", c -> c.isRecordedShut(job) && !byHand(c));
        line(lines, "If you have shut one of these, open it when it is cold: ", c -> !c.isRecordedShut(job) && !byHand(c));
        return lines;
    }

    private static boolean byHand(Closure closure) {
        return closure.reopening().filter(Closure.Reopening::byHand).isPresent();
    }

    /** What gives relief in this house and is named with its place, where there is any. */
    private void line(List<String> lines, String begin, Predicate<Closure> wanted) {
        String named = catalogue.closures().values().stream().filter(c -> c.mayRelieve(job, traits)).filter(wanted)
                .map(c -> c.title() + " (" + c.reopening().orElseThrow().place() + ")").collect(Collectors.joining(", "));
        if (!named.isEmpty()) {
            lines.add(begin + named + ".");
        }
    }
}
