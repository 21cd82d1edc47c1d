package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.When;
import neutralpoint.document.Lookup;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.DangerAsks;
import neutralpoint.rulebase.fact.DangerClears;
import neutralpoint.rulebase.fact.DangerStands;
import neutralpoint.rulebase.fact.Stop;

/** From the stops that rules conclude to the dangers that stand, each once, the worst first. */
final class StandingDangers {
    private StandingDangers() {}

    /** The dangers in the order of the catalogue; one that a rule refers is referred, whatever another says. */
    static List<Assessment.StopFound> standing(List<Derived<Stop>> stops, Catalogue catalogue, Job known, Set<String> traits) {
        Map<String, List<Derived<Stop>>> byDanger = stops.stream()
                .collect(Collectors.groupingBy(s -> s.fact().danger(), TreeMap::new, Collectors.toList()));
        List<Assessment.StopFound> standing = catalogue.dangers().values().stream().filter(d -> byDanger.containsKey(d.id())).map(d -> {
            List<Derived<Stop>> raised = Lookup.known(byDanger, d.id());
            Stop stop = raised.stream().map(Derived::fact).filter(Stop::isReferral).findFirst().orElse(raised.get(0).fact());
            return new Assessment.StopFound(d, stop.course(), d.now(known, traits, byDanger.keySet()), d.clearing(known, traits),
                    raised.stream().map(Derived::rule).distinct().toList());
        }).toList();
        return standing.stream().filter(s -> s.danger().houseIsLeft()).findFirst()
                .map(left -> standing.stream().map(s -> s.danger().houseIsLeft() ? s : waiting(s, left)).toList()).orElse(standing);
    }

    /** Nobody goes back into a house that is left, for whatever else stands there. */
    private static Assessment.StopFound waiting(Assessment.StopFound stop, Assessment.StopFound left) {
        Danger.Act wait = new Danger.Act("Go back in for nothing else before this is over: " + left.title().toLowerCase(Locale.ROOT) + ".",
                "Nobody has gone back in.", When.ALWAYS);
        return new Assessment.StopFound(stop.danger(), stop.course(), List.of(wait), stop.clearing(), stop.rules());
    }

    static List<DangerStands> facts(List<Assessment.StopFound> stops) {
        return stops.stream().map(s -> new DangerStands(s.id(), s.isReferral(), s.danger().heat().isOff())).toList();
    }

    /** What the dangers ask for, the worst danger first, each step after all before it; said once where two ask for the same. */
    static List<DangerAsks> asks(List<Assessment.StopFound> stops) {
        List<DangerAsks> asks = new ArrayList<>();
        List<String> before = new ArrayList<>();
        boolean heatOff = stops.stream().anyMatch(s -> s.danger().heat().isOff());
        for (Assessment.StopFound stop : stops) {
            int number = 1;
            for (Danger.Act act : stop.now()) {
                String step = stop.id() + "-" + number++;
                if (asks.stream().noneMatch(a -> a.says().equals(act.says()))) {
                    asks.add(new DangerAsks(stop.id(), step, List.copyOf(before), act.says(), act.proves(), heatOff));
                    before.add(step);
                }
            }
        }
        return asks;
    }

    /** What clears the dangers on site, in order; nothing where any of them is referred. */
    static List<DangerClears> clears(List<Assessment.StopFound> stops) {
        if (stops.stream().anyMatch(Assessment.StopFound::isReferral)) {
            return List.of();
        }
        List<DangerClears> clears = new ArrayList<>();
        List<String> asked = asks(stops).stream().map(DangerAsks::step).toList();
        for (Assessment.StopFound stop : stops) {
            List<String> before = new ArrayList<>(asked);
            for (int i = 0; i < stop.clearing().size(); i++) {
                Danger.Clearing c = stop.clearing().get(i);
                String step = stop.id() + "-over-" + (i + 1);
                clears.add(new DangerClears(stop.id(), step, List.copyOf(before), c.says(), c.proves(), c.tools(), c.minutes(), c.first(),
                        i == stop.clearing().size() - 1));
                before.add(step);
            }
        }
        return clears;
    }

    /** Who comes for the dangers that stand, and when each is over. */
    static String whoComes(List<Assessment.StopFound> stops) {
        return stops.stream().map(s -> "For \"" + s.title() + "\" comes " + s.danger().who() + ". " + s.danger().over())
                .collect(Collectors.joining(" "));
    }
}
