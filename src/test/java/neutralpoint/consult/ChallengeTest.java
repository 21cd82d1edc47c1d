package neutralpoint.consult;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.BadInput;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;

/**
 * What an engineer is told who is sure of something. Trade facts: common practice, no source.
 * Holds {@link Challenge} and {@link neutralpoint.rulebase.Grounds}.
 */
class ChallengeTest {
    private static final Assessment FLAT_VESSEL = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).read(Path.of("cases/pear-tree-walk.json")));

    private static Challenge say(Assessment house, String claim) {
        return Challenge.of(house, claim, Shared.ASSESSOR, Shared.CATALOGUE);
    }

    private static Assessment house(String findings) {
        return Shared.ASSESSOR.assess(Shared.job("{\"job\": \"a-house\", \"findings\": " + findings + "}"));
    }

    @Test
    void whoeverSaysSludgeWhereAVesselIsFlatIsToldWhatSludgeLeavesUnexplained() {
        Challenge sludge = say(FLAT_VESSEL, "sludge-throughout");

        assertThat(sludge.isTheVerdict()).isFalse();
        assertThat(sludge.unexplained()).extracting(u -> u.second().id()).contains("vessel-flat");
    }

    @Test
    void whoeverAgreesIsShownTheLookThatWouldProveBothWrong() {
        Assessment fallingPressure = house("{\"complaint\": [\"pressure-falls\"], \"heating-filled-by\": \"filling-loop\", \"pressure-behaviour\": \"swings\"}");
        String chief = fallingPressure.verdict().chief().orElseThrow().id();

        Challenge agreed = say(fallingPressure, chief);

        assertThat(agreed.isTheVerdict()).isTrue();
        assertThat(agreed.look()).isPresent();
    }

    @Test
    void aFloatValveCannotLetByWhereThereIsNoLoftTank() {
        Challenge floatValve = say(FLAT_VESSEL, "feed-tank-float-letting-by");

        assertThat(floatValve.refusals()).anySatisfy(r -> assertThat(r).contains("cannot be here"));
    }

    @Test
    void openVentedIsHeldAgainstTheFillingLoopThatWasSeen() {
        Challenge open = say(FLAT_VESSEL, "open-vented-separate");

        assertThat(open.against().size() + open.refusals().size()).isPositive();
    }

    @Test
    void aFullFlushIsRefusedWhereItIsBarred() {
        Assessment weeping = house("{\"complaint\": [\"radiators-cold-at-base\"], \"heating-filled-by\": \"loft-tank\", \"fabric-condition\": \"weeping\"}");

        assertThat(say(weeping, "full-flush").refusals()).isNotEmpty();
    }

    @Test
    void theWordsOfATitleWillDoForAnIdUnlessTheyFitSeveral() {
        assertThat(Challenge.named("sludge throughout", Shared.CATALOGUE)).isEqualTo("sludge-throughout");
        assertThatThrownBy(() -> Challenge.named("sludge", Shared.CATALOGUE)).isInstanceOf(BadInput.class).hasMessageContaining("sludge-throughout");
        assertThatThrownBy(() -> Challenge.named("flux capacitor", Shared.CATALOGUE)).isInstanceOf(BadInput.class);
    }
}
