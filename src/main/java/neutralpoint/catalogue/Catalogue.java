package neutralpoint.catalogue;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.job.Job;

/** Everything that can be said, by id, in the order it is catalogued. */
public record Catalogue(Map<String, Finding> findings, Map<String, Cause> causes,
        Map<String, ArrangementKind> arrangements, Map<String, Course> courses, Map<String, Caution> cautions,
        Map<String, Source> sources, Map<String, Method> methods, Map<String, Handling> handlings,
        Map<String, ArrangementHandling> cares, Map<String, ChecklistItem> planLines, Map<String, Closure> closures,
        Map<String, Danger> dangers, Map<String, WorkKind> workKinds, Map<String, Competence> competences,
        Map<String, Emergency> emergencies, Renames renames) {

    public Finding finding(String id) {
        return known(id, findings, "finding");
    }

    public Optional<Finding> findFinding(String id) {
        return Optional.ofNullable(findings.get(id));
    }

    public Cause cause(String id) {
        return known(id, causes, "cause");
    }

    public ArrangementKind arrangement(String id) {
        return known(id, arrangements, "arrangement");
    }

    public Course course(String id) {
        return known(id, courses, "course");
    }

    public Caution caution(String id) {
        return known(id, cautions, "caution");
    }

    /** The cautions of these ids, the worst first. */
    public List<Caution> cautions(Collection<String> ids) {
        return cautions.values().stream().filter(c -> ids.contains(c.id())).sorted(Caution.WORST_FIRST).toList();
    }

    public Source source(String id) {
        return known(id, sources, "source");
    }

    public Competence competence(String id) {
        return known(id, competences, "competence");
    }

    /** True when a finding is asked only to learn whether somebody has a competence that no paper shows. */
    public boolean showsOnlyCompetence(String finding) {
        return competences.values().stream().anyMatch(c -> c.by().equals(Competence.NO_PAPER) && c.decidedBy().equals(finding))
                && competences.values().stream().noneMatch(c -> !c.by().equals(Competence.NO_PAPER) && c.shownBy().containsKey(finding));
    }

    public Method method(String id) {
        return known(id, methods, "method");
    }

    public Handling handling(String id) {
        return known(id, handlings, "handling");
    }

    public Closure closure(String id) {
        return known(id, closures, "closure");
    }

    public Danger danger(String id) {
        return known(id, dangers, "danger");
    }

    public Emergency emergency(String id) {
        return known(id, emergencies, "emergency");
    }

    /** The dangers that an emergency may be in this house, in the order in which it tells them. */
    public List<Danger> dangersOf(Emergency emergency, Job known, Set<String> traits) {
        return emergency.tells(known, traits).stream().map(t -> danger(t.danger())).distinct().toList();
    }

    /** How the feed, the vent or the sealed side is handled; every system has it, and features that change the handling. */
    public Optional<ArrangementHandling> handlingOf(String arrangement) {
        return Optional.ofNullable(cares.get(arrangement));
    }

    public Collection<ArrangementKind> systems() {
        return arrangements.values().stream().filter(a -> !a.feature()).toList();
    }

    public Collection<ArrangementKind> features() {
        return arrangements.values().stream().filter(ArrangementKind::feature).toList();
    }

    public Set<String> traits() {
        return arrangements.values().stream().flatMap(a -> a.traits().stream()).collect(Collectors.toSet());
    }

    private static <T> T known(String id, Map<String, T> entries, String what) {
        T entry = entries.get(id);
        if (entry == null) {
            throw new BadInput("\"" + id + "\" is not a known " + what + Nearest.hint(id, entries.keySet()));
        }
        return entry;
    }
}
