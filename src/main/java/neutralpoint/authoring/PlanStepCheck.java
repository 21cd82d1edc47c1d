package neutralpoint.authoring;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.BadInput;
import neutralpoint.workplan.Stage;

/** Holds what the work plan's rules name against the catalogue and against each other. */
final class PlanStepCheck {
    private static final String FOLDER = "workplan";

    private PlanStepCheck() {}

    static void check(List<RuleText> rules, Catalogue catalogue) {
        List<RuleText> drawing = rules.stream().filter(r -> r.conclusion().isStep() && !r.conclusion().isStepOfDanger()).toList();
        Set<String> made = drawing.stream().map(r -> r.conclusion().ids().get(0)).collect(Collectors.toSet());
        rules.stream().filter(r -> r.folder().equals(FOLDER)).forEach(PlanStepCheck::beginsWithPlanning);
        for (RuleText rule : drawing) {
            Conclusion step = rule.conclusion();
            List<String> stage = step.given("in");
            if (stage.size() != 1) {
                throw new BadInput(step.where(), "the step of \"" + rule.id() + "\" needs a stage: .in(\"…\").");
            }
            ReferenceCheck.known(stage.get(0), Stage.words(), "stage", step.where());
            step.given("needs").forEach(id -> ReferenceCheck.known(id, made, "step", step.where()));
            step.given("after").forEach(id -> ReferenceCheck.known(id, made, "step", step.where()));
            step.given("closes").forEach(id -> ReferenceCheck.known(id, catalogue.closures().keySet(), "closure", step.where()));
            step.given("reopens").forEach(id -> ReferenceCheck.known(id, catalogue.closures().keySet(), "closure", step.where()));
            step.given("clears").forEach(id -> ReferenceCheck.known(id, catalogue.dangers().keySet(), "danger", step.where()));
            if (!rule.note("caution").isBlank()) {
                ReferenceCheck.known(rule.note("caution"), catalogue.cautions().keySet(), "caution", rule.where());
            }
            for (String note : List.of("tools", "proves")) {
                if (rule.note(note).isBlank()) {
                    throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" needs @" + note + ".");
                }
            }
            if (!step.chained().containsKey("minutes")) {
                throw new BadInput(step.where(), "the step of \"" + rule.id() + "\" needs its time: .minutes(…).");
            }
        }
    }

    private static void beginsWithPlanning(RuleText rule) {
        if (rule.patterns().isEmpty() || !rule.patterns().get(0).fact().equals("Planning")) {
            throw new BadInput(rule.where(), "a work plan rule begins with Planning(…); \"" + rule.id() + "\" does not.");
        }
        if (!rule.conclusion().isStep()) {
            throw new BadInput(rule.conclusion().where(), "a work plan rule makes a step: insert(Step.called(\"…\")…);");
        }
    }
}
