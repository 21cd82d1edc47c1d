package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import neutralpoint.Shared;
import neutralpoint.document.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A work plan rule that names what there is not, or leaves out what a reader needs, is refused where it stands. */
class PlanStepCheckTest {
    private static final String NOTES = "@says(\"Shut it.\") @because(\"It leaks.\") @source(\"common-practice\") @tools(\"key\") @proves(\"It is dry.\")";
    private static final String WHEN = "Planning(method == \"machine-flush\")";
    private static final String STEP = "Step.called(\"it-shut\").in(\"isolate\").minutes(5)";

    @TempDir
    Path folder;

    @Test
    void aWholeRuleIsTaken() {
        assertThatCode(() -> check(NOTES, WHEN, STEP)).doesNotThrowAnyException();
    }

    @Test
    void stageStepsCautionMethodAndSystemMustBeKnown() {
        refused(NOTES, WHEN, STEP.replace("isolate", "isolatte"), "\"isolatte\" is not a known stage; did you mean \"isolate\"?");
        refused(NOTES, WHEN, STEP + ".needs(\"it-shutt\")", "\"it-shutt\" is not a known step");
        refused(NOTES, WHEN, STEP + ".after(\"nothing\")", "\"nothing\" is not a known step");
        refused(NOTES + " @caution(\"scold\")", WHEN, STEP, "\"scold\" is not a known caution");
        refused(NOTES, WHEN.replace("machine", "machin"), STEP, "\"machin-flush\" is not a known method");
        refused(NOTES, WHEN + "\n  PlannedSystem(system == \"combi\")", STEP, "\"combi\" is not a known arrangement");
        refused(NOTES, WHEN + "\n  PlannedSystem(features contains \"x-plan\")", STEP, "\"x-plan\" is not a known feature");
        refused(NOTES, WHEN + "\n  PlannedSystem(traits contains \"sealedd\")", STEP, "\"sealedd\" is not a known trait");
    }

    @Test
    void stageMinutesToolsAndProofMustBeThere() {
        refused(NOTES, WHEN, STEP.replace(".in(\"isolate\")", ""), "needs a stage");
        refused(NOTES, WHEN, STEP.replace(".minutes(5)", ""), "needs its time");
        refused(NOTES.replace("@tools(\"key\")", ""), WHEN, STEP, "needs @tools");
        refused(NOTES.replace("@proves(\"It is dry.\")", ""), WHEN, STEP, "needs @proves");
    }

    @Test
    void itBeginsWithWhatIsPlannedAndMakesAStep() {
        refused(NOTES, "PlannedSystem(traits contains \"sealed\")", STEP, "begins with Planning");
        refused(NOTES, WHEN, "new AttachCaution(\"scald\")", "makes a step");
    }

    private void refused(String notes, String when, String then, String message) {
        assertThatThrownBy(() -> check(notes, when, then)).isInstanceOf(BadInput.class).hasMessageContaining(message);
    }

    private void check(String notes, String when, String then) throws IOException {
        Path file = Files.createDirectories(folder.resolve("workplan")).resolve("a.drl");
        Files.writeString(file, "package rules.workplan;\n\nrule \"it-is-shut\"\n  " + notes + "\nwhen\n  " + when
                + "\nthen\n  insert(" + then + ");\nend\n");
        new ReferenceCheck(Shared.CATALOGUE).check(RuleReader.all(folder));
    }
}
