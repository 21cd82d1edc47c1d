package neutralpoint.console;

import static org.assertj.core.api.Assertions.assertThat;

import neutralpoint.Shared;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;

/**
 * A new user at the airing cupboard, asked only what can be seen.
 * Holds {@link JobInHand}.
 */
class ArrangementInterviewTest {
    private static Assessment talk(ScriptedScreen screen) {
        return new ArrangementInterview(screen, Shared.CATALOGUE, Shared.ASSESSOR,
                new ArrangementQuestionChooser(Shared.ASSESSOR, Shared.CATALOGUE)).run();
    }

    @Test
    void asksHowItIsFilledThenHowTapWaterIsHeatedAndEndsWhenItIsSettled() {
        ScriptedScreen screen = new ScriptedScreen("filling-loop", "on-demand");
        Assessment a = talk(screen);
        assertThat(a.arrangement().id()).isEqualTo("combination-boiler");
        assertThat(a.arrangement().status()).isEqualTo("settled");
        assertThat(screen.headings()).startsWith("How is the heating filled with water?");
    }

    @Test
    void aWrongWordIsOneSentenceAndTheSameQuestionWaits() {
        ScriptedScreen screen = new ScriptedScreen("lof-tank", "loft-tank", "how", "back", "loft-tank", "enough");
        Assessment a = talk(screen);
        assertThat(a.job().answers()).containsOnlyKeys("heating-filled-by");
        assertThat(screen.headings().stream().filter("How is the heating filled with water?"::equals)).hasSize(2);
    }

    @Test
    void uncheckedIsTakenAndLeadsOn() {
        ScriptedScreen screen = new ScriptedScreen("unchecked", "enough");
        talk(screen);
        assertThat(screen.headings()).hasSize(2);
    }

    @Test
    void theEndOfInputEndsIt() {
        assertThat(talk(new ScriptedScreen()).job().answers()).isEmpty();
    }
}
