package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.rulebase.fact.FilledBy;
import neutralpoint.rulebase.fact.Pressure;
import neutralpoint.rulebase.fact.PressureLimit;
import neutralpoint.rulebase.fact.ReliefPath;
import neutralpoint.rulebase.fact.TapWater;
import neutralpoint.rulebase.fact.WaterPath;

/**
 * Where relief paths and waters meet in one house: the worst of what the path rules say, and their signs.
 *
 * @param relief   signs that the way from the heat source to the air is shut or in doubt
 * @param waters   signs that tap water and heating water are one, or may be
 * @param filling  signs that a loop and a loft tank both fill the heating
 * @param limitBar the least of the pressures its parts may see; empty while none is known
 */
public record WaterPaths(List<PathSign> relief, List<PathSign> waters, List<PathSign> filling, OptionalDouble limitBar) {
    private static final String RELIEF = "relief";
    private static final String WATERS = "waters";
    private static final String FILLING = "filling";

    /** What one rule says of a path. */
    public record PathSign(WaterPath.PathState state, String part, RuleInfo rule) {

        public boolean isDoubt() {
            return state == WaterPath.PathState.DOUBTFUL;
        }

        /** The one look that settles a doubt. */
        public String look() {
            return rule.note("look");
        }
    }

    static WaterPaths of(Session session) {
        List<Derived<WaterPath>> signs = session.all(WaterPath.class);
        return new WaterPaths(signs(signs, RELIEF), signs(signs, WATERS), signs(signs, FILLING),
                session.all(Pressure.class).stream().mapToDouble(p -> p.fact().bar()).min());
    }

    private static List<PathSign> signs(List<Derived<WaterPath>> all, String path) {
        return all.stream().filter(p -> p.fact().path().equals(path))
                .map(p -> new PathSign(p.fact().state(), p.fact().part(), p.rule())).distinct().toList();
    }

    /** open, doubtful or shut. */
    public String reliefState() {
        return worst(relief, "open", "shut");
    }

    /** apart, doubtful or shared. */
    public String watersState() {
        return worst(waters, "apart", "shared");
    }

    private static String worst(List<PathSign> signs, String best, String worst) {
        if (signs.isEmpty()) {
            return best;
        }
        return signs.stream().allMatch(PathSign::isDoubt) ? "doubtful" : worst;
    }

    /** What is in doubt: nothing of a path that is known to be shut or shared. */
    public List<PathSign> doubts() {
        return Stream.of(filling, relief, waters).filter(signs -> signs.stream().allMatch(PathSign::isDoubt)).flatMap(List::stream).toList();
    }

    /** For each doubt its reason, then the look that settles it. */
    public List<String> reasons() {
        return doubts().stream().flatMap(d -> Stream.of(d.rule().because(), d.look())).distinct().toList();
    }

    /** What the rules of later stages read. */
    List<Object> facts() {
        List<Object> facts = new ArrayList<>();
        facts.add(new ReliefPath(reliefState(), parts(relief)));
        facts.add(new TapWater(watersState(), parts(waters)));
        facts.add(new FilledBy(filling.isEmpty() ? "known" : "doubtful"));
        limitBar.ifPresent(bar -> facts.add(new PressureLimit(bar)));
        return facts;
    }

    private static Set<String> parts(List<PathSign> signs) {
        return signs.stream().filter(s -> !s.isDoubt()).map(PathSign::part).collect(Collectors.toCollection(TreeSet::new));
    }
}
