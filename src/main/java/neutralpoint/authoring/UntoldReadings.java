package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.Node;

/** What a house can be measured by and no danger uses: numbers, lists of a job file, and sums. */
final class UntoldReadings {
    private static final List<String> LISTS = List.of("radiators", "gauge", "emergencies");

    private UntoldReadings() {}

    /** A sentence for each; empty for the compiled catalogue, which has no ways. */
    static List<String> of(Catalogue catalogue, List<RuleText> rules) {
        List<Node.Fields> jobs = catalogue.dangers().values().stream().flatMap(d -> d.ways().stream()).map(w -> w.job().asFields()).toList();
        if (jobs.isEmpty()) {
            return List.of();
        }
        Set<String> told = jobs.stream().flatMap(j -> j.find("findings").stream()).flatMap(f -> f.asFields().fields().keySet().stream())
                .collect(Collectors.toSet());
        List<RuleText> stops = rules.stream().filter(r -> r.folder().equals("stop")).toList();
        Set<String> lookedAt = stops.stream().flatMap(r -> ReferenceCheck.findings(r).stream()).collect(Collectors.toSet());
        Set<String> limited = limited(stops);
        List<String> says = new ArrayList<>();
        catalogue.findings().values().stream().filter(f -> !f.workedOut()).map(Finding::id).filter(id -> limited.contains(id) && !told.contains(id))
                .forEach(id -> says.add("A stop rule holds \"" + id + "\" against a limit, and no way of telling a danger gives it."));
        LISTS.stream().filter(list -> jobs.stream().noneMatch(j -> j.has(list))).forEach(list -> says.add("No danger is told by the list \"" + list + "\" of a job file."));
        catalogue.findings().values().stream().filter(Finding::workedOut).map(Finding::id).filter(id -> !lookedAt.contains(id))
                .forEach(id -> says.add("No stop rule looks at the sum \"" + id + "\"."));
        return says;
    }

    private static Set<String> limited(List<RuleText> stops) {
        Set<String> limited = new HashSet<>();
        stops.stream().flatMap(r -> r.patterns().stream()).filter(p -> p.fact().equals("Measured"))
                .forEach(p -> limited.addAll(ReferenceCheck.of(p, "finding")));
        return limited;
    }
}
