package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.Radiator;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.HouseNote;
import neutralpoint.rulebase.fact.Likely;
import neutralpoint.rulebase.fact.PlannedSystem;
import neutralpoint.rulebase.fact.PlannedWork;
import neutralpoint.rulebase.fact.Planning;
import neutralpoint.rulebase.fact.Settled;
import neutralpoint.rulebase.fact.Standing;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** For every rule: the smallest call-out that fires it, and the nearest one that does not. */
class RuleExamplesTest {
    private static final Set<String> NOT_FINDINGS = Set.of("arrangement", "settled", "likely", "standings", "chief", "work", "floors", "radiators",
            "planning", "features", "arrangement-status", "dangers", "gauge", "told");

    @TestFactory
    Stream<DynamicTest> everyRuleFiresAndStaysSilent() {
        return examples().entrySet().stream().flatMap(e -> Stream.of(
                DynamicTest.dynamicTest(e.getKey() + " fires", () ->
                        assertThat(fired(e.getValue().get("fires").asFields())).contains(e.getKey())),
                DynamicTest.dynamicTest(e.getKey() + " stays silent", () ->
                        assertThat(fired(e.getValue().get("silent").asFields())).doesNotContain(e.getKey()))));
    }

    @Test
    void everyRuleHasExamplesAndEveryExampleItsRule() {
        assertThat(examples().keySet()).containsExactlyInAnyOrderElementsOf(Shared.RULES.rules().keySet());
    }

    private static Map<String, Node.Fields> examples() {
        Map<String, Node.Fields> examples = new LinkedHashMap<>();
        for (Path file : Shared.files("rules", ".examples.yaml")) {
            Documents.readYaml(file).asFields().fields().forEach((rule, node) -> examples.put(rule, node.asFields()));
        }
        return examples;
    }

    private static Set<String> fired(Node.Fields example) {
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
        Job checked = new JobCheck(Shared.CATALOGUE).check(JobFile.draft(job, "example"));
        checked = example.has("floors") ? checked.withRadiators(floors(example)) : checked;
        try (Session session = Shared.RULES.open()) {
            Job known = Survey.complete(checked, Survey.workOut(checked, session));
            session.insertAndFire(Facts.of(known, Shared.CATALOGUE));
            session.insertAndFire(List.of(arrangement(example, checked)));
            session.insertAndFire(WaterPaths.of(session).facts());
            session.insertAndFire(example.texts("settled").stream().map(Settled::new).toList());
            session.insertAndFire(example.texts("likely").stream().map(Likely::new).toList());
            session.insertAndFire(standings(example));
            session.insertAndFire(work(example));
            List<Assessment.StopFound> dangers = dangers(example);
            session.insertAndFire(StandingDangers.facts(dangers));
            session.insertAndFire(StandingDangers.asks(dangers));
            session.insertAndFire(StandingDangers.clears(dangers));
            example.find("told").ifPresent(n -> n.asFields().fields().forEach((about, says) -> session.insertAndFire(List.of(new HouseNote(about, says.asText())))));
            session.insertAndFire(planning(example));
            return session.rulesFired();
        }
    }

    private static List<Radiator> floors(Node.Fields example) {
        List<Radiator> radiators = new ArrayList<>();
        example.find("floors").ifPresent(n -> n.asFields().fields().forEach((name, floor) ->
                radiators.add(new Radiator(name, floor.asText()))));
        return radiators;
    }

    private static Arrangement arrangement(Node.Fields example, Job job) {
        if (example.has("arrangement")) {
            var kind = Shared.CATALOGUE.arrangement(example.text("arrangement"));
            return new Arrangement(kind.id(), "settled", new TreeSet<>(kind.traits()), new TreeSet<>(kind.traits()));
        }
        Assessment.RecognisedSystem system = Shared.ASSESSOR.assess(job).arrangement();
        return new Arrangement(system.id(), system.status(), system.traits(), system.possibleTraits());
    }

    private static List<Standing> standings(Node.Fields example) {
        String chief = example.findText("chief").orElse("");
        List<Standing> standings = new ArrayList<>();
        example.find("standings").ifPresent(n -> n.asFields().fields().forEach((id, status) -> {
            Cause cause = Shared.CATALOGUE.cause(id);
            standings.add(new Standing(id, status.asText(), 0.8, id.equals(chief), cause.course(), cause.phase().word(), cause.needs()));
        }));
        return standings;
    }

    private static List<Object> planning(Node.Fields example) {
        if (!example.has("planning")) {
            return List.of();
        }
        Node.Fields planning = example.get("planning").asFields();
        var kind = Shared.CATALOGUE.arrangement(example.text("arrangement"));
        Set<String> traits = new TreeSet<>(kind.traits());
        example.texts("features").forEach(f -> traits.addAll(Shared.CATALOGUE.arrangement(f).traits()));
        return List.of(new Planning(planning.text("course"), planning.findText("method").orElse(""), planning.findText("supply").orElse("unknown"),
                planning.findText("descales").orElse("no").equals("yes"), planning.findText("only-clears").orElse("no").equals("yes")),
                new PlannedSystem(kind.id(), example.findText("arrangement-status").orElse("settled"), new TreeSet<>(example.texts("features")), traits));
    }

    private static List<Assessment.StopFound> dangers(Node.Fields example) {
        List<Assessment.StopFound> dangers = new ArrayList<>();
        example.find("dangers").ifPresent(n -> n.asFields().fields().forEach((id, course) -> {
            Danger danger = Shared.CATALOGUE.danger(id);
            dangers.add(new Assessment.StopFound(danger, course.asText(), danger.now(), danger.clearing(), List.of()));
        }));
        return dangers;
    }

    private static List<PlannedWork> work(Node.Fields example) {
        String chief = example.findText("chief").orElse("");
        List<PlannedWork> work = new ArrayList<>();
        example.find("work").ifPresent(n -> n.asFields().fields().forEach((id, course) -> work.add(new PlannedWork(course.asText(),
                id, Shared.CATALOGUE.cause(id).phase().word(), id.equals(chief)))));
        return work;
    }
}
