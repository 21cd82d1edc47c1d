package neutralpoint.workplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.report.EmergencyPage;
import neutralpoint.rulebase.DraftPlan;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The emergency page knows nothing of the plan, and yet names everything with relief that the plan of the house shuts. */
class EmergencyClosuresTest {

    @TestFactory
    Stream<DynamicTest> whateverThePlanShutsWithReliefIsNamedForSteam() {
        return Shared.allCases().stream().map(c -> DynamicTest.dynamicTest(c.id(), () -> areNamed(c)));
    }

    private static void areNamed(CaseStudy house) {
        DraftPlan draft = Shared.ASSESSOR.plan(house.job(), Optional.of("machine-flush"));
        String page = String.join("\n", EmergencyPage.of(Shared.CATALOGUE.emergency("steam"), Shared.CATALOGUE, house.job(), Set.of()));
        List<String> shut = draft.steps().stream().flatMap(s -> s.step().closes().stream()).map(Shared.CATALOGUE::closure)
                .filter(c -> c.relief()).map(c -> c.title()).toList();
        assertThat(shut).allSatisfy(title -> assertThat(page).contains(title));
    }
}
