package neutralpoint.authoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Node;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.Radiator;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.Situation;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.HouseNote;
import neutralpoint.rulebase.fact.Likely;
import neutralpoint.rulebase.fact.PlannedSystem;
import neutralpoint.rulebase.fact.PlannedWork;
import neutralpoint.rulebase.fact.Planning;
import neutralpoint.rulebase.fact.Settled;
import neutralpoint.rulebase.fact.Standing;

/** Makes of an example, as it is written, what the rules are told. */
public final class ExampleReader {
    private static final Set<String> NOT_FINDINGS = Set.of("arrangement", "settled", "likely", "standings", "chief", "work", "floors", "radiators",
            "planning", "features", "arrangement-status", "dangers", "gauge", "told");
    /** What a cause that is given as standing is taken to have; any share that stands out would do. */
    private static final double SHARE = 0.8;

    private final Catalogue catalogue;
    private final Assessor assessor;

    public ExampleReader(Catalogue catalogue, Assessor assessor) {
        this.catalogue = catalogue;
        this.assessor = assessor;
    }

    /** The situation that an example describes; refuses what no job file may say. */
    public Situation read(Node.Fields example) {
        Job job = job(example);
        List<Object> later = new ArrayList<>();
        example.texts("settled").forEach(cause -> later.add(new Settled(cause)));
        example.texts("likely").forEach(cause -> later.add(new Likely(cause)));
        later.addAll(standings(example));
        later.addAll(work(example));
        fields(example, "told").fields().forEach((about, says) -> later.add(new HouseNote(about, says.asText())));
        later.addAll(planning(example));
        return new Situation(job, arrangement(example, job), dangers(example), later);
    }

    private Job job(Node.Fields example) {
        Node.Fields findings = Node.noFields(example.where());
        example.fields().forEach((name, value) -> {
            if (!NOT_FINDINGS.contains(name)) {
                findings.fields().put(name, value);
                findings.names().put(name, example.names().get(name));
            }
        });
        Node.Fields job = Node.noFields(example.where());
        job.fields().put("findings", findings);
        List.of("radiators", "gauge").forEach(table -> example.find(table).ifPresent(rows -> job.fields().put(table, rows)));
        Job checked = new JobCheck(catalogue).check(JobFile.draft(job, "example"));
        return example.has("floors") ? checked.withRadiators(floors(example)) : checked;
    }

    private static List<Radiator> floors(Node.Fields example) {
        List<Radiator> radiators = new ArrayList<>();
        fields(example, "floors").fields().forEach((name, floor) -> radiators.add(new Radiator(name, floor.asText())));
        return radiators;
    }

    private Arrangement arrangement(Node.Fields example, Job job) {
        if (example.has("arrangement")) {
            var kind = catalogue.arrangement(example.text("arrangement"));
            return new Arrangement(kind.id(), "settled", new TreeSet<>(kind.traits()), new TreeSet<>(kind.traits()));
        }
        Assessment.RecognisedSystem system = assessor.assess(job).arrangement();
        return new Arrangement(system.id(), system.status(), system.traits(), system.possibleTraits());
    }

    private List<Standing> standings(Node.Fields example) {
        String chief = example.findText("chief").orElse("");
        List<Standing> standings = new ArrayList<>();
        fields(example, "standings").fields().forEach((id, status) -> {
            Cause cause = catalogue.cause(id);
            standings.add(new Standing(id, status.asText(), SHARE, id.equals(chief), cause.course(), cause.phase().word(), cause.needs()));
        });
        return standings;
    }

    private List<PlannedWork> work(Node.Fields example) {
        String chief = example.findText("chief").orElse("");
        List<PlannedWork> work = new ArrayList<>();
        fields(example, "work").fields().forEach((id, course) ->
                work.add(new PlannedWork(course.asText(), id, catalogue.cause(id).phase().word(), id.equals(chief))));
        return work;
    }

    private List<Object> planning(Node.Fields example) {
        if (!example.has("planning")) {
            return List.of();
        }
        Node.Fields planning = fields(example, "planning");
        var kind = catalogue.arrangement(example.text("arrangement"));
        Set<String> traits = new TreeSet<>(kind.traits());
        example.texts("features").forEach(f -> traits.addAll(catalogue.arrangement(f).traits()));
        return List.of(new Planning(planning.text("course"), planning.findText("method").orElse(""), planning.findText("supply").orElse("unknown"),
                planning.findText("descales").orElse("no").equals("yes"), planning.findText("only-clears").orElse("no").equals("yes")),
                new PlannedSystem(kind.id(), example.findText("arrangement-status").orElse("settled"), new TreeSet<>(example.texts("features")), traits));
    }

    private List<Assessment.StopFound> dangers(Node.Fields example) {
        List<Assessment.StopFound> dangers = new ArrayList<>();
        fields(example, "dangers").fields().forEach((id, course) -> {
            Danger danger = catalogue.danger(id);
            dangers.add(new Assessment.StopFound(danger, course.asText(), danger.now(), danger.clearing(), List.of()));
        });
        return dangers;
    }

    private static Node.Fields fields(Node.Fields example, String name) {
        return example.find(name).map(Node::asFields).orElseGet(() -> Node.noFields(example.where()));
    }
}
