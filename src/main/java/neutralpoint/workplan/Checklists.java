package neutralpoint.workplan;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.catalogue.ChecklistItem;
import neutralpoint.job.Job;
import neutralpoint.workplan.figures.Figure;
import neutralpoint.workplan.figures.House;
import neutralpoint.workplan.figures.JobScope;
import neutralpoint.workplan.figures.Quantities;

/**
 * The lists that go with a plan, with the sizes and figures of the house put in.
 *
 * @param bring       tools, fittings, chemicals, sheets and meters
 * @param agree       what to tell and agree with the customer beforehand
 * @param recordFirst what to record before starting
 * @param restore     what to restore at the end
 */
public record Checklists(List<String> bring, List<String> agree, List<String> recordFirst, List<String> restore) {
    private static final Pattern BRACES = Pattern.compile("\\{([a-z-]+)}");
    private static final String NOT_KNOWN = "not worked out yet, see what to measure";

    /**
     * @param lines   as catalogued; those that fit the job are taken, in their order
     * @param answered the causes that the work answers
     * @param dangers ids of the dangers that stand
     * @param heatOff true while a danger keeps the heat off: nothing is asked for that wants it on
     */
    public static Checklists of(Collection<ChecklistItem> lines, Job known, JobScope scope, Quantities quantities, Set<String> answered,
            Set<String> dangers, boolean heatOff) {
        House house = House.of(known);
        List<ChecklistItem> fitting = lines.stream().filter(l -> l.fits(scope.course(), scope.method(), scope.traits()))
                .filter(l -> l.fits(known, scope.traits(), answered, dangers, heatOff)).toList();
        return new Checklists(list(fitting, "bring", house, quantities), list(fitting, "agree", house, quantities),
                list(fitting, "record-first", house, quantities), list(fitting, "restore", house, quantities));
    }

    private static List<String> list(List<ChecklistItem> lines, String list, House house, Quantities quantities) {
        return lines.stream().filter(l -> l.list().equals(list)).map(l -> filled(l.says(), house, quantities)).toList();
    }

    private static String filled(String says, House house, Quantities quantities) {
        return BRACES.matcher(says).replaceAll(m -> Matcher.quoteReplacement(switch (m.group(1)) {
            case "largest" -> (long) house.largestPipe().outsideMillimetres() + " mm";
            case "tails" -> house.tails();
            default -> quantities.figure(m.group(1)).map(Figure::shown).orElse(NOT_KNOWN);
        }));
    }
}
