package neutralpoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import neutralpoint.authoring.ReferenceCheck;
import neutralpoint.authoring.RuleCompiler;
import neutralpoint.authoring.RuleReader;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.report.ArrangementSheet;
import neutralpoint.report.WorkPlanText;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.WorkPlan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A system, a course and a method that nobody has catalogued yet are added by a few lines in rules/ alone: they are then
 * recognised, drawn, recommended and planned. Only the rules at hand are compiled, so that it is quick.
 */
class AddingNeedsNoJavaTest {
    private static final String HEAD = "package rules.%s;\n\nimport neutralpoint.rulebase.fact.*;\nimport static neutralpoint.rulebase.fact.Strength.*;\n\n";
    private static final String UNIT = """

            - id: heat-interface-unit
              title: Sealed, heat interface unit
              kind: system
              known-by: A wall case with a plate exchanger and a heat meter, fed by the building's own mains.
              means: The building's side is not the engineer's; only the flat's own circuit is touched.
              prior: rare
              traits: [sealed, boiler-with-vessel]
              order: [boiler, safety-valve, gauge, vessel-tee, pump, radiators, filter, fill-point]
            """;
    private static final String HANDLING = """

            - for: heat-interface-unit
              isolate: [Shut the two valves under the case on the flat's side.]
              connect: [Connect by tees under the case.]
              fill: [Fill by the filling loop with a double check valve.]
              never-close: [The safety valve's pipe.]
              level: [Fill to the pressure the height asks for.]
              put-back: [Open the two valves again.]
              because: The plate keeps the building's water apart from the flat's.
              source: open-vent-practice
            """;
    private static final String RECOGNISED = HEAD.formatted("arrangement") + """
            rule "parts-in-case-settle-heat-interface-unit"
              @says("Pump and vessel in the case settle it.")
              @because("A trial.")
            when
              $seen : Observed(finding == "pump-and-vessel-place", answer == "in-case")
            then
              insert(Evidence.settles("heat-interface-unit", $seen));
            end
            """;
    private static final String COURSE = """

            - id: pump-exchange
              title: Pump exchange
              means: Take the pump out and put another in.
              wet: true
              opens-water: true
              repairs: true
            """;
    private static final String METHOD = """

            - id: pulsed-rinse
              title: Pulsed rinse
              means: Drive cold mains water through one leg in pulses until it runs clear.
              for: [partial-cleanse]
              does: [drained, rinsed]
              prior: ordinary
            """;
    private static final String PLANNED = "package rules.workplan;\n\nimport neutralpoint.rulebase.fact.*;\n\n" + """
            rule "boiler-is-off-for-both"
              @says("Switch the boiler off.")
              @because("A trial.")
              @tools("voltage indicator")
              @proves("It is dead.")
            when
              Planning(course in ("pump-exchange", "partial-cleanse"))
            then
              insert(Step.called("boiler-off").in("isolate").fires(false).minutes(10));
            end

            rule "pump-is-exchanged"
              @says("Change the pump over.")
              @because("A trial.")
              @tools("spanners")
              @proves("It runs.")
            when
              Planning(course == "pump-exchange")
            then
              insert(Step.called("pump-changed-over").in("repair").needs("boiler-off").minutes(40));
            end

            rule "leg-is-rinsed-in-pulses"
              @says("Rinse in pulses.")
              @because("A trial.")
              @tools("hose")
              @proves("It runs clear.")
            when
              Planning(method == "pulsed-rinse")
            then
              insert(Step.called("rinsed-in-pulses").in("rinse").needs("boiler-off").minutes(40));
            end
            """;

    @TempDir
    static Path folder;

    private static Catalogue catalogue;
    private static Assessor assessor;

    @BeforeAll
    static void addToACopyOfTheRules() throws IOException {
        Path rules = folder.resolve("rules");
        Path entries = rules.resolve("catalogue");
        Shared.copy(Path.of("rules/catalogue"), entries);
        append(entries.resolve("arrangements.yaml"), UNIT);
        append(entries.resolve("handling-by-arrangement.yaml"), HANDLING);
        append(entries.resolve("courses.yaml"), COURSE);
        append(entries.resolve("methods.yaml"), METHOD);
        Path pumps = entries.resolve("causes/pump.yaml");
        Files.writeString(pumps, Files.readString(pumps).replaceFirst("(- id: pump-seized\\n(?:  .*\\n)*?  course: )component-repair", "$1pump-exchange"));
        write(rules.resolve("arrangement/trial.drl"), RECOGNISED);
        write(rules.resolve("workplan/trial.drl"), PLANNED);
        write(rules.resolve("evidence/pump/pump-seized.drl"), Files.readString(Path.of("rules/evidence/pump/pump-seized.drl")));
        catalogue = CatalogueFiles.fromFolder(entries);
        new VocabularyCheck(catalogue).check();
        List<RuleText> written = RuleReader.all(rules);
        new ReferenceCheck(catalogue).check(written);
        assessor = new Assessor(RuleCompiler.compile(rules, written), catalogue);
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static Job job(String findings) {
        return new JobCheck(catalogue).check(JobFile.draft(Documents.json("trial", "{'findings': {'pump-and-vessel-place': 'in-case'%s}}"
                .formatted(findings).replace('\'', '"'), 1), "trial"));
    }

    @Test
    void theSystemIsRecognisedAndDrawn() {
        Assessment a = assessor.assess(job(""));
        assertThat(a.arrangement().id()).isEqualTo("heat-interface-unit");
        assertThat(ArrangementSheet.of(a, catalogue, Optional.empty(), 100, false)).contains("heat interface unit", "circulating pump",
                "Shut the two valves under the case");
    }

    @Test
    void theCourseIsRecommendedAndPlanned() {
        Job seized = job(", 'red-lines': [], 'complaint': ['no-heating'], 'noise-character': 'hum', 'pump-spindle': 'will-not-turn'");
        assertThat(assessor.assess(seized).verdict().course().id()).isEqualTo("pump-exchange");
        WorkPlan plan = WorkPlan.of(assessor, catalogue, seized, Optional.empty());
        assertThat(plan.steps()).extracting(PlanStep::id).contains("pump-changed-over");
        assertThat(WorkPlanText.of(plan, catalogue, 80, true)).contains("Change the pump over");
    }

    @Test
    void theMethodIsPlannedWithItsWater() {
        WorkPlan plan = WorkPlan.of(assessor, catalogue, job(", 'system-content-litres': 100"), Optional.of("pulsed-rinse"));
        assertThat(plan.refusal()).isEmpty();
        assertThat(plan.steps()).extracting(PlanStep::id).contains("rinsed-in-pulses");
        assertThat(plan.quantities().figure("rinse-litres")).isPresent();
        assertThat(WorkPlanText.of(plan, catalogue, 80, true)).contains("Rinse in pulses");
    }
}
