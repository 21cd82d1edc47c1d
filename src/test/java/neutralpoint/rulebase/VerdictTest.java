package neutralpoint.rulebase;

import static neutralpoint.JobBuilder.aJob;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** How far a course is decided, {@link Certainty}, and what it leaves without a reason, {@link Unexplained}. */
class VerdictTest {

    @Test
    void aDangerDecidesTheCourse() {
        assertThat(certainty(Shared.ASSESSOR.assess(aJob().with("red-lines", "gas-smell").job()))).isEqualTo(Certainty.SETTLED);
    }

    @Test
    void whereMoreHasToBeSeenNothingIsDecidedAndWithoutADangerOnlyATestSettlesIt() {
        List<Assessment> calm = Shared.allCases().stream().map(Shared::assessed).filter(a -> a.stops().isEmpty()).toList();
        assertThat(calm).extracting(VerdictTest::certainty).contains(Certainty.values());
        assertThat(calm).allSatisfy(a -> {
            assertThat(certainty(a) == Certainty.UNDECIDED).isEqualTo(a.verdict().course().id().equals("look-further"));
            assertThat(certainty(a) != Certainty.SETTLED || a.verdict().chief().orElseThrow().isSettled()).isTrue();
        });
    }

    @Test
    void whatIsLeftUnexplainedSpeaksStronglyForAnotherCauseAndNotForTheLeadingOne() {
        List<Assessment> some = Shared.allCases().stream().map(Shared::assessed).filter(a -> !a.unexplained().isEmpty()).toList();
        assertThat(some).isNotEmpty().allSatisfy(a -> assertThat(a.unexplained()).allSatisfy(u -> {
            assertThat(u.second().evidence()).anyMatch(e -> e.finding().equals(u.finding()) && e.decibans() >= 10);
            assertThat(a.verdict().chief().stream().flatMap(c -> c.evidence().stream()).filter(WeighedEvidence::isFor))
                    .noneMatch(e -> e.finding().equals(u.finding()));
        }));
    }

    private static Certainty certainty(Assessment a) {
        return a.verdict().certainty();
    }
}
