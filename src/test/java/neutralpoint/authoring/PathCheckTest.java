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

/** A rule that names a path, a state or a part there is not, or a doubt without its look, is refused where it stands. */
class PathCheckTest {
    private static final String NOTES = "@says(\"The vent is shut.\") @because(\"Ice closes it.\") @source(\"open-vent-practice\")";
    private static final String LOOK = NOTES + " @look(\"Follow it to its end.\")";
    private static final String WHEN = "$x : Observed(finding == \"vent-end\", answer == \"frozen\")";
    private static final String SHUT = "WaterPath.shut(\"relief\", $x).at(\"vent\")";

    @TempDir
    Path folder;

    @Test
    void wholeRulesAreTaken() {
        assertThatCode(() -> check("paths", NOTES, WHEN, SHUT)).doesNotThrowAnyException();
        assertThatCode(() -> check("paths", LOOK, WHEN, "WaterPath.doubtful(\"relief\", $x)")).doesNotThrowAnyException();
        assertThatCode(() -> check("caution", NOTES, "ReliefPath(state == \"shut\", shutAt contains \"vent\")", "new AttachCaution(\"scald\")"))
                .doesNotThrowAnyException();
    }

    @Test
    void pathPartAndStateMustBeKnown() {
        refused(NOTES, WHEN, SHUT.replace("relief", "releif"), "\"releif\" is not a known path for WaterPath.shut; did you mean \"relief\"?");
        refused(NOTES, WHEN, SHUT.replace("at(\"vent", "at(\"vant"), "\"vant\" is not a known part of the path relief; did you mean \"vent\"?");
        refused(NOTES, WHEN, "WaterPath.shut(\"waters\", $x).at(\"taps\")", "\"waters\" is not a known path for WaterPath.shut");
        refused(NOTES, WHEN + "\n  ReliefPath(state == \"closed\")", SHUT, "\"closed\" is not a known state of ReliefPath");
        refused(NOTES, WHEN + "\n  TapWater(state == \"shred\")", SHUT, "\"shred\" is not a known state of TapWater; did you mean \"shared\"?");
        refused(NOTES, WHEN + "\n  TapWater(sharedAt contains \"leek\")", SHUT, "\"leek\" is not a known part of the path waters; did you mean \"leak\"?");
    }

    @Test
    void aShutPathSaysWhereAndADoubtWhatToLookAt() {
        refused(NOTES, WHEN, "WaterPath.shut(\"relief\", $x)", "needs .at(…), one of feed-and-vent, flow");
        refused(NOTES, WHEN, "WaterPath.doubtful(\"relief\", $x)", "needs a @look");
        refused(LOOK, WHEN, "WaterPath.doubtful(\"relief\", $x).at(\"vent\")", "is a doubt and has no .at(…)");
    }

    @Test
    void whatIsRefusedIsNamedWithItsFileAndLine() {
        refused(NOTES, WHEN, SHUT.replace("relief", "releif"), "a.drl, line 8");
        assertThatThrownBy(() -> check("caution", NOTES, WHEN, SHUT)).isInstanceOf(BadInput.class).hasMessageContaining("such rules stand in paths/");
    }

    private void refused(String notes, String when, String then, String message) {
        assertThatThrownBy(() -> check("paths", notes, when, then)).isInstanceOf(BadInput.class).hasMessageContaining(message);
    }

    private void check(String stage, String notes, String when, String then) throws IOException {
        Path file = Files.createDirectories(folder.resolve(stage)).resolve("a.drl");
        Files.writeString(file, "package rules." + stage + ";\n\nrule \"it-is-so\"\n  " + notes + "\nwhen\n  " + when
                + "\nthen\n  insert(" + then + ");\nend\n");
        try {
            new ReferenceCheck(Shared.CATALOGUE).check(RuleReader.all(folder));
        } finally {
            Files.delete(file);
        }
    }
}
